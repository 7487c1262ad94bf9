// From a picture and a palette of your own to a folder with everything a maker needs.
//
//   node examples/picture-to-files.js DIR
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { RondureError, decodePalette, en, makePattern, readPalette } from 'rondure';
import { checkOutputFree, patternFiles, readPicture, writeFolder } from 'rondure/node';

const pictureFile = fileURLToPath(new URL('../fixtures/kingfisher.svg', import.meta.url));
const paletteFile = fileURLToPath(new URL('../palettes/harbour.csv', import.meta.url));
const folder = process.argv[2] ?? 'kingfisher';

try {
  // Ask before the work whether the folder can be written; nothing is overwritten without force.
  await checkOutputFree(folder, false);

  // What each file holds is found from its bytes; its name is only for the messages.
  const picture = await readPicture(await readFile(pictureFile), pictureFile);
  const palette = readPalette(decodePalette(await readFile(paletteFile)), paletteFile);

  const { pattern, report } = makePattern({
    picture,
    pictureName: basename(pictureFile),
    title: 'Kingfisher',
    beads: palette.beads,
    colours: 6,
    // Wedges and the bead are all that must be said of the shape; rounds come from the size across.
    shape: { wedges: 7, beadDiameterMm: palette.diameterMm },
    acrossMm: 60,
    place: { place: 'fill' },
    art: 'auto',
    background: '#ffffff',
  });

  await writeFolder(folder, await patternFiles(pattern, en), { force: false });
  console.log(
    `${report.stitches} stitches in ${report.rounds} rounds, ${report.acrossMm.toFixed(1)} mm`,
  );
} catch (error) {
  // Errors meant for people have a stable code for programs and a sentence for everyone else.
  if (!(error instanceof RondureError)) throw error;
  console.error(`${error.code}: ${error.message}`);
  process.exitCode = 1;
}
