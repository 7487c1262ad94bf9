import { leastOf } from './chain.js';
import type { Thread } from './thread.js';

/**
 * The same as `fewestChanges` for a panel whose wedges all repeat one string: a row is worked
 * `wedges` times, so its end meets its own beginning. Exact as well: within a row the first bead
 * is part of the state, between rows the last bead alone.
 *
 * @returns bead of each unit; length U
 */
export function fewestChangesRepeated(thread: Thread, penalty: number): Uint8Array {
  const { units, beads, cost, rows, wedges } = thread;
  const beadOf = new Uint8Array(units);
  const rowCount = rows.length - 1;
  if (units === 0) return beadOf;
  const square = beads * beads;
  const inner = penalty * wedges;
  const closing = penalty * (wedges - 1);
  /** At [f·K + b]: the least so far when the row began with f and has now come to b. */
  const best = new Float64Array(square);
  /** The least up to the end of a row that ends with bead b. */
  let ended = new Float64Array(beads);
  const changed = new Uint8Array(units * square);
  const from = new Uint8Array(units * beads);
  /** The best first bead of a row that ends with b, and the bead of the row before. */
  const firstOf = new Uint8Array(rowCount * beads);
  const beforeOf = new Uint8Array(rowCount * beads);

  for (let row = 0; row < rowCount; row++) {
    const before = leastOf(ended, 0, beads);
    best.fill(Infinity);
    for (let f = 0; f < beads; f++) {
      const kept = ended[f];
      const change = ended[before] + penalty;
      const enters = row > 0 && change < kept;
      beforeOf[row * beads + f] = enters ? before : f;
      best[f * beads + f] = (enters ? change : kept) + cost[rows[row] * beads + f];
    }
    for (let u = rows[row] + 1; u < rows[row + 1]; u++) {
      for (let f = 0; f < beads; f++) {
        const least = leastOf(best, f * beads, beads);
        from[u * beads + f] = least;
        const afterChange = best[f * beads + least] + inner;
        for (let b = 0; b < beads; b++) {
          const kept = best[f * beads + b];
          const change = afterChange < kept;
          if (change) changed[u * square + f * beads + b] = 1;
          best[f * beads + b] = (change ? afterChange : kept) + cost[u * beads + b];
        }
      }
    }
    const next = new Float64Array(beads).fill(Infinity);
    for (let f = 0; f < beads; f++) {
      for (let b = 0; b < beads; b++) {
        const whole = best[f * beads + b] + (f === b ? 0 : closing);
        if (whole < next[b]) {
          next[b] = whole;
          firstOf[row * beads + b] = f;
        }
      }
    }
    ended = next;
  }

  let bead = leastOf(ended, 0, beads);
  for (let row = rowCount - 1; row >= 0; row--) {
    const first = firstOf[row * beads + bead];
    for (let u = rows[row + 1] - 1; u >= rows[row]; u--) {
      beadOf[u] = bead;
      if (changed[u * square + first * beads + bead]) bead = from[u * beads + first];
    }
    bead = beforeOf[row * beads + first];
  }
  return beadOf;
}
