import type { Doubt } from '../../blank/read-blank.js';
import { csvText } from '../../csv.js';

/** The doubtful stitches of a reading as CSV: round, stitch, what was read, what else, why, and where in its wedge. */
export function doubtfulCsv(doubts: readonly Doubt[]): string {
  const rows = doubts.map(({ round, stitch, mark, other, reason }) => [
    round,
    stitch,
    mark,
    other,
    reason,
    placeInWedge(round, stitch).wedge,
    placeInWedge(round, stitch).place,
  ]);
  return csvText(['round', 'stitch', 'read', 'other', 'reason', 'wedge', 'place'], rows);
}

/** Wedge and place in it of a stitch, all from 1: a round has as many stitches in a wedge as its number. */
export function placeInWedge(round: number, stitch: number): { wedge: number; place: number } {
  return { wedge: Math.ceil(stitch / round), place: ((stitch - 1) % round) + 1 };
}
