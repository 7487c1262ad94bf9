import { smallFrame } from './facts.js';
import type { HandDrawing } from './facts.js';
import { moved } from './held.js';
import { smooth } from '../../lines.js';
import type { Pen } from './pen.js';
import { stitchMm, top } from './work.js';

/** Middles of the two edges, the back panel's beyond the front's. */
const backY = 17.5;
const frontY = 26.5;

/** Over and over: under both loops of a stitch of each rim, pair by pair. */
function overAndOver(pen: Pen): void {
  const places = [0, 1, 2, 3, 4].map((n) => 7.4 + n * stitchMm);
  for (const x of places) pen.bead([x, backY - 4.6], 84);
  for (const x of places) top(pen, [x, backY]);
  for (const x of places) pen.bead([x, frontY + 5.4], 84);
  for (const x of places) top(pen, [x, frontY]);
  const next = places[2];
  // Over the edges from one pair, where the thread comes out at the back, to the front of the next.
  over(pen, places[4], places[3]);
  pen.needle([next + 1.2, 5.6], 93, 34);
  top(pen, [next, backY], { near: true, far: true });
  top(pen, [next, frontY], { near: true, far: true });
  pen.thread(
    smooth([
      [places[3], backY - 3.2],
      [places[3] - 2.4, 24],
      [places[3] - 3.4, 33],
      [places[3] - 6, 40.4],
      [next - 0.4, 37.8],
    ]),
    { ...moved, wide: 1 },
  );
  pen.arrow([
    [14.6, 42.4],
    [15.6, 35.4],
  ]);
  pen.number(1, [11.4, 39.4]);
  pen.arrow([
    [21.4, 10.4],
    [21.8, 3],
  ]);
}

function over(pen: Pen, from: number, to: number): void {
  pen.thread(
    smooth([
      [from, backY - 3.2],
      [(from + to) / 2, (backY + frontY) / 2],
      [to, frontY + 3.2],
    ]),
    { ...moved, wide: 1 },
  );
}

/** How the rims are sewn together. */
export const seamStitch: HandDrawing = {
  name: 'seam-stitch',
  ...smallFrame,
  applies: () => true,
  frames: [overAndOver],
};
