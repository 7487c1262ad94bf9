import { beadCounts } from '../pattern/stitches.js';
import type { Pattern } from '../pattern/schema.js';
import { findSize } from '../palette/sizes.js';
import { csvText } from './csv.js';

/** Beads to buy over the count: 10 %, and at least 30 (common practice, no source). */
const reserveShare = 10;
const reserveLeast = 30;

/** What to have ready of one bead. */
export interface MaterialRow {
  readonly letter: string;
  readonly id: string;
  readonly name: string;
  readonly size: string | undefined;
  /** Beads worked, over all panels. */
  readonly count: number;
  /** Beads to have ready: the count and a reserve of 10 %, at least 30; 0 for an unused bead. */
  readonly withReserve: number;
  /** Grams of `withReserve`, rounded up to 0.1; undefined where beads per gram are not known. */
  readonly grams: number | undefined;
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
] as const;

/** The shopping list of a pattern, in the order of its beads. */
export function materials(pattern: Pick<Pattern, 'beads' | 'panels'>): MaterialRow[] {
  const counts = beadCounts(pattern);
  return pattern.beads.map(({ letter, id, name, size, beadsPerGram }) => {
    const count = counts.get(letter) ?? 0;
    const reserve = Math.max(reserveLeast, Math.ceil(count / reserveShare));
    const withReserve = count === 0 ? 0 : count + reserve;
    const perGram = beadsPerGram ?? (size === undefined ? undefined : findSize(size)?.beadsPerGram);
    const grams = perGram === undefined ? undefined : tenthsUp(withReserve / perGram);
    return { letter, id, name, size, count, withReserve, grams };
  });
}

/** materials.csv: one row a bead. */
export function materialsCsv(pattern: Pick<Pattern, 'beads' | 'panels'>): string {
  const rows = materials(pattern).map((row) => [
    row.letter,
    row.id,
    row.name,
    row.size,
    row.count,
    row.withReserve,
    row.grams,
  ]);
  return csvText(materialsColumns, rows);
}

/** Up to the next 0.1, but not for the last bit of a division. */
function tenthsUp(grams: number): number {
  return Math.max(0, Math.ceil(grams * 10 - 1e-9)) / 10;
}
