import type { Steps } from '../../steps.js';
import { withoutClosed } from './lists.js';
import type { NearLists } from './lists.js';
import type { Problem } from './matrix.js';
import { closed, onlyChoice, openCheapest, settle } from './settle.js';

/** What a proof knows and may still spend; all its parts share it. */
export interface Inquiry {
  readonly problem: Problem;
  /** The best choice found, and its cost. */
  best: number[];
  cost: number;
  /** The least bound of all that was ruled out so far; Infinity at first. */
  ruledOut: number;
  /** Steps left: one a look at a place or at a bead near to it. */
  steps: number;
  /** Whether to go no further: the steps are spent, or somebody wants to stop. */
  ended(): boolean;
  /** Takes a choice as the best when it costs less. */
  offer(open: readonly number[]): void;
}

/** A part of the question: all choices that agree with what is settled. */
export interface Part {
  /** By candidate; more gets settled as the bound rises. */
  readonly state: Int8Array;
  /** What each place pays; the best prices so far. Shared by parts: never written into. */
  price: Float64Array;
  lists: NearLists;
  /** No choice of this part costs less. */
  bound: number;
}

/** A bound this share below the best cost rules out: what is left is no better to speak of. */
export const leastBetter = 5e-7;

/** How much of the last direction stays in the next (P. M. Camerini et al., 1975). */
const memory = 0.5;
/** Rounds without gain before the stride is halved, and the stride below which it is no use. */
const patience = 4;
const leastStride = 0.02;

export interface Ascent {
  /** True when the part holds no better choice, so that nothing of it is left to do. */
  readonly done: boolean;
  /** How often each candidate was open of late, 0..1. */
  readonly share: Float64Array;
}

/**
 * Raises the bound of a part by subgradient steps on the prices, settles beads by their reduced
 * costs and offers whatever the relaxation opens.
 *
 * Lagrangian relaxation of "each place is served once": a place pays its price, a bead that opens
 * earns what places pay above their differences, and the best `most` beads open. Any prices give a
 * valid bound (M. L. Fisher, Management Science 27(1):1-18, 1981). Where every place happens to be
 * served once, the relaxed choice is a true one and the best of the part: it was offered, and ends
 * the part.
 */
export function* ascend(
  inquiry: Inquiry,
  part: Part,
  rounds: number,
  firstStride: number,
): Steps<Ascent> {
  const { problem } = inquiry;
  const { places: n, beads, most } = problem;
  const { state } = part;
  const price = part.price.slice();
  const bestPrice = part.price.slice();
  part.price = bestPrice;
  const reduced = new Float64Array(beads);
  const share = new Float64Array(beads);
  const direction = new Float64Array(n);
  const isOpen = new Uint8Array(beads);
  let stride = firstStride;
  let stale = 0;
  let top = -Infinity;
  let offered = '';
  let listed = countNotClosed(state);

  for (let round = 0; round < rounds && !inquiry.ended(); round++) {
    yield { stage: 'proof', bound: part.bound };
    const only = onlyChoice(state, most);
    if (only) {
      inquiry.offer(only);
      return { done: true, share };
    }
    const live = countNotClosed(state);
    if (listed - live > listed / 5) {
      part.lists = withoutClosed(part.lists, state);
      listed = live;
    }
    let value = reduceCosts(inquiry, part.lists, price, reduced);
    const opening = openCheapest(state, reduced, most);
    isOpen.fill(0);
    for (const j of opening.open) {
      isOpen[j] = 1;
      value += reduced[j];
    }
    const name = opening.open.join();
    if (name !== offered) inquiry.offer(opening.open);
    offered = name;

    part.bound = Math.max(part.bound, value);
    const limit = inquiry.cost * (1 - leastBetter);
    if (part.bound >= limit) {
      inquiry.ruledOut = Math.min(inquiry.ruledOut, part.bound);
      return { done: true, share };
    }
    inquiry.ruledOut = Math.min(inquiry.ruledOut, settle(state, reduced, opening, value, limit));
    stale = value > top + 1e-4 * (inquiry.cost - top) ? 0 : stale + 1;
    if (value > top) {
      top = value;
      bestPrice.set(price);
    }
    if (stale >= patience) {
      stride /= 2;
      stale = 0;
      if (stride < leastStride) break;
    }
    for (let j = 0; j < beads; j++) share[j] += 0.1 * (isOpen[j] - share[j]);
    const norm = direct(problem, part.lists, price, isOpen, direction);
    if (norm === 0) break;
    const step = (stride * (inquiry.cost - value)) / norm;
    move(price, direction, step, part.lists.cap);
  }
  return { done: false, share };
}

/**
 * What each bead costs less what its places pay, at most 0, into `reduced`. Returns the sum of all
 * prices.
 */
function reduceCosts(
  inquiry: Inquiry,
  { from, bead, difference }: NearLists,
  price: Float64Array,
  reduced: Float64Array,
): number {
  const { places: n, weight } = inquiry.problem;
  let paid = 0;
  let looks = n;
  reduced.fill(0);
  for (let i = 0; i < n; i++) {
    const w = weight[i];
    const pays = price[i];
    paid += w * pays;
    const end = from[i + 1];
    let at = from[i];
    for (; at < end && difference[at] < pays; at++) {
      reduced[bead[at]] += w * (difference[at] - pays);
    }
    looks += at - from[i];
  }
  // `direct` looks at the same entries again.
  inquiry.steps -= 2 * looks;
  return paid;
}

/**
 * Turns `direction` (by place) towards 1 for a place that nobody serves, 0 for one served once,
 * below 0 for one served by more. Returns its weighted square.
 */
function direct(
  { places: n, weight }: Problem,
  { from, bead, difference }: NearLists,
  price: Float64Array,
  isOpen: Uint8Array,
  direction: Float64Array,
): number {
  let norm = 0;
  for (let i = 0; i < n; i++) {
    const pays = price[i];
    let served = 0;
    for (let at = from[i], end = from[i + 1]; at < end && difference[at] < pays; at++) {
      served += isOpen[bead[at]];
    }
    const to = 1 - served + memory * direction[i];
    direction[i] = to;
    norm += weight[i] * to * to;
  }
  return norm;
}

/** Moves the prices a step; a price above its cap would overlook beads and make a false bound. */
function move(
  price: Float64Array,
  direction: Float64Array,
  step: number,
  cap: Float64Array | undefined,
): void {
  for (let i = 0; i < price.length; i++) {
    const to = Math.max(0, price[i] + step * direction[i]);
    price[i] = cap && to > cap[i] ? cap[i] : to;
  }
}

function countNotClosed(state: Int8Array): number {
  let sum = 0;
  for (const one of state) if (one !== closed) sum++;
  return sum;
}
