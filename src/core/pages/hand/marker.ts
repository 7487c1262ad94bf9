import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { part, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';
import { row, stitch, stitchMm, roundMm, top } from './work.js';

const edgeY = 29;
const newY = edgeY - roundMm;
/** The first stitch of the round that ends. */
const firstX = 20;

/** The marker leaves the first stitch of a round when that is worked into, for the one just made. */
function moveUp(pen: Pen, { shape: { beadsFace: face, construction } }: HandFacts): void {
  const first: Spot = [firstX + stitchMm / 2, newY];
  row(pen, { face, y: edgeY, fromX: firstX - stitchMm, many: 4, hiddenFrom: firstX - 1 });
  // In a spiral the end of a round lies one round higher than its beginning.
  if (construction === 'spiral') {
    for (const n of [2, 1]) stitch(pen, [first[0] + n * stitchMm, newY], face);
  }
  stitch(pen, first, face, { fresh: true, topless: true });
  ring(pen, first, 'below');
  top(pen, first, { near: true, far: true });
  ring(pen, first, 'above');
  ring(pen, [firstX - 1.4, edgeY], 'gone');
  pen.arrow(
    smooth([
      [14.4, 36.4],
      [9.6, 29],
      [13.6, 19.6],
    ]),
  );
  pen.number(1, [8, 34.6]);
}

const ringAt = ([x, y]: Spot): Spot[] =>
  smooth([
    [x - 1, y + 2],
    [x - 0.4, y - 2.6],
    [x + 0.9, y - 3.6],
    [x + 2, y - 2],
    [x + 1.8, y + 5],
    [x + 0.2, y + 7.4],
    [x - 1.2, y + 5.6],
    [x - 1, y + 2],
  ]);

/** A ring through a stitch: the part of it below its loops, the part above, and where it hung. */
function ring(pen: Pen, at: Spot, what: 'below' | 'above' | 'gone'): void {
  const look = { moves: true, wide: 0.9, fill: '#ffffff' };
  if (what === 'below') pen.thread(part(ringAt(at), 0, 0.3), look);
  else if (what === 'above') pen.thread(part(ringAt(at), 0.28, 1), look);
  else pen.line(part(ringAt(at), 0.42, 1), { dashed: true, moves: true });
}

/** Where a round begins, and how that is kept. */
export const marker: HandDrawing = {
  name: 'marker',
  ...smallFrame,
  applies: () => true,
  frames: [moveUp],
};
