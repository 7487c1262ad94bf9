import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { arc, part, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';
import { tinted } from './work.js';

/** Middle of the work, cut through and seen from the end of the row; the worker sits on the right. */
const workX = 23;
const rounds = [34.5, 26.5, 18.5];

/** On which side of the work the beads come to lie, looked at along the row. */
function beside(pen: Pen, { shape: { beadsFace } }: HandFacts): void {
  const away = beadsFace === 'away';
  const beadX = workX + (away ? -5.2 : 5.2);
  rounds.forEach((y, n) => {
    const fresh = n === rounds.length - 1 ? tinted(pen) : {};
    pen.leaf([workX, y + 4.6], [workX, y - 3], { wide: 4.4, ...fresh });
    for (const x of [-1.7, 1.7]) pen.dot([workX + x, y - 3.4], 1.5, fresh);
    pen.bead([beadX, y], 84, { moves: n === rounds.length - 1 });
  });
  eye(pen, [44.5, 12]);
  pen.line(
    [
      [40, 12.9],
      [workX + 5, 17.6],
    ],
    { dashed: true },
  );
  const hand = smooth([
    [beadX, 15.4],
    [beadX + (away ? -1 : 1), 10.6],
    [beadX + (away ? -5 : 4), 5.4],
  ]);
  pen.thread(part(hand, 0, 1), { moves: true });
}

/** The worker's eye, from the side; it looks to the left. */
function eye(pen: Pen, [x, y]: Spot): void {
  pen.line(
    smooth([
      [x + 4, y - 3.6],
      [x - 1, y - 3.2],
      [x - 4, y + 0.6],
    ]),
    { moves: true },
  );
  pen.line(
    smooth([
      [x + 4, y + 3.4],
      [x - 0.5, y + 2.8],
      [x - 4, y + 0.6],
    ]),
    { moves: true },
  );
  pen.area(arc([x - 1.6, y + 0.1], [1.3, 2.3], 0, 360), '#1a1a1a');
}

/** Which face the beads come to lie on. */
export const beadSide: HandDrawing = {
  name: 'bead-side',
  ...smallFrame,
  applies: () => true,
  frames: [beside],
};
