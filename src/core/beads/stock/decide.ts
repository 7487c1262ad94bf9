import type { Bead } from '../bead.js';
import type { ChoiceInput, ChoiceResult } from '../choice/choose.js';
import { RondureError, warning } from '../../errors.js';
import type { Warning } from '../../errors.js';
import { beadsInStock } from '../amounts.js';
import { chooseWithinStock } from './choose.js';
import { stockLimits } from './limits.js';
import type { PlainPanel } from './plain-panel.js';
import { shortfall } from './purchase.js';

/** A choice within a stock. */
export interface StockDecision {
  readonly result: ChoiceResult;
  /** Most stitches of each bead of the palette, or Infinity; whole wedges' worth for a repeat. */
  readonly limits: Float64Array;
  /** What would be chosen if nothing ran out. */
  readonly unlimited: ChoiceResult;
  readonly warnings: Warning[];
}

/**
 * Chooses beads within what is in stock.
 *
 * @param copyOf for a panel whose wedges must stay alike: for each stitch of the input the stitch of
 *   the first wedge that it repeats (an index into the input); every one stands for `wedges`
 * @param plain a panel whose beads are spoken for
 * @throws RondureError `stock-too-small`, `stock-too-small-for-plain`
 */
export function decideWithinStock(
  beads: readonly Bead[],
  input: ChoiceInput,
  unlimited: ChoiceResult,
  copyOf?: Int32Array,
  plain?: PlainPanel,
): StockDecision {
  const wedge = copyOf && firstWedge(input, unlimited, copyOf);
  const copies = wedge ? wedge.copies : 1;
  const limits = limitsBeside(beads, plain).map((limit) => Math.floor(limit / copies));
  const asked = wedge?.input ?? input;
  const alone = wedge?.unlimited ?? unlimited;
  const chosen = chooseWithinStock(asked, alone, limits);
  if (!chosen) {
    const short = shortfall(beads, asked, alone, limits, copies, plain);
    const needed = unlimited.beadOf.length;
    throw new RondureError('stock-too-small', { needed, most: input.most, ...short });
  }
  const result = wedge && chosen !== alone ? wedge.spread(chosen) : wedge ? unlimited : chosen;
  return {
    result,
    limits: limits.map((limit) => limit * copies),
    unlimited,
    warnings: stockNotes(beads),
  };
}

/** What the jars hold for the rest, when some beads of one are spoken for. */
function limitsBeside(beads: readonly Bead[], plain: PlainPanel | undefined): Float64Array {
  const limits = stockLimits(beads);
  if (!plain) return limits;
  const { bead, stitches } = plain;
  if (stitches > limits[bead]) {
    const { id, name } = beads[bead];
    const facts = { id, name, needed: stitches, most: limits[bead] };
    throw new RondureError('stock-too-small-for-plain', facts);
  }
  limits[bead] -= stitches;
  return limits;
}

/** The input of one wedge alone, and the way back to all of them. */
function firstWedge(input: ChoiceInput, unlimited: ChoiceResult, copyOf: Int32Array) {
  const own = [...copyOf.keys()].filter((i) => copyOf[i] === i);
  const at = new Map(own.map((i, place) => [i, place]));
  const placeOf = Int32Array.from(copyOf, (i) => at.get(i) as number);
  const stitches = new Float64Array(3 * own.length);
  own.forEach((i, place) => stitches.set(input.stitches.subarray(3 * i, 3 * i + 3), 3 * place));
  const { weights: given } = input;
  const weights = given && new Float64Array(own.length);
  if (weights) placeOf.forEach((place, i) => (weights[place] += given[i]));
  const beadOf = Int16Array.from(own, (i) => unlimited.beadOf[i]);
  const copies = copyOf.length / own.length;
  return {
    copies,
    input: { ...input, stitches, ...(weights && { weights }) },
    unlimited: { ...unlimited, beadOf },
    spread: (result: ChoiceResult): ChoiceResult => ({
      ...result,
      beadOf: Int16Array.from(placeOf, (place) => result.beadOf[place]),
      difference: Float32Array.from(placeOf, (place) => result.difference[place]),
    }),
  };
}

/** What the palette leaves open about the stock. */
function stockNotes(beads: readonly Bead[]): Warning[] {
  const notes: Warning[] = [];
  const open = beads.filter((bead) => beadsInStock(bead) === undefined).length;
  if (open > 0) notes.push(warning('stock-not-told', { count: open, all: beads.length }));
  const usual = beads.flatMap(({ count, grams, filled, beadsPerGram }) =>
    count === undefined && grams !== undefined && filled.includes('beadsPerGram')
      ? (beadsPerGram ?? [])
      : [],
  );
  if (usual.length > 0) {
    notes.push(warning('stock-estimated', { count: usual.length, perGram: [...new Set(usual)] }));
  }
  return notes;
}
