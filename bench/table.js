// A table of what becomes of pictures: node bench/table.js [FOLDER ...]. For each picture and number
// of colours the objective (mean CIEDE2000, weighted as chosen, before tidying), the mean after tidying, the gap to the best possible choice, the
// steps of the proof, and colour changes and stray beads before and after tidying. No bar of its own.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makePattern } from '../dist/core/make.js';
import { readPalette } from '../dist/core/beads/palette/read-palette.js';
import { readPicture } from '../dist/node/read/read-picture.js';

const palette = new URL('../palettes/drawers.csv', import.meta.url);
const { beads } = readPalette(readFileSync(palette, 'utf8'), 'drawers.csv');
const fixtures = fileURLToPath(new URL('../fixtures/pictures', import.meta.url));
const folders = process.argv.length > 2 ? process.argv.slice(2) : [fixtures];

console.log('| picture | as | K | objective | mean | gap | steps, M | changes | strays |');
console.log('|---|---|---|---|---|---|---|---|---|');
for (const folder of folders) {
  for (const file of readdirSync(folder).sort()) {
    if (!/\.(svg|png|jpg|webp)$/.test(file) || file.startsWith('fully')) continue;
    const picture = await readPicture(readFileSync(join(folder, file)), file);
    for (const colours of [4, 6, 8, 12]) {
      const { pattern, report } = makePattern({
        picture,
        pictureName: file,
        title: file,
        beads,
        colours,
        shape: { wedges: 7, rounds: 20, beadDiameterMm: 2.1 },
        place: { place: 'fill' },
        art: 'auto',
        background: '#ffffff',
        tidy: 3,
      });
      const { objective, gap, tidy } = pattern.choice;
      const cells = [
        file,
        report.art,
        colours,
        objective.toFixed(2),
        report.meanDifference.toFixed(2),
        gap.toFixed(6),
        (report.proofSteps / 1e6).toFixed(2),
        `${tidy.changesBefore} → ${tidy.changesAfter}`,
        `${tidy.straysBefore} → ${tidy.straysAfter}`,
      ];
      console.log(`| ${cells.join(' | ')} |`);
    }
  }
}
