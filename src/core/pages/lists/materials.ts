import type { BeadLook } from '../../../words/index.js';
import { beadLookOf } from '../../colour/colour-words.js';
import { beadCounts } from '../../pattern/stitches.js';
import type { Pattern } from '../../pattern/pattern.js';
import type { PatternBead } from '../../beads/bead.js';
import {
  beadsInStock,
  packetsFor,
  perGramOf,
  reserveOf,
  usualBeadReservePercent,
} from '../../beads/amounts.js';

/** What to have ready of one bead. */
export interface MaterialRow {
  /** Letter of the bead in the pattern. */
  readonly letter: string;
  /** Its id in the palette. */
  readonly id: string;
  /** Its name in the palette. */
  readonly name: string;
  /** Its size, for instance 11/0, where the palette says so. */
  readonly size: string | undefined;
  /** Its finish as the palette names it, and what it looks like. */
  readonly finish: string | undefined;
  /** What it looks like, in words. */
  readonly look: BeadLook;
  /** Whether its id is that of a sample colour of ours, and no shop's. */
  readonly sample: boolean;
  /** Beads worked, over all panels of the pattern; times the number of purses in a shopping list. */
  readonly count: number;
  /** Beads to have ready: the count and its reserve, 10 % and at least 30; 0 for an unused bead. */
  readonly withReserve: number;
  /** Grams of `withReserve`, rounded up to 0.1; undefined where beads per gram are not known. */
  readonly grams: number | undefined;
  /** Beads in stock, where the palette says so. */
  readonly inStock: number | undefined;
  /** Beads of `withReserve` that the stock lacks; all of them where no stock is given. */
  readonly toBuy: number;
  /** Grams of `toBuy`, rounded up to 0.1. */
  readonly toBuyGrams: number | undefined;
  /** What one packet holds and costs, where the palette says so. */
  readonly packGrams: number | undefined;
  /** What one packet costs, where the palette says so. */
  readonly price: number | undefined;
  /** Packets that hold them and what they cost, where known. */
  readonly packets: number | undefined;
  /** What those packets cost, where known. */
  readonly cost: number | undefined;
}

/** How much of a pattern is worked. */
export interface MaterialsWish {
  /** How often the panels of the pattern are worked; default once. */
  times?: number;
  /** Reserve of beads, per cent of what is worked; default 10, and at least 30 beads. */
  reservePercent?: number;
}

/** What so many beads weigh, rounded up to 0.1 g, and the packets and money that they take, if known. */
export function purchaseOf(
  bead: Pick<PatternBead, 'size' | 'beadsPerGram' | 'packGrams' | 'price'>,
  toBuy: number,
): { grams: number | undefined; packets: number | undefined; cost: number | undefined } {
  const { packGrams, price } = bead;
  const perGram = perGramOf(bead);
  if (perGram === undefined) return { grams: undefined, packets: undefined, cost: undefined };
  const grams = tenthsUp(toBuy / perGram);
  const packets = packGrams === undefined ? undefined : packetsFor(toBuy, perGram, packGrams);
  const cost =
    packets === undefined || price === undefined
      ? undefined
      : Math.round(packets * price * 100) / 100;
  return { grams, packets, cost };
}

/** The beads of a pattern and what to have and to buy of each, in the order of its beads. */
export function materials(
  pattern: Pick<Pattern, 'beads' | 'panels'>,
  { times = 1, reservePercent = usualBeadReservePercent }: MaterialsWish = {},
): MaterialRow[] {
  const counts = beadCounts(pattern);
  return pattern.beads.map((bead) => {
    const { letter, id, name, size, finish, packGrams, price } = bead;
    const count = (counts.get(letter) ?? 0) * times;
    const withReserve = count + reserveOf(count, reservePercent);
    const perGram = perGramOf(bead);
    const grams = perGram === undefined ? undefined : tenthsUp(withReserve / perGram);
    const inStock = beadsInStock(bead);
    const toBuy = Math.max(0, withReserve - (inStock ?? 0));
    const { grams: toBuyGrams, packets, cost } = purchaseOf(bead, toBuy);
    const have = { count, withReserve, grams, inStock };
    const buy = { toBuy, toBuyGrams, packGrams, price, packets, cost };
    const look = beadLookOf(bead);
    return { letter, id, name, size, finish, look, sample: bead.sample === true, ...have, ...buy };
  });
}

/** Up to the next 0.1, but not for the last bit of a division. */
export function tenthsUp(grams: number): number {
  return Math.max(0, Math.ceil(grams * 10 - 1e-9)) / 10;
}
