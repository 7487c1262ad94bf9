import { drain } from '../../steps.js';
import { measure } from '../choice/matrix.js';
import { mergeEqual } from '../choice/merge.js';

/**
 * The choice under stock: groups of stitches alike to serve, beads of limited number that may
 * serve them, at most `most` open at once, the first `kept` always open.
 */
export interface StockProblem {
  /** Number of groups G. */
  readonly groups: number;
  /** Number of candidate beads P. */
  readonly beads: number;
  /** CIEDE2000 of group g and candidate j at [j·G + g]; length P·G. */
  readonly difference: Float32Array;
  /** Weight of one stitch of each group; length G. */
  readonly weight: Float64Array;
  /** Stitches of each group; length G. */
  readonly supply: Int32Array;
  /** Sum of `supply`. */
  readonly stitches: number;
  /** Stitches that each candidate can serve, Infinity without limit; length P. */
  readonly limit: Float64Array;
  readonly most: number;
  readonly kept: number;
}

/** Stitches of one colour and one weight, which any bead serves alike. */
export interface Groups {
  /** L, a, b of each group; length 3·count. */
  readonly lab: Float64Array;
  readonly weight: Float64Array;
  readonly supply: Int32Array;
  /** Group of each stitch; length n. */
  readonly groupOf: Int32Array;
  readonly count: number;
}

/** Groups stitches, in order of first appearance; `lab` 3·n, `weights` n. */
export function groupStitches(lab: Float64Array, weights: Float64Array): Groups {
  const n = weights.length;
  const places = mergeEqual(lab, weights);
  const byWeight: Map<number, number>[] = Array.from({ length: places.count }, () => new Map());
  const groupOf = new Int32Array(n);
  const first: number[] = [];
  for (let i = 0; i < n; i++) {
    const known = byWeight[places.placeOf[i]];
    let group = known.get(weights[i]);
    if (group === undefined) {
      group = first.length;
      known.set(weights[i], group);
      first.push(i);
    }
    groupOf[i] = group;
  }
  const supply = new Int32Array(first.length);
  for (const group of groupOf) supply[group]++;
  const merged = new Float64Array(3 * first.length);
  first.forEach((i, group) => merged.set(lab.subarray(3 * i, 3 * i + 3), 3 * group));
  const weight = Float64Array.from(first, (i) => weights[i]);
  return { lab: merged, weight, supply, groupOf, count: first.length };
}

/** Measures groups against candidates; `palette` holds L, a, b of every bead of the palette. */
export function stockProblem(
  groups: Groups,
  palette: Float64Array,
  candidates: readonly number[],
  rest: Pick<StockProblem, 'limit' | 'most' | 'kept'>,
): StockProblem {
  const { lab, weight, supply, groupOf, count } = groups;
  const places = { lab, weight, placeOf: groupOf, count };
  return {
    groups: count,
    beads: candidates.length,
    difference: drain(measure(places, palette, candidates)),
    weight,
    supply,
    stitches: groupOf.length,
    ...rest,
  };
}
