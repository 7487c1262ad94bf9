import type { Bead, BeadOfStitch } from '../bead.js';
import { beadsInStock } from '../texts/materials.js';
import { usesOf, withinStock } from './limits.js';
import type { StockDecision } from './decide.js';

/** What a panel takes out of the jars. */
export interface StockReport {
  /** Beads of the panel, in the order of the palette. */
  readonly beads: readonly {
    readonly id: string;
    readonly name: string;
    readonly used: number;
    /** Beads in the jar; undefined where the palette does not say. */
    readonly inStock: number | undefined;
    /** The most that may be used so that a reserve is left. */
    readonly limit: number | undefined;
    /** Whether not one more stitch (or wedge's worth of them) could be worked. */
    readonly runsOut: boolean;
  }[];
  /** Beads of which the choice would take more than their limit if nothing ran out. */
  readonly tooFew: readonly {
    readonly id: string;
    readonly name: string;
    readonly wanted: number;
    readonly limit: number;
  }[];
  /** Mean CIEDE2000 of the choice, and of the choice if nothing ran out. */
  readonly meanDifference: number;
  readonly unlimitedMeanDifference: number;
}

/**
 * The report on a finished panel, and the last check: a panel that takes more than there is must
 * never be handed out.
 */
export function reportStock(
  palette: readonly Bead[],
  { limits, result, unlimited }: StockDecision,
  beadOf: BeadOfStitch,
): StockReport {
  const uses = usesOf(beadOf, palette.length);
  if (!withinStock(uses, limits)) throw new Error('a bead is used beyond its stock');
  const beads = palette.flatMap(({ id, name }, j) => {
    if (uses[j] === 0) return [];
    const limit = limits[j] === Infinity ? undefined : limits[j];
    const inStock = beadsInStock(palette[j]);
    return [{ id, name, used: uses[j], inStock, limit, runsOut: uses[j] === limit }];
  });
  const wanted = usesOf(unlimited.beadOf, palette.length);
  const tooFew = palette.flatMap(({ id, name }, j) =>
    wanted[j] > limits[j] ? [{ id, name, wanted: wanted[j], limit: limits[j] }] : [],
  );
  return {
    beads,
    tooFew,
    meanDifference: meanOf(result.difference),
    unlimitedMeanDifference: meanOf(unlimited.difference),
  };
}

/** Every stitch counts alike here, whatever it weighed in the choice. */
function meanOf(difference: Float32Array): number {
  return difference.reduce((sum, one) => sum + one, 0) / difference.length;
}
