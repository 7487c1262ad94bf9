import { costOfAll } from './matrix.js';
import type { Problem } from './matrix.js';

/** Work is counted in looked-up differences, never in time. */
const workAllowed = 150_000_000;
const mostRounds = 60;
/** How near the bound must come to count as a proof, as a share of the cost. */
const close = 1e-6;

/**
 * A cost below which no choice can lie. Lagrangian relaxation of "each place is served once":
 * every place pays a price, and the beads whose places pay most above their differences open.
 * Any prices give a valid bound; a subgradient step improves them (M. L. Fisher, Management
 * Science 27(1):1-18, 1981). Starts between nearest and second nearest of the choice at hand.
 */
export function lowerBound(problem: Problem, open: readonly number[], cost: number): number {
  const { places: n, beads, difference, weight, most, kept } = problem;
  let bound = Math.min(cost, costOfAll(problem));
  if (cost - bound <= close * cost) return bound;
  const price = startPrices(problem, open);
  const reduced = new Float64Array(beads);
  const served = new Int32Array(n);
  const rounds = Math.min(mostRounds, Math.floor(workAllowed / (n * beads)));
  let stride = 1;
  let stale = 0;
  for (let round = 0; round < rounds; round++) {
    let value = 0;
    for (let i = 0; i < n; i++) value += weight[i] * price[i];
    for (let j = 0; j < beads; j++) {
      const row = j * n;
      let sum = 0;
      for (let i = 0; i < n; i++) {
        const d = difference[row + i];
        if (d < price[i]) sum += weight[i] * (d - price[i]);
      }
      reduced[j] = sum;
    }
    const chosen = cheapest(reduced, most, kept);
    served.fill(0);
    for (const j of chosen) {
      value += reduced[j];
      const row = j * n;
      for (let i = 0; i < n; i++) if (difference[row + i] < price[i]) served[i]++;
    }
    if (value > bound + 1e-4 * (cost - bound)) stale = 0;
    else if (++stale >= 4) {
      stride /= 2;
      stale = 0;
    }
    if (value > bound) bound = Math.min(value, cost);
    if (cost - bound <= close * cost) break;

    let norm = 0;
    for (let i = 0; i < n; i++) norm += weight[i] * (1 - served[i]) * (1 - served[i]);
    if (norm === 0) break;
    const step = (stride * (cost - value)) / norm;
    for (let i = 0; i < n; i++) price[i] = Math.max(0, price[i] + step * (1 - served[i]));
  }
  return bound;
}

/** The kept beads and then those of least reduced cost, `most` in all, none above 0. */
function cheapest(reduced: Float64Array, most: number, kept: number): number[] {
  const order = Array.from(reduced.keys());
  const loose = order.slice(kept).filter((j) => reduced[j] < 0);
  loose.sort((p, q) => reduced[p] - reduced[q] || p - q);
  return order.slice(0, kept).concat(loose.slice(0, most - kept));
}

/** Half way between nearest and second nearest open bead of each place. */
function startPrices(problem: Problem, open: readonly number[]): Float64Array {
  const { places: n, difference } = problem;
  const price = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let nearest = Infinity;
    let next = Infinity;
    for (const j of open) {
      const d = difference[j * n + i];
      if (d < nearest) {
        next = nearest;
        nearest = d;
      } else if (d < next) next = d;
    }
    price[i] = next === Infinity ? nearest : (nearest + next) / 2;
  }
  return price;
}
