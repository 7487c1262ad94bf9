import type { Doubt } from '../reading/read-blank.js';
import { csvText } from './csv.js';

/** The doubtful stitches of a reading as CSV: round, stitch, what was read, what else, and why. */
export function doubtfulCsv(doubts: readonly Doubt[]): string {
  const rows = doubts.map(({ round, stitch, mark, other, reason }) => [
    round,
    stitch,
    mark,
    other,
    reason,
  ]);
  return csvText(['round', 'stitch', 'read', 'other', 'reason'], rows);
}
