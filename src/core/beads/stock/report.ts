import type { Bead, BeadOfStitch } from '../bead.js';
import { beadsInStock } from '../amounts.js';
import { usesOf, withinStock } from './limits.js';
import type { StockDecision } from './decide.js';
import type { PlainPanel } from './plain-panel.js';

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
  /** Mean CIEDE2000 of the choice that any jar could serve. */
  readonly unlimitedMeanDifference: number;
}

/**
 * The report on finished panels, and the last check: panels that take more than there is must
 * never be handed out.
 *
 * @param beadOf palette index of each stitch, panel by panel
 * @param plain beads of a further panel of one colour, which `limits` do not count
 */
export function reportStock(
  palette: readonly Bead[],
  { limits, result, unlimited }: StockDecision,
  beadOf: readonly BeadOfStitch[],
  plain?: PlainPanel,
): StockReport {
  const besides = (j: number) => (plain?.bead === j ? plain.stitches : 0);
  const uses = new Int32Array(palette.length);
  for (const one of beadOf) usesOf(one, palette.length).forEach((count, j) => (uses[j] += count));
  if (!withinStock(uses, limits)) throw new Error('a bead is used beyond its stock');
  const beads = palette.flatMap(({ id, name }, j) => {
    const used = uses[j] + besides(j);
    if (used === 0) return [];
    const limit = limits[j] === Infinity ? undefined : limits[j] + besides(j);
    const inStock = beadsInStock(palette[j]);
    return [{ id, name, used, inStock, limit, runsOut: used === limit }];
  });
  const wanted = usesOf(unlimited.beadOf, palette.length);
  const tooFew = palette.flatMap(({ id, name }, j) =>
    wanted[j] > limits[j]
      ? [{ id, name, wanted: wanted[j] + besides(j), limit: limits[j] + besides(j) }]
      : [],
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
