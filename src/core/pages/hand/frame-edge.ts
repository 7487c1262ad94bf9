import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { frameOf } from './frame.js';
import { moved } from './held.js';
import { arc, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import { ink } from './pen.js';
import type { Pen } from './pen.js';
import { stitch, stitchMm } from './work.js';

const railY = [7, 16] as const;
const holeY = 11.5;
/** Holes of the rail, from the middle of the frame (at the right) toward a hinge. */
export const holes = [44, 32, 20, 8];

/** The rail of a frame with holes, and the edge of the panel that comes out below it. */
export function railAndEdge(pen: Pen, { beads }: { beads: boolean }): void {
  const places = [0, 1, 2, 3, 4].map((n) => 7 + n * stitchMm);
  for (const x of places) {
    if (beads) pen.bead([x, 38.4], 84);
  }
  for (const x of places) stitch(pen, [x, 24], 'away', { bead: false, lean: 0 });
  for (const x of places) stitch(pen, [x, 16.4], 'away', { bead: false, lean: 0 });
  const [upper, lower] = railY;
  pen.shape(
    [
      [1, upper],
      [51, upper],
      [51, lower],
      [1, lower],
    ],
    { fill: '#ffffff' },
  );
  for (const x of holes) pen.dot([x, holeY], 1.7, { fill: ink });
}

/** Back stitch through holes and bare stitches. */
function sew(pen: Pen): void {
  railAndEdge(pen, { beads: true });
  const over = (from: number, to: number) =>
    pen.thread(
      [
        [from, holeY],
        [to, holeY],
      ],
      { ...moved, wide: 1.2 },
    );
  over(holes[1], holes[0]);
  pen.line(arc([holes[1], holeY - 0.6], [12, 7], 200, 340), { dashed: true, moves: true });
  pen.needle([holes[2] - 7.6, 0.8], 56, 14.6);
  pen.thread(
    smooth([
      [holes[2] + 0.6, holeY],
      [holes[2] - 0.4, holeY - 1.2],
    ]),
    { ...moved, wide: 1.2 },
  );
  pen.number(1, [holes[2] - 12, 4]);
  pen.arrow(
    smooth([
      [holes[2] + 1.6, 19],
      [26, 21.4],
      [holes[1] - 1, 14.6],
    ]),
  );
  pen.number(2, [24.4, 24.6]);
}

/** A channel cut through: glue, the rim and the lining in it, paper cord beside them. */
function glue(pen: Pen, { shape }: HandFacts): void {
  void shape;
  const left = 17;
  const right = 35;
  const wall: Spot[] = [
    [left, 24],
    [left, 9],
    ...arc([left + 4, 9], 4, 180, 270),
    ...arc([right - 4, 9], 4, 270, 360),
    [right, 24],
    [right - 2.2, 24],
    [right - 2.2, 9.4],
    ...arc([right - 4.4, 9.4], 2.2, 360, 270),
    ...arc([left + 4.4, 9.4], 2.2, 270, 180),
    [left + 2.2, 24],
  ];
  pen.area(
    [
      [left + 2.2, 8],
      [right - 2.2, 8],
      [right - 2.2, 12.6],
      [left + 2.2, 12.6],
    ],
    pen.tints.thread,
  );
  pen.shape(wall);
  for (const y of [11.6, 19.4, 27.2, 35]) {
    pen.leaf([23, y + 4.6], [23, y - 3], { wide: 3.6, moves: true });
    if (y > 20) pen.bead([18.2, y + 3.4], 84);
  }
  pen.thread(
    smooth([
      [26.4, 42.6],
      [26.2, 26],
      [26.4, 12],
    ]),
    { wide: 1, ...moved, fill: '#ffffff', cut: 'end' },
  );
  pen.dot([30, 16.4], 2.5, { moves: true, fill: '#ffffff' });
  pen.line(arc([30, 16.4], 1.2, 200, 420), { moves: true });
  pen.number(1, [39.6, 9]);
  pen.line([
    [37.4, 9.2],
    [31.4, 10.4],
  ]);
  pen.number(2, [11.4, 33]);
  pen.arrow([
    [11.4, 29.6],
    [11.4, 21.6],
  ]);
  pen.number(3, [39.6, 29]);
  pen.arrow(
    smooth([
      [37, 28],
      [32.4, 25.6],
      [30.6, 20.4],
    ]),
  );
}

function edge(pen: Pen, facts: HandFacts): void {
  if (frameOf(facts).fixing === 'sewn') sew(pen);
  else glue(pen, facts);
}

/** How the edge is fixed in the rail. */
export const frameEdge: HandDrawing = {
  name: 'frame-edge',
  ...smallFrame,
  applies: () => true,
  frames: [edge],
};
