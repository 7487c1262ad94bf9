import type { StockProblem } from './groups.js';

/**
 * Sets of open beads to begin with, each able to serve all stitches: the choice without limits,
 * mended where its beads do not reach, and the beads of which there is most. Empty when no set
 * under the rules can serve them.
 */
export function startsWithin(problem: StockProblem, unlimited: readonly number[]): number[][] {
  const { beads, limit, most, kept, stitches } = problem;
  const must = Array.from({ length: kept }, (_, j) => j);
  const loose = Array.from({ length: beads - kept }, (_, j) => kept + j).filter(
    (j) => limit[j] > 0,
  );
  const byStock = loose.slice().sort((p, q) => limit[q] - limit[p] || p - q);
  const plenty = [...must, ...byStock.slice(0, Math.max(0, most - kept))];
  if (roomOf(plenty, limit) < stitches) return [];
  const wanted = unlimited.filter((j) => j >= kept && limit[j] > 0);
  return [mended(problem, [...must, ...wanted]), plenty].filter(
    (open) => open.length > 0 && roomOf(open, limit) >= stitches,
  );
}

const roomOf = (open: readonly number[], limit: Float64Array): number =>
  open.reduce((sum, j) => sum + limit[j], 0);

/**
 * Opens beads, then swaps them, until the limits reach: each time the bead that brings the missing
 * stitches at the least difference a stitch, counted as if nothing else ran out.
 */
function mended(problem: StockProblem, start: readonly number[]): number[] {
  const { beads, limit, most, kept, stitches } = problem;
  const open = start.slice();
  for (let turn = 0; ; turn++) {
    const missing = stitches - roomOf(open, limit);
    if (missing <= 0) return open;
    let best: { slot: number; bead: number; score: number } | undefined;
    const patient = turn < 3 * most;
    const slots = open.length < most ? [open.length] : [...open.keys()].slice(kept);
    for (let b = kept; b < beads; b++) {
      if (open.includes(b)) continue;
      const fits = misfit(problem, b);
      for (const slot of slots) {
        const gain = Math.min(missing, limit[b] - (slot < open.length ? limit[open[slot]] : 0));
        if (!(gain > 0)) continue;
        const score = patient ? fits / gain : -gain;
        if (!best || score < best.score) best = { slot, bead: b, score };
      }
    }
    if (!best) return open;
    open[best.slot] = best.bead;
  }
}

/** Sum of differences of a bead over all stitches: how ill it fits on the whole. */
function misfit({ groups: n, difference, weight, supply }: StockProblem, j: number): number {
  let sum = 0;
  for (let g = 0; g < n; g++) sum += supply[g] * weight[g] * difference[j * n + g];
  return sum;
}
