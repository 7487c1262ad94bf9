import { costOfAll } from './matrix.js';
import type { Problem } from './matrix.js';
import { nearPairs } from './pairs.js';
import type { Pairs } from './pairs.js';
import { startPrices } from './prices.js';

/** Work is counted in looked-up differences, never in time: a clock must not decide a result. */
const workAllowed = 16_000_000;
const mostRounds = 100;
/** How near the bound must come to count as a proof, as a share of the cost. */
const close = 1e-6;

/**
 * A cost below which no choice can lie. Lagrangian relaxation of "each place is served once":
 * every place pays a price, and the beads whose places pay most above their differences open.
 * Any prices give a valid bound; subgradient steps improve them (M. L. Fisher, Management
 * Science 27(1):1-18, 1981). Prices start between nearest and second nearest of the choice at
 * hand and stay below a cap, so that only pairs nearer than the cap are ever looked at.
 */
export function lowerBound(problem: Problem, open: readonly number[], cost: number): number {
  const { places: n, beads, weight, most, kept } = problem;
  let bound = Math.min(cost, costOfAll(problem));
  if (cost - bound <= close * cost) return bound;
  const { price, cap } = startPrices(problem, open);
  const pairs = nearPairs(problem, cap);
  const reduced = new Float64Array(beads);
  const served = new Int32Array(n);
  const rounds = Math.min(mostRounds, Math.floor(workAllowed / (pairs.place.length + n)));
  let stride = 1;
  let stale = 0;
  for (let round = 0; round < rounds; round++) {
    let value = 0;
    for (let i = 0; i < n; i++) value += weight[i] * price[i];
    for (let j = 0; j < beads; j++) reduced[j] = reducedCost(pairs, j, price, weight);
    served.fill(0);
    for (const j of cheapest(reduced, most, kept)) {
      value += reduced[j];
      for (let at = pairs.from[j]; at < pairs.from[j + 1]; at++) {
        if (pairs.difference[at] < price[pairs.place[at]]) served[pairs.place[at]]++;
      }
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
    for (let i = 0; i < n; i++) {
      price[i] = Math.min(cap[i], Math.max(0, price[i] + step * (1 - served[i])));
    }
  }
  return bound;
}

/** What bead j costs less the prices of the places that it serves below their price; <= 0. */
function reducedCost(pairs: Pairs, j: number, price: Float64Array, weight: Float64Array): number {
  const { from, place, difference } = pairs;
  let sum = 0;
  for (let at = from[j]; at < from[j + 1]; at++) {
    const i = place[at];
    const over = difference[at] - price[i];
    if (over < 0) sum += weight[i] * over;
  }
  return sum;
}

/** The kept beads and then those of least reduced cost, `most` in all, none above 0. */
function cheapest(reduced: Float64Array, most: number, kept: number): number[] {
  const order = Array.from(reduced.keys());
  const loose = order.slice(kept).filter((j) => reduced[j] < 0);
  loose.sort((p, q) => reduced[p] - reduced[q] || p - q);
  return order.slice(0, kept).concat(loose.slice(0, most - kept));
}
