import { bare, plainBead, undecided } from './bead.js';
import type { Bead, BeadOfStitch, PatternBead } from './bead.js';
import type { PanelGeometry } from '../panel/geometry.js';
import { bareMark, letters, undecidedMark } from '../pattern/marks.js';
import { stitchesBefore, stitchesInRound } from '../panel/shape.js';

/** Letters go by use, most used first; ties go to the lower place in the palette. */
export function letterBeads(palette: readonly Bead[], beadOf: BeadOfStitch) {
  const uses = new Map<number, number>();
  for (const index of beadOf) if (index >= 0) uses.set(index, (uses.get(index) ?? 0) + 1);
  const order = [...uses.keys()].sort((a, b) => uses.get(b)! - uses.get(a)! || a - b);
  const letterAt = new Map(order.map((index, rank) => [index, letters[rank]]));
  const letterOf = (s: number): string => {
    if (beadOf[s] === bare) return bareMark;
    return beadOf[s] === undecided ? undecidedMark : letterAt.get(beadOf[s])!;
  };
  return {
    order,
    beads: order.map((index, n): PatternBead => ({
      letter: letters[n],
      ...plainBead(palette[index]),
    })),
    letterOf,
  };
}

/** The rounds of a pattern: one string a round, one mark a stitch, in working order. */
export function roundStrings(geometry: PanelGeometry, letterOf: (s: number) => string): string[] {
  const { shape } = geometry;
  return Array.from({ length: shape.rounds }, (_, index) => {
    const first = stitchesBefore(shape, index + 1);
    const inRound = stitchesInRound(shape, index + 1);
    return Array.from({ length: inRound }, (_, i) => letterOf(first + i)).join('');
  });
}
