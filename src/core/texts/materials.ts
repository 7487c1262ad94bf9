import { beadCounts } from '../pattern/stitches.js';
import type { Pattern, PatternBead } from '../pattern/schema.js';
import { findSize } from '../palette/sizes.js';
import { csvText } from './csv.js';

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

/** What to have ready of one bead. */
export interface MaterialRow {
  readonly letter: string;
  readonly id: string;
  readonly name: string;
  readonly size: string | undefined;
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
  readonly price: number | undefined;
  /** Packets that hold them and what they cost, where known. */
  readonly packets: number | undefined;
  readonly cost: number | undefined;
}

/** Columns of materials.csv. */
export const materialsColumns = [
  'letter',
  'id',
  'name',
  'size',
  'count',
  'with_reserve',
  'grams',
  'in_stock',
  'to_buy',
  'packets',
  'cost',
  'panels',
] as const;

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
    const { letter, id, name, size, packGrams, price } = bead;
    const count = (counts.get(letter) ?? 0) * times;
    const withReserve = count + reserveOf(count, reservePercent);
    const perGram = perGramOf(bead);
    const grams = perGram === undefined ? undefined : tenthsUp(withReserve / perGram);
    const inStock = beadsInStock(bead);
    const toBuy = Math.max(0, withReserve - (inStock ?? 0));
    const { grams: toBuyGrams, packets, cost } = purchaseOf(bead, toBuy);
    const have = { count, withReserve, grams, inStock };
    const buy = { toBuy, toBuyGrams, packGrams, price, packets, cost };
    return { letter, id, name, size, ...have, ...buy };
  });
}

/**
 * materials.csv: one row a bead, for the panels of the pattern as often as they are charted; the last
 * column says how many they are. A shopping list goes on from there to whole purses.
 */
export function materialsCsv(pattern: Pick<Pattern, 'beads' | 'panels'>): string {
  const rows = materials(pattern).map((row) => [
    row.letter,
    row.id,
    row.name,
    row.size,
    row.count,
    row.withReserve,
    row.grams,
    row.inStock,
    row.toBuy,
    row.packets,
    row.cost,
    pattern.panels.length,
  ]);
  return csvText(materialsColumns, rows);
}

/** Up to the next 0.1, but not for the last bit of a division. */
export function tenthsUp(grams: number): number {
  return Math.max(0, Math.ceil(grams * 10 - 1e-9)) / 10;
}
