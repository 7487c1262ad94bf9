import { part, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';

/** The hook while loops lie on it: its tip, and how it lies. */
const held = { tip: [9.5, 10.2] as Spot, degrees: -6, long: 41.5 };
export const moved = { moves: true } as const;

/** Height of the shaft's middle. */
export const onShaft = (x: number): number =>
  held.tip[1] + Math.tan((held.degrees * Math.PI) / 180) * (x - held.tip[0]);

export function hook(pen: Pen): void {
  pen.hook(held.tip, held.degrees, held.long);
}

/** A loop round the shaft at x, its two ends at spots of the work: behind the shaft, before it. */
export function loopAt(
  x: number,
  [a, b]: readonly [Spot, Spot],
): readonly [behind: Spot[], before: Spot[]] {
  const y = onShaft(x);
  const line = smooth([
    a,
    [x - 2 + 0.2 * (a[0] - x), y + 6],
    [x - 1.4, y - 0.6],
    [x, y - 2.5],
    [x + 1.5, y - 0.6],
    [x + 2 + 0.2 * (b[0] - x), y + 6],
    b,
  ]);
  return [part(line, 0, 0.5), part(line, 0.5, 1)];
}
