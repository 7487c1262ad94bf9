import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import type { Pen } from './pen.js';
import { beadOf, legs, roundMm, stitch, stitchMm, top } from './work.js';

const edgeY = 30;
const newY = edgeY - roundMm - 1;
/** The stitch that two are worked into. */
const footX = 24.5;

/** Two stitches into one and the same: their feet meet, and the second stands ahead of the first. */
function twoIntoOne(pen: Pen, { shape: { beadsFace: face } }: HandFacts): void {
  const below = [-2, -1, 0, 1, 2].map((n) => footX + n * stitchMm);
  for (const x of below.slice(1)) top(pen, [x - stitchMm / 2, edgeY + roundMm]);
  const heads = [footX + stitchMm * 0.72, footX - stitchMm * 0.28];
  for (const x of below) {
    const hidden = face === 'away' && x > heads[1] - stitchMm;
    stitch(pen, [x, edgeY], face, { bead: !hidden, near: x === footX, far: x === footX });
  }
  stitch(pen, [footX + stitchMm * 1.72, newY], face, { lean: stitchMm * 0.72 });
  heads.forEach((x) => {
    if (face === 'away') pen.bead(beadOf([x, newY], face), 84, { moves: true });
  });
  heads.forEach((x) => {
    legs(pen, [footX, edgeY], [x, newY + 1.4], true);
    if (face === 'toward') pen.bead(beadOf([x, newY], face), 84, { moves: true });
    top(pen, [x, newY], { near: true, far: true });
  });
  heads.forEach((x, n) => {
    pen.number(n + 1, [x, newY - (face === 'away' ? 10 : 6)]);
  });
}

/** What two letters in square brackets ask for. */
export const increase: HandDrawing = {
  name: 'increase',
  ...smallFrame,
  applies: () => true,
  frames: [twoIntoOne],
};
