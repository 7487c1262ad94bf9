import { smallFrame } from './facts.js';
import { frameOf } from './frame.js';
import { holes } from './frame-edge.js';
import type { HandDrawing } from './facts.js';
import { moved } from './held.js';
import { smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import { ink } from './pen.js';
import type { Pen } from './pen.js';

const middleY = 21;
/** The rail, and where the lining is cut off. */
const railY = [4, 13] as const;
const clothY = 34;
/** From one crossing of a strand to the next like it, and how far it swings. */
const periodMm = 21;
const swingMm = 3.1;
const strandMm = 3.4;

/** A plait of three strands laid along the rail, over the edge of the lining, sewn down from side to side. */
function onSeam(pen: Pen): void {
  pen.area(
    [
      [1, middleY],
      [51, middleY],
      [51, clothY],
      [1, clothY],
    ],
    pen.tints.thread,
  );
  pen.shape(
    [
      [1, railY[0]],
      [51, railY[0]],
      [51, railY[1]],
      [1, railY[1]],
    ],
    { fill: '#ffffff' },
  );
  for (const x of holes) pen.dot([x, (railY[0] + railY[1]) / 2], 1.7, { fill: ink });
  pen.needle([26.4, 5], 92, 33);
  plait(pen, 2, 50);
  for (const x of [45.5, 36.5]) {
    pen.thread(
      smooth([
        [x + 0.6, middleY + 6.2],
        [x, middleY],
        [x - 0.6, middleY - 6.2],
      ]),
      { ...moved, wide: 0.9 },
    );
  }
  pen.number(1, [16.6, 39]);
  pen.arrow([
    [20.4, 42],
    [21, 35.6],
  ]);
}

/** Drawn in short lengths, those that lie below first. */
function plait(pen: Pen, from: number, to: number): void {
  const steps = 96;
  const at = (strand: number, k: number): { spot: Spot; height: number } => {
    const x = from + ((to - from) * k) / steps;
    const turn = (2 * Math.PI * x) / periodMm + (2 * Math.PI * strand) / 3;
    return { spot: [x, middleY + swingMm * Math.sin(turn)], height: Math.sin(2 * turn) };
  };
  const lengths = [0, 1, 2].flatMap((strand) =>
    Array.from({ length: steps / 4 }, (_, k) => {
      const line = [0, 1, 2, 3, 4].map((n) => at(strand, 4 * k + n).spot);
      return { line, height: at(strand, 4 * k + 2).height };
    }),
  );
  lengths.sort((a, b) => a.height - b.height);
  for (const { line } of lengths) pen.thread(line, { wide: strandMm, fill: '#ffffff' });
}

/** How a braid covers the seam of a frame, from inside; a glued one has none. */
export const braid: HandDrawing = {
  name: 'braid',
  ...smallFrame,
  applies: (facts) => frameOf(facts).fixing === 'sewn',
  frames: [onSeam],
};
