import { ciede2000, ciede2000Fast } from '../../colour/ciede2000.js';

/** Stitches of about one colour that touch. */
export interface Patch {
  /** Stitch numbers. */
  readonly stitches: readonly number[];
  /** CIEDE2000 of its mean and the mean of the stitches that touch it; 0 when none do. */
  readonly contrast: number;
}

/** CIEDE2000 below which two neighbours belong to one patch. */
const alike = 8;

/**
 * Parts the stitches into patches: neighbours of about one colour, and what touches these, and so on.
 *
 * @param labs L, a, b (D65) of each stitch; length 3·n
 * @param takesPart 1 for stitches that carry a bead; the others are in no patch and around none
 * @param neighbours as in `Footprints`
 */
export function patchesOf(
  labs: Float64Array,
  takesPart: Uint8Array,
  neighbours: (s: number) => readonly number[],
): Patch[] {
  const patchOf = new Int32Array(takesPart.length).fill(-1);
  const patches: number[][] = [];
  for (let first = 0; first < takesPart.length; first++) {
    if (!takesPart[first] || patchOf[first] >= 0) continue;
    const patch = patches.length;
    const stitches = [first];
    patchOf[first] = patch;
    // The list grows while it is gone through.
    for (let k = 0; k < stitches.length; k++) {
      for (const n of neighbours(stitches[k])) {
        if (!takesPart[n] || patchOf[n] >= 0 || !areAlike(labs, stitches[k], n)) continue;
        patchOf[n] = patch;
        stitches.push(n);
      }
    }
    patches.push(stitches);
  }
  const seenBy = new Int32Array(takesPart.length).fill(-1);
  return patches.map((stitches, patch) => {
    const around: number[] = [];
    for (const s of stitches) {
      for (const n of neighbours(s)) {
        if (!takesPart[n] || patchOf[n] === patch || seenBy[n] === patch) continue;
        seenBy[n] = patch;
        around.push(n);
      }
    }
    const contrast =
      around.length === 0 ? 0 : ciede2000(...meanOf(labs, stitches), ...meanOf(labs, around));
    return { stitches, contrast };
  });
}

/** Most that CIEDE2000 divides a difference of lightness by (L* 0 to 100): S_L at its ends, rounded up. */
const mostLightScale = 1.75;
/**
 * CIEDE2000² is at most ΔL² + this·(Δa² + Δb²): a' is at most 1.5·a, S_L, S_C and S_H are 1 or more,
 * and the rotation, at most √3 in size, adds no more than √3/2 of what chroma and hue give.
 */
const mostPlaneScale = 2.25 * (1 + Math.sqrt(3) / 2);

/** Whether two stitches belong to one patch; bounds decide most, without the difference itself. */
function areAlike(labs: Float64Array, s: number, n: number): boolean {
  const [p, q] = [3 * s, 3 * n];
  const dL = labs[p] - labs[q];
  const da = labs[p + 1] - labs[q + 1];
  const db = labs[p + 2] - labs[q + 2];
  if (Math.abs(dL) >= mostLightScale * alike) return false;
  if (dL * dL + mostPlaneScale * (da * da + db * db) < 0.999 * alike * alike) return true;
  return (
    ciede2000Fast(labs[p], labs[p + 1], labs[p + 2], labs[q], labs[q + 1], labs[q + 2]) < alike
  );
}

function meanOf(labs: Float64Array, stitches: readonly number[]): [number, number, number] {
  const sums: [number, number, number] = [0, 0, 0];
  for (const s of stitches) for (let c = 0; c < 3; c++) sums[c] += labs[3 * s + c];
  return [sums[0] / stitches.length, sums[1] / stitches.length, sums[2] / stitches.length];
}
