import { findSize } from './palette/sizes.js';
import type { PatternBead } from './bead.js';

/** Beads to buy over the count: 10 %, and at least 30 (common practice, no source). */
const reserveShare = 10;
const reserveLeast = 30;

/** The usual reserve of beads, per cent. */
export const usualBeadReservePercent = 100 / reserveShare;

/**
 * Beads to have ready besides `count` worked ones: a share of them and 30 at least, but none where
 * none are worked or where no reserve is wanted.
 */
export function reserveOf(count: number, percent = usualBeadReservePercent): number {
  if (count === 0 || percent === 0) return 0;
  return Math.max(reserveLeast, Math.ceil((count * percent) / 100 - 1e-9));
}

/** The most beads that may be worked from a stock so that their reserve is left. */
export function workableFrom(stock: number): number {
  const byShare = Math.floor((stock * reserveShare) / (reserveShare + 1));
  return Math.max(0, Math.min(stock - reserveLeast, byShare));
}

/** Beads a gram of a bead or of its size, where either is known. */
export function perGramOf(bead: Pick<PatternBead, 'beadsPerGram' | 'size'>): number | undefined {
  const { beadsPerGram, size } = bead;
  return beadsPerGram ?? (size === undefined ? undefined : findSize(size)?.beadsPerGram);
}

/** Beads in stock: the count where it is given, else what the grams hold; undefined for neither. */
export function beadsInStock(
  bead: Pick<PatternBead, 'count' | 'grams' | 'beadsPerGram' | 'size'>,
): number | undefined {
  if (bead.count !== undefined) return Math.floor(bead.count);
  const perGram = perGramOf(bead);
  if (bead.grams === undefined || perGram === undefined) return undefined;
  return Math.floor(bead.grams * perGram + 1e-9);
}

/** Packets of `packGrams` that hold this many beads. */
export function packetsFor(beads: number, perGram: number, packGrams: number): number {
  return Math.ceil(beads / perGram / packGrams - 1e-9);
}
