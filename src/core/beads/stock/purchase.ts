import type { Bead } from '../bead.js';
import type { ChoiceInput, ChoiceResult } from '../choice/choose.js';
import { beadsInStock, reserveOf } from '../amounts.js';
import { purchaseOf } from '../../pages/lists/materials.js';
import { chooseWithinStock } from './choose.js';
import type { PlainPanel } from './plain-panel.js';

/** A purchase of one bead that makes a panel possible. */
export interface Purchase {
  readonly id: string;
  readonly name: string;
  /** Beads to buy, their reserve among them. */
  readonly beads: number;
  /** Their grams, rounded up to 0.1, where beads per gram are known. */
  readonly grams: number | undefined;
  readonly packets: number | undefined;
  readonly cost: number | undefined;
}

/** What is missing when a stock cannot serve a panel. */
export interface Shortfall {
  /** Beads by which the best choice of jars falls short. */
  readonly missing: number;
  /** Whether other jars hold something that more colours would bring in. */
  readonly moreColoursHelp: boolean;
  /** The cheapest single purchase that mends it; undefined if no single one can. */
  readonly purchase: Purchase | undefined;
}

/** Purchases alike in price whose panels are compared. */
const mostCompared = 12;
/** Millions of pairs that a comparison may look at. */
const comparisonWork = 8;

interface Offer {
  readonly index: number;
  /** Limit of the bead, in stitches of the input, from which the panel is possible. */
  readonly limit: number;
  readonly purchase: Purchase;
}

/**
 * Finds what is missing and which purchase of one bead mends it: the cheapest where the palette
 * gives prices and packets, else the fewest beads; among equals the one with the least difference.
 *
 * @param limits as for `chooseWithinStock`, which found nothing
 * @param copies beads that each stitch of the input stands for
 * @param plain a panel whose beads are spoken for besides
 */
export function shortfall(
  beads: readonly Bead[],
  input: ChoiceInput,
  unlimited: ChoiceResult,
  limits: Float64Array,
  copies: number,
  plain?: PlainPanel,
): Shortfall {
  const stitches = unlimited.beadOf.length;
  const kept = [...new Set(input.keep)];
  const spare = input.most - kept.length;
  const loose = [...limits.keys()]
    .filter((j) => !kept.includes(j) && !input.leaveOut?.includes(j))
    .sort((p, q) => limits[q] - limits[p] || p - q);
  const sum = (list: readonly number[]) => list.reduce((total, j) => total + limits[j], 0);
  const reach = sum(kept) + sum(loose.slice(0, spare));
  const offers = (spare > 0 ? [...kept, ...loose] : kept).map((index): Offer => {
    const others = kept.includes(index)
      ? sum(kept.filter((j) => j !== index)) + sum(loose.slice(0, spare))
      : sum(kept) + sum(loose.filter((j) => j !== index).slice(0, spare - 1));
    const limit = stitches - others;
    const besides = plain?.bead === index ? plain.stitches : 0;
    return { index, limit, purchase: purchaseFor(beads[index], limit * copies + besides) };
  });
  const best = cheapest(offers);
  const choice = best.length > 1 ? mostFitting(best, input, unlimited, limits) : best[0];
  return {
    missing: (stitches - reach) * copies,
    moreColoursHelp: sum(loose.slice(spare)) > 0,
    purchase: choice?.purchase,
  };
}

function purchaseFor(bead: Bead, limit: number): Purchase {
  const toBuy = limit + reserveOf(limit) - (beadsInStock(bead) ?? 0);
  return { id: bead.id, name: bead.name, beads: toBuy, ...purchaseOf(bead, toBuy) };
}

/** The offers that cost least where any tells a cost, else those of fewest beads. */
function cheapest(offers: readonly Offer[]): Offer[] {
  const priced = offers.filter(({ purchase }) => purchase.cost !== undefined);
  const compared = priced.length > 0 ? priced : offers;
  const value = ({ purchase }: Offer) => purchase.cost ?? purchase.beads;
  const least = compared.reduce((low, offer) => Math.min(low, value(offer)), Infinity);
  return compared.filter((offer) => value(offer) === least);
}

/**
 * The offer whose panel comes nearest to the picture. Of many only those are compared whose beads
 * are the nearest of all offered to most stitches.
 */
function mostFitting(
  offers: readonly Offer[],
  input: ChoiceInput,
  unlimited: ChoiceResult,
  limits: Float64Array,
): Offer | undefined {
  let best: { offer: Offer; objective: number } | undefined;
  for (const offer of mostWanted(offers, unlimited)) {
    const enough = limits.slice();
    enough[offer.index] = offer.limit;
    const objective =
      chooseWithinStock(input, unlimited, enough, comparisonWork)?.objective ?? Infinity;
    if (!best || objective < best.objective - 1e-9) best = { offer, objective };
  }
  return best?.offer;
}

/** Offers of the beads that would be used most if stock did not matter, then the others. */
function mostWanted(offers: readonly Offer[], unlimited: ChoiceResult): Offer[] {
  const uses = new Map<number, number>();
  for (const bead of unlimited.beadOf) uses.set(bead, (uses.get(bead) ?? 0) + 1);
  const wanted = (offer: Offer) => uses.get(offer.index) ?? 0;
  return [...offers]
    .sort((p, q) => wanted(q) - wanted(p) || p.index - q.index)
    .slice(0, mostCompared);
}
