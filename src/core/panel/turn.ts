import type { Shape } from './shape.js';
import { millionth } from '../units.js';

/**
 * 0-based index, inside a wedge of round r, of the stitch that is worked twice to make round r+1.
 * A true middle does not exist for even r: the two middles alternate.
 */
export function doubledStitch(increase: Shape['increase'], r: number): number {
  if (increase === 'first') return 0;
  if (increase === 'last') return r - 1;
  if (r % 2 === 1) return (r - 1) / 2;
  return r % 4 === 2 ? r / 2 - 1 : r / 2;
}

/**
 * How far the wedge lines have rotated by each round, in wedge angles (360°/N), positive with the
 * direction of work. Places every child stitch, on average over a round, `lean` stitch widths
 * behind its parent.
 *
 * @returns turn by round number, 0 to R+1 (index 0 unused)
 */
export function turnsInWedges(shape: Pick<Shape, 'rounds' | 'increase' | 'lean'>): Float64Array {
  const turns = new Float64Array(shape.rounds + 2);
  for (let r = 1; r <= shape.rounds; r++) {
    const m = doubledStitch(shape.increase, r);
    turns[r + 1] = turns[r] + ((m + 0.5) / r - 0.5 - shape.lean) / (r + 1);
  }
  return turns;
}

/**
 * The start angle that brings the rim's step (spiral) or wedge line (joined) to 12 o'clock, where
 * frame or seam hides it. Degrees, clockwise on the bead face.
 */
export function defaultStartDegrees(shape: Shape, direction: 1 | -1): number {
  const turns = turnsInWedges(shape);
  const R = shape.rounds;
  const atRim =
    shape.construction === 'spiral' ? turns[R] + (turns[R + 1] - turns[R]) / 2 : turns[R];
  const degrees = (-direction * atRim * 360) / shape.wedges;
  return millionth(degrees);
}
