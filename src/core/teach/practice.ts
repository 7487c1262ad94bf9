import type { PatternBead } from '../beads/bead.js';
import { pairStart } from '../panel/links.js';
import type { Shape } from '../panel/shape.js';
import { defaultStartDegrees } from '../panel/turn.js';
import { directionOf } from '../panel/shape.js';
import type { Pattern } from '../pattern/pattern.js';

/** Rounds of a practice piece: enough to meet every increase, few enough for an evening. */
export const practiceRounds = 4;

/**
 * A small panel to learn by, in the maker's own stitch: bead A all over, both stitches of every
 * increase in B, and the first stitch of each round in C, where the marker hangs.
 *
 * @param beads three or more; the first three are taken
 */
export function practicePattern(
  shape: Shape,
  beads: readonly PatternBead[],
  title: string,
): Pattern {
  const own: Shape = { ...shape, rounds: practiceRounds };
  const { wedges } = own;
  const rounds = Array.from({ length: practiceRounds }, (_, n) => {
    const r = n + 1;
    const pair = pairStart(own, r);
    const wedge = Array.from({ length: r }, (_stitch, j) =>
      pair !== undefined && (j === pair || j === pair + 1) ? 'B' : 'A',
    ).join('');
    return `C${wedge.repeat(wedges).slice(1)}`;
  });
  return {
    format: 'rondure-pattern',
    version: 1,
    title,
    shape: own,
    beads: ['A', 'B', 'C'].map((letter, n) => ({ ...beads[n], letter })),
    panels: [{ name: 'front', startDegrees: defaultStartDegrees(own, directionOf(own)), rounds }],
  };
}
