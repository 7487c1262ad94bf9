import { RondureError } from '../../errors.js';
import { sortCandidates } from './candidates.js';
import { greedy } from './greedy.js';
import { swapsAndKicks } from './kicks.js';
import { costOf, costOfAll, measure } from './matrix.js';
import type { Problem } from './matrix.js';
import { mergeEqual } from './merge.js';
import { proofBudgets, prove } from './prove.js';
import { makeSearch } from './swaps.js';
import { drain } from '../../steps.js';
import type { Steps } from '../../steps.js';

export { nearestBead } from './nearest.js';

/** `off` is quick: no kicks, no proof, the plainest bound; the others have a fixed budget of steps. */
export type ProofLevel = 'off' | 'normal' | 'long';

/** What `chooseBeads` chooses from: n stitches, P beads, and the rules. */
export interface ChoiceInput {
  /** L, a, b (D65) of each stitch; length 3·n. */
  readonly stitches: Float64Array;
  /** How much each stitch counts, 0 or more; length n. All alike when absent or all 0. */
  readonly weights?: Float64Array;
  /** L, a, b (D65) of each bead of the palette; length 3·P. */
  readonly palette: Float64Array;
  /** The largest number of bead colours, 1 or more. */
  readonly most: number;
  /** Palette indices that must be chosen. */
  readonly keep?: readonly number[];
  /** Palette indices that must not be chosen. */
  readonly leaveOut?: readonly number[];
  /** How much may be spent on proving that no choice is better; `normal` when absent. */
  readonly proof?: ProofLevel;
  /** Asked now and then during the proof; true ends it early: the bound stays valid. */
  readonly stop?: () => boolean;
}

/** What `chooseBeads` chose, and how near it is to the best there is; differences are CIEDE2000. */
export interface ChoiceResult {
  /** Chosen palette indices, ascending, at most `most`; all kept ones, and no other unused one. */
  readonly chosen: number[];
  /** Palette index of the nearest chosen bead of each stitch (ties: the lower); length n. */
  readonly beadOf: Int16Array;
  /** CIEDE2000 of each stitch and its bead; length n. */
  readonly difference: Float32Array;
  /** Weighted mean difference: what the choice makes small. */
  readonly objective: number;
  /** Largest difference of a stitch. */
  readonly worst: number;
  /** No choice under the same rules has a smaller objective than this. */
  readonly lowerBound: number;
  /** (objective - lowerBound) / objective; 0 when the objective is 0. */
  readonly gap: number;
  /** Whether gap is at most 1e-6, so that no choice is better. */
  readonly proven: boolean;
  /** How it was found: a stable name for files and programs. */
  readonly method: string;
  /** Steps that the proof took; 0 without one. */
  readonly steps: number;
}

/**
 * Chooses at most `most` beads so that the weighted mean of CIEDE2000 over the stitches is small:
 * greedy, single swaps and kicks on a float32 matrix, then a proof by bound and branches, which
 * also finds what is better. Where its budget does not reach, the bound says how far from the best
 * possible the choice can be at most. Nothing is random and no clock is read.
 * @throws RondureError `colours-impossible`, `bead-not-in-palette`, `bead-kept-and-left-out`,
 *   `palette-too-small-to-keep`, `palette-all-left-out`, `colour-not-finite`, `weights-impossible`
 */
export function chooseBeads(input: ChoiceInput): ChoiceResult {
  return drain(chooseSteps(input));
}

/** `chooseBeads` in steps. */
export function* chooseSteps(input: ChoiceInput): Steps<ChoiceResult> {
  yield { stage: 'beads' };
  const { stitches, palette, most } = input;
  const candidates = sortCandidates(palette, most, input.keep ?? [], input.leaveOut ?? []);
  checkFinite(stitches, 'stitches');
  checkFinite(palette, 'palette');
  const places = mergeEqual(stitches, checkedWeights(input));
  const problem: Problem = {
    places: places.count,
    beads: candidates.beads.length,
    difference: yield* measure(places, palette, candidates.beads),
    weight: places.weight,
    most,
    kept: candidates.kept,
  };

  const start = yield* greedy(problem);
  const found = yield* search(problem, start.length === 0 ? [0] : start, input);
  const ascending = found.open.slice().sort((p, q) => candidates.beads[p] - candidates.beads[q]);
  const cost = costOf(problem, ascending);
  const bound = Math.min(cost, found.bound);
  const served = serve(problem, ascending);

  const n = places.placeOf.length;
  const beadOf = new Int16Array(n);
  const difference = new Float32Array(n);
  const used = new Set(input.keep);
  let worst = 0;
  for (let i = 0; i < n; i++) {
    const place = places.placeOf[i];
    beadOf[i] = candidates.beads[served[place]];
    difference[i] = problem.difference[served[place] * problem.places + place];
    worst = Math.max(worst, difference[i]);
    used.add(beadOf[i]);
  }
  const total = places.weight.reduce((sum, weight) => sum + weight, 0);
  const gap = cost > 0 ? (cost - bound) / cost : 0;
  return {
    chosen: [...used].sort((p, q) => p - q),
    beadOf,
    difference,
    objective: total > 0 ? cost / total : 0,
    worst,
    lowerBound: total > 0 ? bound / total : 0,
    gap,
    proven: gap <= 1e-6,
    method: found.method,
    steps: found.steps,
  };
}

/** From the greedy start to the choice and its bound; candidates and summed costs. */
function* search(
  problem: Problem,
  start: readonly number[],
  { proof = 'normal', stop }: ChoiceInput,
): Steps<{ open: number[]; bound: number; method: string; steps: number }> {
  if (proof === 'off') {
    const swaps = makeSearch(problem, start);
    yield* swaps.descend();
    const open = Array.from(swaps.open);
    return { open, bound: costOfAll(problem), method: 'greedy+swaps', steps: 0 };
  }
  // Kicks wait until the first prices have not settled the matter, which they mostly do.
  const swaps = makeSearch(problem, start);
  yield* swaps.descend();
  const { open, bound, steps } = yield* prove(
    problem,
    Array.from(swaps.open),
    proofBudgets[proof],
    {
      improve: (best) => swapsAndKicks(problem, best),
      stop,
    },
  );
  return { open, bound, method: 'greedy+swaps+kicks+proof', steps };
}

/** The nearest open candidate of each place; ties go to the one that stands first in `open`. */
function serve(problem: Problem, open: readonly number[]): Int32Array {
  const { places: n, difference } = problem;
  const served = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    let best = open[0];
    for (const j of open) if (difference[j * n + i] < difference[best * n + i]) best = j;
    served[i] = best;
  }
  return served;
}

function checkedWeights(input: ChoiceInput): Float64Array {
  const n = Math.floor(input.stitches.length / 3);
  const { weights } = input;
  if (!weights) return new Float64Array(n).fill(1);
  let sum = 0;
  for (let i = 0; i < n; i++) {
    if (!(weights[i] >= 0 && weights[i] < Infinity)) {
      throw new RondureError('weights-impossible', { row: i + 1, got: weights[i] });
    }
    sum += weights[i];
  }
  return sum > 0 ? weights.slice(0, n) : new Float64Array(n).fill(1);
}

function checkFinite(lab: Float64Array, where: 'stitches' | 'palette'): void {
  for (let i = 0; i < lab.length; i++) {
    if (!Number.isFinite(lab[i])) {
      throw new RondureError('colour-not-finite', { where, row: Math.floor(i / 3) + 1 });
    }
  }
}
