import { smallFrame } from './facts.js';
import type { HandDrawing } from './facts.js';
import { moved } from './held.js';
import { smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';
import { stitchMm } from './work.js';

const middleY = 21;
/** From one crossing of a strand to the next like it, and how far it swings. */
const periodMm = 21;
const swingMm = 3.1;
const strandMm = 3.4;

/** A plait of three strands laid on the seam, sewn down from side to side. */
function onSeam(pen: Pen): void {
  for (let n = 0; n < 5; n++) {
    const x = 7.4 + n * stitchMm;
    pen.bead([x, middleY - 8.4], 84);
    pen.bead([x, middleY + 8.4], 84);
  }
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

/** How a braid covers the seam. */
export const braid: HandDrawing = {
  name: 'braid',
  ...smallFrame,
  applies: () => true,
  frames: [onSeam],
};
