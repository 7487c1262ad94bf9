import type { Shape } from './shape.js';
import { doubledStitch } from './turn.js';

/**
 * The stitch of round r-1 that stitch i of round r is worked into. Round 1 has none: it is worked
 * into the ring.
 *
 * @param r round number, 2 or more
 * @param i 0-based place in round r
 * @returns 0-based place in round r-1
 */
export function parentOf(shape: Pick<Shape, 'increase'>, r: number, i: number): number {
  const wedge = Math.floor(i / r);
  const j = i - wedge * r;
  const m = doubledStitch(shape.increase, r - 1);
  return wedge * (r - 1) + (j <= m ? j : j - 1);
}

/**
 * Place inside its wedge of the first of the two stitches of round r that share a parent; the
 * other follows it. Undefined in round 1, which has no doubled pairs.
 */
export function pairStart(shape: Pick<Shape, 'increase'>, r: number): number | undefined {
  return r < 2 ? undefined : doubledStitch(shape.increase, r - 1);
}
