import { smallFrame } from './facts.js';
import type { HandDrawing } from './facts.js';
import { railAndEdge } from './frame-edge.js';
import { moved } from './held.js';
import { arc, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import { ink } from './pen.js';
import type { Pen } from './pen.js';

const middle: Spot = [26, 22.5];
const reach = 18.5;
/** Where the hinges lie: degrees clockwise from 3 o'clock. */
const hinges = [8, 172] as const;

/** Right sides together, the seam from one hinge round the bottom to the other. */
function join(pen: Pen): void {
  pen.shape(arc([middle[0] + 1.4, middle[1] - 1.2], reach, 0, 360), { fill: pen.tints.thread });
  pen.shape(arc(middle, reach, 0, 360));
  const seam = arc(middle, reach - 3, hinges[1], hinges[0]);
  pen.line(seam, { moves: true, dashed: true });
  for (const [x, y] of [seam[0], seam[seam.length - 1]]) pen.dot([x, y], 1.1, { fill: ink });
  pen.number(1, [seam[0][0] + 5, seam[0][1] - 1]);
  pen.arrow(arc(middle, reach - 7, 150, 30));
}

/** The open edge turned down to the outside, its right side showing. */
function fold(pen: Pen): void {
  const below = arc(middle, reach - 3, hinges[1] + 2, hinges[0] - 2);
  const top = arc([middle[0], middle[1] + 2.4], [reach - 2.8, 10], 180, 360);
  pen.shape([...below, ...[...top].reverse()].reverse());
  const low = arc([middle[0], middle[1] + 7], [reach - 3.6, 9.4], 183, 357);
  pen.shape([...top, ...[...low].reverse()], { fill: pen.tints.thread, moves: true });
  for (const [x, y] of [
    [14, 8],
    [26, 4.6],
    [38, 8],
  ] as const) {
    pen.arrow(
      smooth([
        [x, y],
        [x + 1.8, y + 4],
        [x, y + 10.4],
      ]),
    );
  }
  pen.number(2, [31.4, 4]);
}

/** Into the purse as it is, wrong side against the beads' back. */
function place(pen: Pen): void {
  const body = arc([26, 27.4], [18, 15], 0, 180);
  pen.shape([...body, ...arc([26, 27.4], [18, 6], 180, 360)], { fill: pen.tints.bead });
  pen.shape(arc([26, 27.4], [18, 6], 0, 360));
  const pouch = arc([26, 16], [12.6, 19], 0, 180);
  pen.shape([...pouch, ...arc([26, 16], [12.6, 3.6], 180, 360)], { moves: true });
  pen.shape(arc([26, 16], [12.6, 3.6], 0, 360), { fill: pen.tints.thread, moves: true });
  // The near wall of the purse stands before the lining.
  pen.shape([...arc([26, 27.4], [18, 6], 0, 180), ...[...body].reverse()], {
    fill: pen.tints.bead,
  });
  for (const x of [8, 44]) pen.dot([x, 27.4], 1.5, { moves: true });
  pen.line(arc([26, 27.4], [18, 6], 0, 360), { moves: true });
  pen.arrow([
    [26, 3],
    [26, 12.4],
  ]);
  pen.number(3, [30.6, 5.6]);
}

/** The folded edge sewn to the bare stitches, below the holes. */
function sew(pen: Pen): void {
  railAndEdge(pen, { beads: false });
  const edge = 26;
  pen.area(
    [
      [1, edge],
      [51, edge],
      [51, 43],
      [1, 43],
    ],
    pen.tints.thread,
  );
  pen.line(
    [
      [1, edge],
      [51, edge],
    ],
    { moves: true },
  );
  pen.line(
    [
      [1, edge + 5],
      [51, edge + 5],
    ],
    { dashed: true },
  );
  for (const x of [47, 38, 29]) {
    pen.thread(
      smooth([
        [x, edge + 1.6],
        [x - 1.4, edge - 1],
        [x - 3, edge - 3.4],
      ]),
      { ...moved, wide: 1, fill: '#ffffff' },
    );
  }
  pen.needle([11.4, edge + 3.4], -14, 13);
  pen.thread(
    smooth([
      [26.2, edge - 3.2],
      [27.6, edge - 5],
      [26.4, edge - 3.4],
      [22.4, edge + 0.4],
    ]),
    { ...moved, wide: 1, fill: '#ffffff' },
  );
  pen.number(4, [8, edge - 5]);
}

/** How the lining is sewn, folded, placed and sewn in. */
export const lining: HandDrawing = {
  name: 'lining',
  ...smallFrame,
  applies: () => true,
  frames: [join, fold, place, sew],
};
