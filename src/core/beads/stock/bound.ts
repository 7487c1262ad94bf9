import { nearPairs } from '../choice/pairs.js';
import type { Pairs } from '../choice/pairs.js';
import type { StockProblem } from './groups.js';
import { cheapestTwo } from './moves.js';
import type { Served } from './search.js';
import { topGains } from './top-gains.js';

const workAllowed = 40_000_000;
const mostRounds = 100;
/** How near the bound must come to count as a proof, as a share of the cost. */
const close = 1e-6;

/**
 * A cost below which no choice within the limits can lie: Lagrangian relaxation of "each stitch is
 * served once", as for the choice without limits, where a bead takes in no more than its limit.
 * Any prices give a valid bound; subgradient steps improve them. They stay below a cap, so that
 * only pairs nearer than the cap are ever looked at.
 */
export function stockBound(problem: StockProblem, found: Served): number {
  const { groups: n, beads, weight, supply, limit, most, kept } = problem;
  const { cost, price: slotPrice } = found.assignment;
  const { first, second } = cheapestTwo(problem, found.open, slotPrice);
  const cap = second.map((next, g) => Math.min(next, first[g] + 20 * weight[g]) * 1.25 + weight[g]);
  const price = first.map((nearest, g) => (nearest + Math.min(second[g], cap[g])) / 2);
  const reach = cap.map((most, g) => (weight[g] > 0 ? most / weight[g] : 0));
  const pairs = nearPairs({ ...problem, places: n }, reach);
  const gains = topGains(n);
  const reduced = new Float64Array(beads);
  const served = new Float64Array(n);
  const rounds = Math.min(mostRounds, Math.ceil(workAllowed / (pairs.place.length + n)));
  let bound = 0;
  let stride = 1;
  let stale = 0;
  for (let round = 0; round < rounds; round++) {
    let value = 0;
    for (let g = 0; g < n; g++) value += supply[g] * price[g];
    for (let j = 0; j < beads; j++) {
      gains.clear();
      for (let at = pairs.from[j]; at < pairs.from[j + 1]; at++) {
        const g = pairs.place[at];
        const gain = price[g] - weight[g] * pairs.difference[at];
        if (gain > 0) gains.add(gain, supply[g]);
      }
      reduced[j] = -gains.sum(limit[j]);
    }
    const chosen = cheapest(reduced, most, kept);
    for (const j of chosen) value += reduced[j];
    if (value > bound + 1e-4 * (cost - bound)) stale = 0;
    else if (++stale >= 4) {
      stride /= 2;
      stale = 0;
    }
    if (value > bound) bound = Math.min(value, cost);
    if (cost - bound <= close * cost) break;
    serve(problem, pairs, chosen, price, served);
    let norm = 0;
    for (let g = 0; g < n; g++) norm += (supply[g] - served[g]) ** 2;
    if (norm === 0) break;
    const step = (stride * (cost - value)) / norm;
    for (let g = 0; g < n; g++) {
      price[g] = Math.min(cap[g], Math.max(0, price[g] + step * (supply[g] - served[g])));
    }
  }
  return bound;
}

/** How many stitches of each group the chosen beads take in, largest gains first. */
function serve(
  { weight, supply, limit }: StockProblem,
  pairs: Pairs,
  chosen: readonly number[],
  price: Float64Array,
  served: Float64Array,
): void {
  served.fill(0);
  const gain = new Float64Array(price.length);
  for (const j of chosen) {
    const takes: number[] = [];
    let stitches = 0;
    for (let at = pairs.from[j]; at < pairs.from[j + 1]; at++) {
      const g = pairs.place[at];
      gain[g] = price[g] - weight[g] * pairs.difference[at];
      if (gain[g] <= 0) continue;
      takes.push(g);
      stitches += supply[g];
    }
    if (stitches > limit[j]) takes.sort((p, q) => gain[q] - gain[p] || p - q);
    let left = limit[j];
    for (const g of takes) {
      const taken = Math.min(left, supply[g]);
      served[g] += taken;
      left -= taken;
      if (left <= 0) break;
    }
  }
}

/** The kept beads and then those of least reduced cost, `most` in all, none above 0. */
function cheapest(reduced: Float64Array, most: number, kept: number): number[] {
  const order = Array.from(reduced.keys());
  const loose = order.slice(kept).filter((j) => reduced[j] < 0);
  loose.sort((p, q) => reduced[p] - reduced[q] || p - q);
  return order.slice(0, kept).concat(loose.slice(0, most - kept));
}
