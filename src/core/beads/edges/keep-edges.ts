import { bare } from '../bead.js';
import type { BeadOfStitch } from '../bead.js';
import { layingThread } from '../tidy/panel-thread.js';
import type { PanelBeads } from '../tidy/panel-thread.js';
import { costOfBeads } from '../tidy/thread.js';
import type { Steps } from '../../steps.js';
import { edgesAt, passMessages } from './messages.js';
import { costOfPairs, pairCost, pairsOf } from '../tidy/pairs.js';
import type { Pairs } from '../tidy/pairs.js';

/** `--edges` where nothing else is said. */
export const defaultEdges = 0.3;
/** What a bead costs that a unit must not have: more than any other assignment. */
const forbidden = 1e9;
/** Work that messages may take, in comparisons of two beads; and rounds at most. */
const mostWork = 4e7;
const mostRounds = 30;

/** Units that are changed in one step. */
const unitsAStep = 4096;

/** What keeping edges did. */
export interface EdgeReport {
  readonly strength: number;
  /** Σ CIEDE2000 of stitches and beads + strength · contrast lost and made up: before and after. */
  readonly before: number;
  readonly after: number;
  /** No assignment of these beads has a smaller sum; absent where jars limit it. */
  readonly lowerBound?: number;
}

export interface EdgeInput extends PanelBeads {
  /** What a CIEDE2000 of contrast between two touching stitches counts, against one of a stitch. */
  readonly strength: number;
  /** How many stitches may have each bead of the palette, by palette index. */
  readonly limits?: ArrayLike<number>;
}

/**
 * Assigns the chosen beads anew so that neighbours that differ in the picture differ in beads, and
 * no others do: small is the sum of every stitch's difference and of `strength` times the contrast
 * lost or made up between touching stitches. Messages find the assignment, single changes finish
 * it; guarded stitches keep their beads.
 */
export function* keepEdges(input: EdgeInput): Steps<{ beadOf: BeadOfStitch; report: EdgeReport }> {
  const panel = yield* layingThread(input);
  yield { stage: 'finish' };
  const { thread, start } = panel;
  const own = thread.cost.map((cost) => (cost === Infinity ? forbidden : cost));
  const finite = { ...thread, cost: own };
  const pairs = pairsOf(panel, input, input.strength);
  yield { stage: 'finish' };
  const costOf = (beadOf: Uint8Array) => costOfBeads(finite, beadOf) + costOfPairs(pairs, beadOf);
  const before = costOf(start);
  const left = input.limits && roomOf(input.chosen, input.limits, start, thread.wedges);
  let best = yield* descended(start.slice(), own, pairs, left);
  let lowerBound: number | undefined;
  if (!left) {
    const work = 2 * pairs.from.length * pairs.beads * pairs.beads;
    const rounds = Math.max(2, Math.min(mostRounds, Math.floor(mostWork / Math.max(1, work))));
    const passed = yield* passMessages(own, thread.units, pairs, rounds);
    lowerBound = passed.lowerBound;
    const other = yield* descended(passed.beadOf, own, pairs);
    if (costOf(other) < costOf(best)) best = other;
  }
  const beadOf: BeadOfStitch = new Int16Array(input.beadOf.length).fill(bare);
  best.forEach((place, unit) => {
    for (const s of panel.stitchesOf(unit)) beadOf[s] = input.chosen[place];
  });
  const after = costOf(best);
  const bound = lowerBound !== undefined && { lowerBound: Math.min(lowerBound, after) };
  return { beadOf, report: { strength: input.strength, before, after, ...bound } };
}

/** How many units more may have each bead. */
function roomOf(
  chosen: readonly number[],
  limits: ArrayLike<number>,
  beadOf: Uint8Array,
  wedges: number,
): Float64Array {
  const left = Float64Array.from(chosen, (bead) => Math.floor(limits[bead] / wedges));
  for (const place of beadOf) left[place]--;
  return left;
}

/** Changes single units as long as that makes the sum smaller; in place. */
function* descended(
  beadOf: Uint8Array,
  own: Float64Array,
  pairs: Pairs,
  left?: Float64Array,
): Steps<Uint8Array> {
  const { from, to, beads } = pairs;
  const units = beadOf.length;
  const [outward, inward] = [edgesAt(from, units), edgesAt(to, units)];
  const here = new Float64Array(beads);
  for (let changed = true, sweep = 0; changed && sweep < 50; sweep++) {
    changed = false;
    for (let u = 0; u < units; u++) {
      if (u % unitsAStep === unitsAStep - 1) yield { stage: 'finish' };
      for (let b = 0; b < beads; b++) here[b] = own[u * beads + b];
      for (let n = outward.start[u]; n < outward.start[u + 1]; n++) {
        const e = outward.list[n];
        for (let b = 0; b < beads; b++) here[b] += pairCost(pairs, e, b, beadOf[to[e]]);
      }
      for (let n = inward.start[u]; n < inward.start[u + 1]; n++) {
        const e = inward.list[n];
        for (let b = 0; b < beads; b++) here[b] += pairCost(pairs, e, beadOf[from[e]], b);
      }
      let best = beadOf[u];
      for (let b = 0; b < beads; b++) {
        if (here[b] < here[best] - 1e-9 && (!left || left[b] > 0)) best = b;
      }
      if (best === beadOf[u]) continue;
      if (left) {
        left[beadOf[u]]++;
        left[best]--;
      }
      beadOf[u] = best;
      changed = true;
    }
    yield { stage: 'finish' };
  }
  return beadOf;
}
