import type { ChoiceInput, ChoiceResult } from '../choice/choose.js';
import { stockBound } from './bound.js';
import { groupStitches, stockProblem } from './groups.js';
import type { Groups, StockProblem } from './groups.js';
import { usesOf, withinStock } from './limits.js';
import { searchStock } from './search.js';
import type { Served } from './search.js';
import { startsWithin } from './starts.js';

/**
 * Chooses beads as `chooseBeads` does, and who serves whom, so that no bead serves more stitches
 * than its limit. The choice is searched, the assignment of what is chosen is exact.
 * Undefined when no choice under the rules can serve all stitches.
 *
 * @param unlimited what `chooseBeads` found for the same input; kept where it is within the limits
 * @param limits most stitches of each bead of the palette, whole numbers or Infinity
 * @param workAllowed pairs that the search may look at, in millions
 */
export function chooseWithinStock(
  input: ChoiceInput,
  unlimited: ChoiceResult,
  limits: Float64Array,
  workAllowed = 150,
): ChoiceResult | undefined {
  if (withinStock(usesOf(unlimited.beadOf, limits.length), limits)) return unlimited;
  const candidates = stockCandidates(input, limits);
  const groups = groupStitches(input.stitches, checkedWeights(input));
  const problem = stockProblem(groups, input.palette, candidates.beads, {
    limit: Float64Array.from(candidates.beads, (bead) => limits[bead]),
    most: input.most,
    kept: candidates.kept,
  });
  const wanted = unlimited.chosen.flatMap((bead) => {
    const at = candidates.beads.indexOf(bead);
    return at < 0 ? [] : [at];
  });
  const starts = startsWithin(problem, wanted);
  if (starts.length === 0) return undefined;
  const found = searchStock(problem, starts, workAllowed * 1e6);
  return resultOf(input, unlimited, groups, problem, candidates.beads, found);
}

/**
 * Beads that may be chosen, as palette indices: the kept ones first, then those that are in stock
 * and not left out. Two jars of one colour are two beads, unless the first never runs out.
 */
function stockCandidates(
  { palette, keep = [], leaveOut = [] }: ChoiceInput,
  limits: Float64Array,
): { beads: number[]; kept: number } {
  const kept = [...new Set(keep)].sort((p, q) => p - q);
  const endless = new Set<string>();
  const others: number[] = [];
  for (let bead = 0; bead < limits.length; bead++) {
    const colour = palette.subarray(3 * bead, 3 * bead + 3).join(' ');
    if (!kept.includes(bead)) {
      if (leaveOut.includes(bead) || limits[bead] === 0 || endless.has(colour)) continue;
      others.push(bead);
    }
    if (limits[bead] === Infinity) endless.add(colour);
  }
  return { beads: [...kept, ...others], kept: kept.length };
}

function checkedWeights({ stitches, weights }: ChoiceInput): Float64Array {
  const n = Math.floor(stitches.length / 3);
  if (!weights?.some((weight) => weight > 0)) return new Float64Array(n).fill(1);
  return weights.slice(0, n);
}

/** Hands out beads to the stitches of each group in working order, the lower palette index first. */
function resultOf(
  input: ChoiceInput,
  unlimited: ChoiceResult,
  groups: Groups,
  problem: StockProblem,
  candidates: readonly number[],
  { open, assignment }: Served,
): ChoiceResult {
  const K = open.length;
  const slots = [...open.keys()].sort((p, q) => candidates[open[p]] - candidates[open[q]]);
  const left = assignment.flow.slice();
  const n = groups.groupOf.length;
  const beadOf = new Int16Array(n);
  const difference = new Float32Array(n);
  const used = new Set(input.keep);
  let worst = 0;
  let total = 0;
  for (let i = 0; i < n; i++) {
    const g = groups.groupOf[i];
    const slot = slots.find((k) => left[g * K + k] > 0) as number;
    left[g * K + slot]--;
    beadOf[i] = candidates[open[slot]];
    difference[i] = problem.difference[open[slot] * problem.groups + g];
    worst = Math.max(worst, difference[i]);
    used.add(beadOf[i]);
    total += groups.weight[g];
  }
  const objective = assignment.cost / total;
  const bound = Math.max(unlimited.lowerBound, stockBound(problem, { open, assignment }) / total);
  const lowerBound = Math.min(bound, objective);
  const gap = objective > 0 ? (objective - lowerBound) / objective : 0;
  return {
    ...unlimited,
    chosen: [...used].sort((p, q) => p - q),
    beadOf,
    difference,
    objective,
    worst,
    lowerBound,
    gap,
    proven: gap <= 1e-6,
    method: 'stock: swaps+kicks, exact assignment',
  };
}
