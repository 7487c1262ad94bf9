import type { Bead } from '../bead.js';
import { beadsInStock, workableFrom } from '../amounts.js';

/**
 * The most stitches that each bead of a palette may be worked in: what is in stock less the reserve
 * of the materials list (one in ten, at least 30), so that a panel within the limits never
 * sends anyone shopping. Infinity for a bead without grams or count. Length: the palette's.
 */
export function stockLimits(beads: readonly Bead[]): Float64Array {
  return Float64Array.from(beads, (bead) => {
    const stock = beadsInStock(bead);
    return stock === undefined ? Infinity : workableFrom(stock);
  });
}

/** Whether no bead is used more often than its limit allows; both by palette index. */
export function withinStock(counts: ArrayLike<number>, limits: ArrayLike<number>): boolean {
  for (let j = 0; j < counts.length; j++) if (counts[j] > limits[j]) return false;
  return true;
}

/** How often each bead of a palette of `beads` is used; stitches without a bead do not count. */
export function usesOf(beadOf: Int16Array, beads: number): Int32Array {
  const uses = new Int32Array(beads);
  for (const j of beadOf) if (j >= 0) uses[j]++;
  return uses;
}
