import { ciede2000, ciede2000Fast } from '../../colour/ciede2000.js';
import { rememberedFor } from '../../remember.js';

/** Stitches in patches: those of about one colour that touch. */
export interface Patches {
  readonly count: number;
  /** Stitch numbers, one patch after another. */
  readonly stitches: Int32Array;
  /** Where each patch begins among these, and last where all end; length count + 1. */
  readonly from: Int32Array;
  /**
   * CIEDE2000 of the mean of each and the mean of the stitches that touch it; 0 where none do, or
   * where it is less than was asked for.
   */
  readonly contrast: Float64Array;
}

/** CIEDE2000 below which two neighbours belong to one patch. */
const alike = 8;

/** Who touches whom as flat lists: those of stitch s stand in `to` from `from[s]` to `from[s + 1]`. */
const flatLists = rememberedFor((neighbours: (s: number) => readonly number[], count: number) => {
  const from = new Int32Array(count + 1);
  for (let s = 0; s < count; s++) from[s + 1] = from[s] + neighbours(s).length;
  const to = new Int32Array(from[count]);
  for (let s = 0; s < count; s++) to.set(neighbours(s), from[s]);
  return { from, to };
});

/**
 * Parts the stitches into patches: neighbours of about one colour, and what touches these, and so on.
 *
 * @param labs L, a, b (D65) of each stitch; length 3·n
 * @param takesPart 1 for stitches that carry a bead; the others are in no patch and around none
 * @param neighbours as in `Footprints`; who touches whom is asked once
 * @param contrastFrom less contrast is of no interest, CIEDE2000
 */
export function patchesOf(
  labs: Float64Array,
  takesPart: Uint8Array,
  neighbours: (s: number) => readonly number[],
  contrastFrom = 0,
): Patches {
  const all = takesPart.length;
  const near = flatLists(neighbours, all);
  const patchOf = new Int32Array(all).fill(-1);
  const stitches = new Int32Array(all);
  const from = new Int32Array(all + 1);
  let [count, end] = [0, 0];
  for (let first = 0; first < all; first++) {
    if (!takesPart[first] || patchOf[first] >= 0) continue;
    const begin = end;
    stitches[end++] = first;
    patchOf[first] = count;
    // The list grows while it is gone through.
    for (let k = begin; k < end; k++) {
      const s = stitches[k];
      for (let m = near.from[s]; m < near.from[s + 1]; m++) {
        const n = near.to[m];
        if (!takesPart[n] || patchOf[n] >= 0 || !areAlike(labs, s, n)) continue;
        patchOf[n] = count;
        stitches[end++] = n;
      }
    }
    from[++count] = end;
  }
  const contrast = new Float64Array(count);
  const own = new Float64Array(3);
  const around = new Float64Array(3);
  const seenBy = new Int32Array(all).fill(-1);
  for (let patch = 0; patch < count; patch++) {
    own.fill(0);
    around.fill(0);
    let touching = 0;
    for (let k = from[patch]; k < from[patch + 1]; k++) {
      const s = stitches[k];
      for (let c = 0; c < 3; c++) own[c] += labs[3 * s + c];
      for (let m = near.from[s]; m < near.from[s + 1]; m++) {
        const n = near.to[m];
        if (!takesPart[n] || patchOf[n] === patch || seenBy[n] === patch) continue;
        seenBy[n] = patch;
        touching++;
        for (let c = 0; c < 3; c++) around[c] += labs[3 * n + c];
      }
    }
    if (touching === 0) continue;
    const many = from[patch + 1] - from[patch];
    for (let c = 0; c < 3; c++) {
      own[c] /= many;
      around[c] /= touching;
    }
    const [L, a, b] = own;
    const [L2, a2, b2] = around;
    if (mostApart(L - L2, a - a2, b - b2) < 0.999 * contrastFrom * contrastFrom) continue;
    contrast[patch] = ciede2000(L, a, b, L2, a2, b2);
  }
  return {
    count,
    stitches: stitches.subarray(0, end),
    from: from.subarray(0, count + 1),
    contrast,
  };
}

/** Most that CIEDE2000 divides a difference of lightness by (L* 0 to 100): S_L at its ends, rounded up. */
const mostLightScale = 1.75;
/**
 * CIEDE2000² is at most ΔL² + this·(Δa² + Δb²): a' is at most 1.5·a, S_L, S_C and S_H are 1 or more,
 * and the rotation, at most √3 in size, adds no more than √3/2 of what chroma and hue give.
 */
const mostPlaneScale = 2.25 * (1 + Math.sqrt(3) / 2);

/** CIEDE2000² of two colours that differ by so much is at most this. */
const mostApart = (dL: number, da: number, db: number): number =>
  dL * dL + mostPlaneScale * (da * da + db * db);

/** Whether two stitches belong to one patch; bounds decide most, without the difference itself. */
function areAlike(labs: Float64Array, s: number, n: number): boolean {
  const [p, q] = [3 * s, 3 * n];
  const dL = labs[p] - labs[q];
  const da = labs[p + 1] - labs[q + 1];
  const db = labs[p + 2] - labs[q + 2];
  if (Math.abs(dL) >= mostLightScale * alike) return false;
  if (mostApart(dL, da, db) < 0.999 * alike * alike) return true;
  return (
    ciede2000Fast(labs[p], labs[p + 1], labs[p + 2], labs[q], labs[q + 1], labs[q + 2]) < alike
  );
}
