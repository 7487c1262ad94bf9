import { finishedEdge } from '../../panel/edge.js';
import { defaultStartDegrees, turnsInWedges } from '../../panel/turn.js';
import { directionOf, shapeLimits } from '../../panel/shape.js';
import type { Shape } from '../../panel/shape.js';
import { millionth } from '../../units.js';

/**
 * How wide a panel is as it is worn: between its leftmost and its rightmost edge as it hangs with
 * its 12 o'clock on top, millimetres. Unlike the longest diagonal it depends on how a polygon is
 * turned: a hexagon with a corner on top is only 0.87 of its diagonal wide.
 *
 * @param startDegrees default: rim step or wedge line at 12 o'clock
 */
export function wornWidthMm(shape: Shape, startDegrees?: number): number {
  const direction = directionOf(shape);
  // The edge alone: no stitch need be laid out for it.
  const edge = finishedEdge({
    shape,
    direction,
    startDegrees: startDegrees ?? defaultStartDegrees(shape, direction),
    turns: turnsInWedges(shape),
  });
  let [left, right] = [Infinity, -Infinity];
  for (let p = 0; p < edge.length; p += 2) {
    left = Math.min(left, edge[p]);
    right = Math.max(right, edge[p]);
  }
  return millionth(right - left);
}

/** The worn width for every number of rounds that a panel may have, by number of rounds. */
export function wornWidths(shape: Shape, startDegrees?: number): Map<number, number> {
  const widths = new Map<number, number>();
  const { least, most } = shapeLimits.rounds;
  for (let rounds: number = least; rounds <= most; rounds++) {
    widths.set(rounds, wornWidthMm({ ...shape, rounds }, startDegrees));
  }
  return widths;
}

/**
 * The number of rounds whose width comes nearest to the wish and is at least `leastMm`; ties go
 * to the smaller, and 2 is the answer where none is wide enough.
 */
export function nearestRounds(
  widths: ReadonlyMap<number, number>,
  wishMm: number,
  leastMm: number,
): number {
  let best: number | undefined;
  for (const [rounds, width] of widths) {
    if (width < leastMm) continue;
    const off = Math.abs(width - wishMm);
    if (best === undefined || off < Math.abs(widths.get(best)! - wishMm) - 1e-9) best = rounds;
  }
  return best ?? shapeLimits.rounds.least;
}
