import type { Steps } from '../../steps.js';
import { madeUpShare, pairCost } from '../tidy/pairs.js';
import type { Pairs } from '../tidy/pairs.js';

/** Comparisons of two beads in a step. */
const aStep = 500_000;

/** What passing messages found. */
export interface Passed {
  /** Place of the bead of each unit. */
  readonly beadOf: Uint8Array;
  /** No assignment costs less. */
  readonly lowerBound: number;
}

/**
 * Sequential tree-reweighted message passing: V. Kolmogorov, "Convergent tree-reweighted message
 * passing for energy minimization", IEEE PAMI 28(10), 2006. Units send what each bead of a later
 * (then of an earlier) one would cost them; every round the bound rises or stays.
 *
 * @param own what each bead costs at each unit by itself, finite, at [u·K + b]
 * @param rounds how often messages go there and back, 1 or more
 */
export function* passMessages(
  own: Float64Array,
  units: number,
  pairs: Pairs,
  rounds: number,
): Steps<Passed> {
  const { from, to, beads: K } = pairs;
  const count = from.length;
  const outward = edgesAt(from, units);
  const inward = edgesAt(to, units);
  /** Message of each pair to its later and to its earlier unit. */
  const late = new Float64Array(count * K);
  const early = new Float64Array(count * K);
  const share = new Float64Array(units);
  for (let u = 0; u < units; u++) {
    const out = outward.start[u + 1] - outward.start[u];
    share[u] = 1 / Math.max(1, out, inward.start[u + 1] - inward.start[u]);
  }
  const here = new Float64Array(K);
  const gathered = (u: number): void => {
    for (let b = 0; b < K; b++) here[b] = own[u * K + b];
    for (let n = outward.start[u]; n < outward.start[u + 1]; n++) {
      const at = outward.list[n] * K;
      for (let b = 0; b < K; b++) here[b] += early[at + b];
    }
    for (let n = inward.start[u]; n < inward.start[u + 1]; n++) {
      const at = inward.list[n] * K;
      for (let b = 0; b < K; b++) here[b] += late[at + b];
    }
  };
  /** Takes the least away from the first K values at `at` and returns it. */
  const levelled = (values: Float64Array, at: number): number => {
    let least = values[at];
    for (let b = 1; b < K; b++) if (values[at + b] < least) least = values[at + b];
    for (let b = 0; b < K; b++) values[at + b] -= least;
    return least;
  };
  const alone = new Float64Array(K);
  yield { stage: 'finish' };
  const costsOf = costsOfPairs(pairs);
  yield { stage: 'finish' };
  const send = (u: number, e: number, got: Float64Array, given: Float64Array): number => {
    const at = e * K;
    const own = share[u];
    for (let i = 0; i < K; i++) alone[i] = own * here[i] - got[at + i];
    const { costs, from: first } = costsOf(e);
    // These are the innermost loops of all.
    let k = first;
    for (let j = 0; j < K; j++, k++) given[at + j] = alone[0] + costs[k];
    for (let i = 1; i < K; i++) {
      const one = alone[i];
      for (let j = 0; j < K; j++, k++) {
        const cost = one + costs[k];
        if (cost < given[at + j]) given[at + j] = cost;
      }
    }
    return levelled(given, at);
  };
  /** Units after which others may work. */
  const most = Math.max(1, Math.floor(aStep / (Math.max(1, count / units) * K * K)));
  // The loops are functions of their own: those of one that gives way begin slowly each time.
  const sendLater = (first: number, end: number): void => {
    for (let u = first; u < end; u++) {
      gathered(u);
      levelled(here, 0);
      for (let n = outward.start[u]; n < outward.start[u + 1]; n++) {
        send(u, outward.list[n], early, late);
      }
    }
  };
  /** Sends from `end - 1` down to `first`, and adds what is sure to a sum. */
  const sendEarlier = (first: number, end: number, before: number): number => {
    let sum = before;
    for (let u = end - 1; u >= first; u--) {
      gathered(u);
      sum += levelled(here, 0);
      for (let n = inward.start[u]; n < inward.start[u + 1]; n++) {
        sum += send(u, inward.list[n], late, early);
      }
    }
    return sum;
  };
  let bound = -Infinity;
  for (let round = 0; round < rounds; round++) {
    for (let u = 0; u < units; u += most) {
      sendLater(u, Math.min(units, u + most));
      yield { stage: 'finish' };
    }
    let sum = 0;
    for (let u = units; u > 0; u -= most) {
      sum = sendEarlier(Math.max(0, u - most), u, sum);
      yield { stage: 'finish' };
    }
    bound = Math.max(bound, sum);
  }
  /** Each unit in turn takes what is best beside those before it and by the messages of the others. */
  const beadOf = new Uint8Array(units);
  const decode = (first: number, end: number): void => {
    for (let u = first; u < end; u++) {
      for (let b = 0; b < K; b++) here[b] = own[u * K + b];
      for (let n = outward.start[u]; n < outward.start[u + 1]; n++) {
        const at = outward.list[n] * K;
        for (let b = 0; b < K; b++) here[b] += early[at + b];
      }
      for (let n = inward.start[u]; n < inward.start[u + 1]; n++) {
        const e = inward.list[n];
        for (let b = 0; b < K; b++) here[b] += pairCost(pairs, e, beadOf[from[e]], b);
      }
      let best = 0;
      for (let b = 1; b < K; b++) if (here[b] < here[best]) best = b;
      beadOf[u] = best;
    }
  };
  for (let u = 0; u < units; u += most) {
    decode(u, Math.min(units, u + most));
    yield { stage: 'finish' };
  }
  return { beadOf, lowerBound: bound };
}

/** Costs of pairs that are kept at most: 8 MB. */
const mostKept = 1_000_000;

/**
 * What every two beads cost at a pair, at [from + j·K + i] and the same at [from + i·K + j]; worked
 * out once for all pairs, or for each anew where those would take too much room.
 */
function costsOfPairs(pairs: Pairs): (e: number) => { costs: Float64Array; from: number } {
  const { beads: K, wanted, shown, price } = pairs;
  const fill = (e: number, costs: Float64Array, from: number): void => {
    for (let k = 0; k < K * K; k++) {
      const lost = wanted[e] - shown[k];
      costs[from + k] = price * (lost > 0 ? lost : -madeUpShare * lost);
    }
  };
  const each = K * K;
  if (each * wanted.length > mostKept) {
    const found = { costs: new Float64Array(each), from: 0 };
    return (e) => {
      fill(e, found.costs, 0);
      return found;
    };
  }
  const found = { costs: new Float64Array(each * wanted.length), from: 0 };
  wanted.forEach((_, e) => fill(e, found.costs, e * each));
  return (e) => {
    found.from = e * each;
    return found;
  };
}

/** The pairs that have a unit at this end, by unit. */
export function edgesAt(end: Int32Array, units: number): { start: Int32Array; list: Int32Array } {
  const start = new Int32Array(units + 1);
  for (const u of end) start[u + 1]++;
  for (let u = 0; u < units; u++) start[u + 1] += start[u];
  const next = start.slice();
  const list = new Int32Array(end.length);
  end.forEach((u, e) => (list[next[u]++] = e));
  return { start, list };
}
