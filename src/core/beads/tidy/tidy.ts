import { bare } from '../bead.js';
import type { BeadOfStitch } from '../bead.js';
import type { Steps } from '../../steps.js';
import { costBeside, costOfPairs, pairsOf } from './pairs.js';
import type { Pairs } from './pairs.js';
import { patchOf } from './patch.js';
import { layingThread } from './panel-thread.js';
import type { PanelBeads, PanelThread } from './panel-thread.js';
import { tidiest } from './search.js';
import { isStray } from './strays.js';
import { changesOf, costOfBeads, follows } from './thread.js';

/** What tidying did, for the pattern and the summary. */
export interface TidyReport {
  /** What it was allowed to cost, percent of the mean difference. */
  readonly percent: number;
  /** What it cost, percent of the mean difference, at most `percent`. */
  readonly costPercent: number;
  readonly changesBefore: number;
  readonly changesAfter: number;
  readonly straysBefore: number;
  readonly straysAfter: number;
}

export interface TidyInput extends PanelBeads {
  /** What tidying may cost, percent of the (weighted) sum of CIEDE2000; 0 or more. */
  readonly percent: number;
  /** Palette indices that must not vanish when a stitch has them. */
  readonly keep?: readonly number[];
  /**
   * How many stitches may have each bead of the palette, by palette index; no limits when absent.
   * Where the maker's jars hold less than the picture wants, tidying may find nothing to do.
   */
  readonly limits?: ArrayLike<number>;
  /** What contrast between touching stitches counts in the cost, as in edges/; nothing when absent. */
  readonly edges?: number;
}

/**
 * Fewer colour changes on the thread and fewer strays, for a little more difference. Works in
 * working order through all rounds, spiral or joined; never touches guarded stitches, never costs
 * more than it may, and keeps wedges alike where they are.
 */
export function* tidyBeads(input: TidyInput): Steps<{ beadOf: BeadOfStitch; report: TidyReport }> {
  const plain = yield* layingThread(input);
  yield { stage: 'finish' };
  const { start, neighbours } = plain;
  const among = input.edges ? pairsOf(plain, input, input.edges) : undefined;
  yield { stage: 'finish' };
  const costOf = (beadOf: Uint8Array): number =>
    costOfBeads(plain.thread, beadOf) + (among ? costOfPairs(among, beadOf) : 0);
  const cost = costOf(start);
  const budget = (cost * input.percent) / 100;
  let panel = among ? beside(plain, among) : plain;
  yield { stage: 'finish' };
  const most = costOfBeads(panel.thread, start) + budget;
  const pairs = follows(panel.thread);
  yield { stage: 'finish' };
  // A panel far from its picture has a large budget; its real edges are worth no less for that. So
  // at p percent a colour change is worth at most p CIEDE2000 of a stitch of middling weight.
  const { weights, beadOf: given } = input;
  const weight = weights?.reduce((sum, one, s) => sum + (given[s] < 0 ? 0 : one), 0);
  const beaded = panel.thread.units * panel.thread.wedges;
  const dearest = weight === undefined ? input.percent : (input.percent * weight) / beaded;
  const fits = (beadOf: Uint8Array): boolean => {
    const left = Array.from(input.chosen, (bead) => input.limits?.[bead] ?? Infinity);
    for (const place of beadOf) left[place] -= panel.thread.wedges;
    // What a unit costs beside its neighbours holds while these stay; here all of them count as
    // they are.
    if (among && costOf(beadOf) > cost + budget) return false;
    return left.every((count) => count >= 0);
  };
  let after = yield* tidiest(panel.thread, neighbours, start, most, dearest, fits);
  for (;;) {
    const lost = (input.keep ?? [])
      .map((bead) => input.chosen.indexOf(bead))
      .find((place) => start.includes(place) && !after.includes(place));
    if (lost === undefined) break;
    panel = holding(panel, patchOf(neighbours, start, lost));
    after = yield* tidiest(panel.thread, neighbours, start, most, dearest, fits);
  }
  const beadOf: BeadOfStitch = new Int16Array(input.beadOf.length).fill(bare);
  after.forEach((place, unit) => {
    for (const s of panel.stitchesOf(unit)) beadOf[s] = input.chosen[place];
  });
  yield { stage: 'finish' };
  const paid = costOf(after);
  const report = {
    percent: input.percent,
    costPercent: cost > 0 ? Math.max(0, 100 * (paid / cost - 1)) : 0,
    changesBefore: changesOf(pairs, start),
    changesAfter: changesOf(pairs, after),
    straysBefore: countStrays(panel, start),
    straysAfter: countStrays(panel, after),
  };
  return { beadOf, report };
}

/** The same thread, on which a bead costs also what it does beside the neighbours of the start. */
function beside(panel: PanelThread, pairs: Pairs): PanelThread {
  const { thread, start } = panel;
  const more = costBeside(pairs, thread.units, start);
  return { ...panel, thread: { ...thread, cost: thread.cost.map((cost, p) => cost + more[p]) } };
}

/** The same thread with the beads of some units fixed. */
function holding(panel: PanelThread, held: readonly number[]): PanelThread {
  const { thread, start } = panel;
  const cost = thread.cost.slice();
  for (const unit of held) {
    for (let b = 0; b < thread.beads; b++) {
      if (b !== start[unit]) cost[unit * thread.beads + b] = Infinity;
    }
  }
  return { ...panel, thread: { ...thread, cost } };
}

/** Strays of the whole panel. */
function countStrays({ neighbours, thread }: PanelThread, beadOf: Uint8Array): number {
  let strays = 0;
  for (let u = 0; u < thread.units; u++) if (isStray(neighbours, beadOf, u)) strays++;
  return strays * thread.wedges;
}
