import { ciede2000 } from '../colour/ciede2000.js';

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
  const near = Array.from(takesPart, (takes, s) =>
    takes ? neighbours(s).filter((n) => takesPart[n]) : [],
  );
  const patchOf = new Int32Array(takesPart.length).fill(-1);
  const patches: number[][] = [];
  for (let first = 0; first < takesPart.length; first++) {
    if (!takesPart[first] || patchOf[first] >= 0) continue;
    const stitches = [first];
    patchOf[first] = patches.length;
    for (const s of stitches) {
      for (const n of near[s]) {
        if (patchOf[n] >= 0 || apart(labs, s, n) >= alike) continue;
        patchOf[n] = patches.length;
        stitches.push(n);
      }
    }
    patches.push(stitches);
  }
  return patches.map((stitches, p) => {
    const around = new Set<number>();
    for (const s of stitches) for (const n of near[s]) if (patchOf[n] !== p) around.add(n);
    const contrast =
      around.size === 0 ? 0 : ciede2000(...meanOf(labs, stitches), ...meanOf(labs, [...around]));
    return { stitches, contrast };
  });
}

function apart(labs: Float64Array, s: number, n: number): number {
  const [p, q] = [3 * s, 3 * n];
  return ciede2000(labs[p], labs[p + 1], labs[p + 2], labs[q], labs[q + 1], labs[q + 2]);
}

function meanOf(labs: Float64Array, stitches: readonly number[]): [number, number, number] {
  const sums: [number, number, number] = [0, 0, 0];
  for (const s of stitches) for (let c = 0; c < 3; c++) sums[c] += labs[3 * s + c];
  return [sums[0] / stitches.length, sums[1] / stitches.length, sums[2] / stitches.length];
}
