import type { Thread } from './thread.js';

/**
 * The beads with the least Σ cost + penalty · colour changes along the thread: exact, by dynamic
 * programming from the centre to the rim (Viterbi's algorithm on a Potts chain; with one penalty
 * for every change a step costs K and not K²). Ties keep the bead, then take the lower one.
 *
 * @returns bead of each unit; length U
 */
export function fewestChanges(thread: Thread, penalty: number): Uint8Array {
  const { units, beads, cost } = thread;
  const beadOf = new Uint8Array(units);
  if (units === 0) return beadOf;
  // best[b]: the least that the units so far can cost when the last of them has bead b.
  const best = cost.slice(0, beads);
  /** 1 where it is best to change to bead b at unit u, from the bead that stands in `from`. */
  const changed = new Uint8Array(units * beads);
  const from = new Uint8Array(units);
  for (let u = 1; u < units; u++) {
    const least = leastOf(best, 0, beads);
    from[u] = least;
    const afterChange = best[least] + penalty;
    const row = u * beads;
    for (let b = 0; b < beads; b++) {
      const kept = best[b];
      if (afterChange < kept) {
        changed[row + b] = 1;
        best[b] = afterChange + cost[row + b];
      } else {
        best[b] = kept + cost[row + b];
      }
    }
  }
  let bead = leastOf(best, 0, beads);
  for (let u = units - 1; u >= 0; u--) {
    beadOf[u] = bead;
    if (changed[u * beads + bead]) bead = from[u];
  }
  return beadOf;
}

/** Place of the least of `count` values from `start` on, counted from there; ties: the first. */
export function leastOf(values: Float64Array, start: number, count: number): number {
  let least = 0;
  for (let b = 1; b < count; b++) if (values[start + b] < values[start + least]) least = b;
  return least;
}
