import { readFileSync } from 'node:fs';
import { ciede2000 } from '../../src/core/colour/ciede2000.js';
import { hexToLab65, linearToLab65 } from '../../src/core/colour/lab.js';
import { cornerRadius } from '../../src/core/panel/edge.js';
import { panelFootprints } from '../../src/core/panel/footprints.js';
import { panelGeometry } from '../../src/core/panel/geometry.js';
import { makePattern } from '../../src/core/make.js';
import { readPalette } from '../../src/core/beads/palette/read-palette.js';
import { lettersInWorkingOrder } from '../../src/core/pattern/stitches.js';
import { evenPaper } from '../../src/core/picture/sampling/paper.js';
import { placePicture } from '../../src/core/picture/sampling/place.js';
import { samplePanel } from '../../src/core/picture/sampling/sample.js';
import type { Picture } from '../../src/core/picture/picture.js';
import { photograph } from './sketch.js';
import type { Sketch } from './sketch.js';
import { scoreOf } from './sketch-score.js';
import type { Score } from './sketch-score.js';

const drawers = new URL('../../palettes/drawers.csv', import.meta.url);
export const { beads, diameterMm } = readPalette(readFileSync(drawers, 'utf8'), 'drawers.csv');
/** The bead that comes nearest to white. */
const paperHex = beads.reduce((a, b) =>
  ciede2000(100, 0, 0, ...hexToLab65(b.hex)) < ciede2000(100, 0, 0, ...hexToLab65(a.hex)) ? b : a,
).hex;

/** The usual panel of a picture: 7 wedges, 20 rounds where nothing is said, 8 colours. */
export function usualPanel(picture: Picture, paper: boolean, rounds = 20) {
  return makePattern({
    picture,
    pictureName: 'sketch.jpg',
    title: 'sketch',
    beads,
    colours: 8,
    shape: { wedges: 7, rounds, beadDiameterMm: diameterMm },
    place: { place: 'fill' },
    art: 'auto',
    ...(paper && { paper }),
    background: '#ffffff',
  });
}

/** Photographs a sketch, makes the usual panel of it and scores that. */
export async function scoreSketch(
  sketch: Sketch,
  width: number,
  height: number,
  paper: boolean,
): Promise<Score> {
  const blank = { width, height, data: new Uint8Array(4 * width * height).fill(255) };
  const { shape } = usualPanel(blank, false).pattern;
  const stitchMm = Math.min(shape.stitchWidthMm, shape.roundHeightMm);
  const stitchPx = (stitchMm * Math.min(width, height)) / (2 * cornerRadius(shape));
  const picture = await photograph(sketch, width, height, stitchPx);
  const { pattern } = usualPanel(picture, paper);
  const geometry = panelGeometry(shape, { startDegrees: pattern.panels[0].startDegrees });
  const seen = paper ? evenPaper(picture) : picture;
  const { linear } = samplePanel({
    picture: seen,
    geometry,
    footprints: panelFootprints(geometry),
    place: placePicture(seen, geometry, { place: 'fill' }),
    art: 'drawing',
    ...(paper && { paper }),
    background: [255, 255, 255],
  });
  const letters = lettersInWorkingOrder(pattern.panels[0]);
  const hexes = new Map(pattern.beads.map((bead) => [bead.letter, bead.hex]));
  return scoreOf(
    sketch,
    geometry,
    stitchMm,
    (s) => hexes.get(letters[s]),
    paper ? paperHex : undefined,
    (s) => linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2]),
  );
}
