import { ciede2000Fast } from '../../colour/ciede2000.js';
import type { PanelThread } from './panel-thread.js';

/** Contrast below this is hardly seen, and above this no more matters (CIEDE2000). */
const [justVisible, saturated] = [2.5, 20];
/**
 * Contrast that the picture has not counts less than contrast that is lost: beads mix for the eye, and
 * what runs from one colour into another must change beads somewhere.
 */
export const madeUpShare = 0.1;

/** Touching units, each pair once, and what two beads cost there. */
export interface Pairs {
  /** The unit that is worked first, and the other one; length E each. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Seen contrast of the picture's colours; length E. */
  readonly wanted: Float64Array;
  /** Seen contrast of two beads at [i·K + j]. */
  readonly shown: Float64Array;
  readonly beads: number;
  /** What one CIEDE2000 of contrast lost or made up costs. */
  readonly price: number;
}

/** The pairs of a panel: what of its picture's contrast lies between neighbours. */
export function pairsOf(
  { neighbours: { start, list }, thread, stitchesOf }: PanelThread,
  { stitches, palette, chosen }: Colours,
  strength: number,
): Pairs {
  const from: number[] = [];
  const to: number[] = [];
  const wanted: number[] = [];
  for (let u = 0; u < thread.units; u++) {
    const one = 3 * stitchesOf(u)[0];
    for (let n = start[u]; n < start[u + 1]; n++) {
      const v = list[n];
      if (v <= u) continue;
      from.push(u);
      to.push(v);
      wanted.push(seenContrast(stitches, one, stitches, 3 * stitchesOf(v)[0]));
    }
  }
  const beads = chosen.length;
  const shown = new Float64Array(beads * beads);
  for (let i = 0; i < beads; i++) {
    for (let j = 0; j < beads; j++) {
      shown[i * beads + j] = seenContrast(palette, 3 * chosen[i], palette, 3 * chosen[j]);
    }
  }
  return {
    from: Int32Array.from(from),
    to: Int32Array.from(to),
    wanted: Float64Array.from(wanted),
    shown,
    beads,
    price: strength * thread.wedges,
  };
}

/** The colours that pairs are told from, as tidying has them. */
export interface Colours {
  /** L, a, b (D65) of each stitch; length 3·count. */
  readonly stitches: Float64Array;
  /** L, a, b (D65) of each bead of the palette; length 3·P. */
  readonly palette: Float64Array;
  /** Palette indices that may be used. */
  readonly chosen: readonly number[];
}

/** What the beads i and j cost at pair e: contrast that is lost, or that the picture has not. */
export function pairCost(pairs: Pairs, e: number, i: number, j: number): number {
  const lost = pairs.wanted[e] - pairs.shown[i * pairs.beads + j];
  return pairs.price * (lost > 0 ? lost : -madeUpShare * lost);
}

/** Σ over the pairs; `beadOf` by unit. */
export function costOfPairs(pairs: Pairs, beadOf: ArrayLike<number>): number {
  let sum = 0;
  for (let e = 0; e < pairs.from.length; e++) {
    sum += pairCost(pairs, e, beadOf[pairs.from[e]], beadOf[pairs.to[e]]);
  }
  return sum;
}

/** What every bead costs at every unit while the others keep theirs, at [u·K + b]. */
export function costBeside(pairs: Pairs, units: number, beadOf: ArrayLike<number>): Float64Array {
  const { from, to, beads } = pairs;
  const cost = new Float64Array(units * beads);
  for (let e = 0; e < from.length; e++) {
    const [u, v] = [from[e], to[e]];
    for (let b = 0; b < beads; b++) {
      cost[u * beads + b] += pairCost(pairs, e, b, beadOf[v]);
      cost[v * beads + b] += pairCost(pairs, e, beadOf[u], b);
    }
  }
  return cost;
}

function seenContrast(one: Float64Array, p: number, other: Float64Array, q: number): number {
  const apart = ciede2000Fast(one[p], one[p + 1], one[p + 2], other[q], other[q + 1], other[q + 2]);
  return Math.min(saturated, Math.max(0, apart - justVisible));
}
