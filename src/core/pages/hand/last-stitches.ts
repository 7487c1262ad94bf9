import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { moved } from './held.js';
import { smooth } from '../../lines.js';
import type { Pen } from './pen.js';
import { row, roundMm, stitch, stitchMm, top } from './work.js';

const edgeY = 29;
const nextX = 20;

/** Slip stitches that go down the step at the end of a spiral, and the thread through the last. */
function step(pen: Pen, { shape: { beadsFace: face } }: HandFacts): void {
  const newY = edgeY - roundMm;
  const places = [0, 1, 2].map((n) => nextX + (0.45 - n) * stitchMm);
  const lifts = [5.2, 3.4, 1.8];
  const end = smooth([
    [8, edgeY - 2.6],
    [6.4, 20],
    [9.4, 12],
    [6, 5],
  ]);
  row(pen, { face, y: edgeY, fromX: nextX - 2 * stitchMm + 4, many: 5, hiddenFrom: nextX + 3 });
  pen.thread(end, { ...moved, cut: 'end' });
  for (const n of [2.5, 1.5]) stitch(pen, [nextX + n * stitchMm, newY], face);
  pen.number(4, [11.6, 6]);
  [2, 1, 0].forEach((n) => {
    top(pen, [places[n], edgeY - lifts[n]], { near: true, far: true });
    pen.number(n + 1, [places[n] + 1, edgeY - lifts[n] - (face === 'away' ? 8.4 : 6)]);
  });
}

/** The end of the last round of a spiral. */
export const lastStitches: HandDrawing = {
  name: 'last-stitches',
  ...smallFrame,
  applies: ({ shape }) => shape.construction === 'spiral',
  frames: [step],
};
