// Draws every picture of the handwork on one sheet, for both hands and both faces, to look at:
//   npm run build && node tools/hand-drawings.js [FOLDER]
// writes FOLDER/hands-right-away.svg and so on; FOLDER is .tmp/hands where none is given.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { drawHand } from '../dist/core/pages/hand/draw.js';
import { handDrawings } from '../dist/core/pages/hand/drawings.js';
import { handFactsOf } from '../dist/core/pages/hand/of-pattern.js';
import { SvgSurface } from '../dist/core/pages/surface/svg-surface.js';
import { backStartDegrees, pairStartDegrees } from '../dist/core/panel/meet.js';
import { completeShape } from '../dist/core/panel/shape.js';
import { bundledFonts } from '../dist/node/font/fonts.js';

const wide = 172;
const gap = 3;
const frame = {
  kind: 'half-round',
  widthMm: 85,
  heightMm: 45,
  fixing: 'sewn',
  ratio: 1.15,
  gatherPercent: 0,
};
const bead = { letter: 'A', id: 'op-1', name: 'harbour blue', hex: '#2f7f95' };

/** A purse of two panels as the drawings ask for it. */
function purse(wish) {
  const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...wish });
  const front = pairStartDegrees(shape);
  const rounds = Array.from({ length: shape.rounds }, (_, r) => 'A'.repeat(7 * (r + 1)));
  const panels = [
    { name: 'front', startDegrees: front, rounds },
    { name: 'back', startDegrees: backStartDegrees(shape, front), rounds },
  ];
  return { shape, beads: [bead], panels, frame };
}

/** All pictures that apply, in rows, as an SVG. */
function sheet(facts) {
  const places = [];
  let [x, y, high] = [gap, gap, 0];
  for (const drawing of handDrawings.filter((one) => one.applies(facts))) {
    drawing.frames.forEach((_, n) => {
      if (x + drawing.widthMm > wide) [x, y, high] = [gap, y + high + gap, 0];
      places.push({ drawing, n, at: [x, y] });
      x += drawing.widthMm + gap;
      high = Math.max(high, drawing.heightMm);
    });
  }
  const size = { widthMm: wide, heightMm: y + high + gap };
  const words = { title: 'Drawings of the handwork', description: 'Every picture, to look at.' };
  const surface = new SvgSurface({ ...size, ...words });
  for (const { drawing, n, at } of places) drawHand(surface, drawing, facts, n, at);
  return surface.toString();
}

const folder = process.argv[2] ?? join('.tmp', 'hands');
mkdirSync(folder, { recursive: true });
const fonts = await bundledFonts();
for (const hand of ['right', 'left']) {
  for (const beadsFace of ['away', 'toward']) {
    for (const [name, wish] of [
      ['', {}],
      ['-joined-one-loop', { construction: 'joined', stitch: 'bead-side-loop' }],
      ['-slip', { stitch: 'slip' }],
    ]) {
      const facts = handFactsOf(purse({ hand, beadsFace, ...wish }), fonts);
      writeFileSync(join(folder, `hands-${hand}-${beadsFace}${name}.svg`), sheet(facts));
    }
    const grey = handFactsOf(purse({ hand, beadsFace }), fonts, { grey: true });
    writeFileSync(join(folder, `hands-${hand}-${beadsFace}-grey.svg`), sheet(grey));
  }
}
