import { en } from '../../../words/index.js';
import type { Pattern } from '../../pattern/pattern.js';
import { csvText } from '../../csv.js';
import { materials } from './materials.js';

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
  'finish',
  'colour',
] as const;

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
    row.finish,
    en.beadLooks.colour(row.look),
  ]);
  return csvText(materialsColumns, rows);
}
