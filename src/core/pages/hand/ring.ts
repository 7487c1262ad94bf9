import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { moved } from './held.js';
import { arc, part, placed, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';
import { tinted } from './work.js';

/** From its tail round the ring and off to the left hand, over itself. */
const laid = smooth([
  [10, 43],
  [14.8, 34],
  ...arc([27, 23], [10.2, 10.4], 176, 480).filter((_, n) => n % 8 === 0),
  [15.6, 26.8],
  [9, 20.4],
  [0.9, 14.2],
]);

/** The thread laid in a ring. */
function lay(pen: Pen): void {
  pen.thread(part(laid, 0, 0.5), { ...moved, cut: 'start' });
  pen.thread(part(laid, 0.5, 1), moved);
  pen.bead([5, 17], 36, moved);
  pen.arrow(arc([27, 22.6], 5, 200, 400));
  pen.number(1, [27, 22.6]);
}

/** The hook goes into the ring and draws the thread through it as a loop. */
function draw(pen: Pen): void {
  pen.thread(part(laid, 0.3, 0.72), moved);
  pen.hook([7.6, 19.6], 19, 45);
  pen.thread(part(laid, 0, 0.32), { ...moved, cut: 'start' });
  pen.thread(part(laid, 0.7, 1), moved);
  pen.bead([3.6, 16], 36, moved);
  pen.number(2, [7.6, 26.4]);
  pen.arrow([
    [40, 38.4],
    [49, 41.6],
  ]);
  pen.number(3, [37, 37.2]);
}

/** Round 1 stands round the ring, which the tail draws close. */
function close(pen: Pen, { shape: { wedges, beadsFace } }: HandFacts): void {
  const middle: Spot = [28, 22.5];
  const step = 360 / wedges;
  const wide = Math.min(9.4, (2 * Math.PI * 11.4) / wedges);
  const size = Math.min(1.1, wide / 8);
  const spin = (spots: readonly Spot[], n: number) =>
    placed(spots, middle, -(n + 0.5) * step - 100);
  const bead = (n: number, far: number) => {
    const [at] = spin([[far, 0]], n);
    const fresh = n === wedges - 1;
    pen.bead(at, -(n + 0.5) * step - 100, {
      moves: fresh,
      across: 5.6 * size,
      long: 4.4 * size,
    });
  };
  const tail = smooth([
    [7, 43],
    [14, 37],
    [23, 29.4],
    [24.6, 24],
  ]);
  pen.thread(part(tail, 0, 1), { ...moved, cut: 'start' });
  pen.dot(middle, 5.6, { ...tinted(pen) });
  pen.dot(middle, 4.1, { ...moved });
  for (let n = 0; n < wedges; n++) {
    const look = n === wedges - 1 ? tinted(pen) : {};
    if (beadsFace === 'away') bead(n, 14.4);
    const [foot, a, b] = spin(
      [
        [4.6, 0],
        [11.2, -wide * 0.28],
        [11.2, wide * 0.28],
      ],
      n,
    );
    pen.leaf(foot, a, { wide: 2 * size, ...look });
    pen.leaf(foot, b, { wide: 2 * size, ...look });
    if (beadsFace === 'toward') bead(n, 8.4);
    const [point, far, near] = spin(
      [
        [11.6, wide / 2],
        [13.4, -wide / 2],
        [10.4, -wide / 2],
      ],
      n,
    );
    pen.leaf(point, far, { wide: 2.1 * size, ...look });
    pen.leaf(point, near, { wide: 2.1 * size, ...look });
  }
  pen.arrow([
    [21, 37.2],
    [13.4, 43],
  ]);
  pen.number(4, [24, 38.4]);
}

/** How the first round begins. */
export const magicRing: HandDrawing = {
  name: 'ring',
  ...smallFrame,
  applies: () => true,
  frames: [lay, draw, close],
};
