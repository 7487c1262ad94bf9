import { stitchesBefore, stitchesInRound } from '../panel/shape.js';
import type { Shape } from '../panel/shape.js';
import type { HandLaid } from '../pattern/wished.js';

/**
 * Beads laid by hand as a wish keeps them: by round, in each by bead in the order in which the work
 * comes to them, stitches from 1. Whatever order they were laid in, the same beads give the same
 * entries.
 *
 * @param placed id of the bead, or `.` for none, by stitch in working order from 0; for each panel
 */
export function laidEntries(
  shape: Pick<Shape, 'wedges' | 'rounds'>,
  placed: readonly ReadonlyMap<number, string>[],
): Pick<HandLaid, 'front' | 'back'> {
  const [front, back] = [0, 1].map((n) => panelEntries(shape, placed.at(n) ?? new Map()));
  return { ...(front.length > 0 && { front }), ...(back.length > 0 && { back }) };
}

function panelEntries(
  shape: Pick<Shape, 'wedges' | 'rounds'>,
  placed: ReadonlyMap<number, string>,
): NonNullable<HandLaid['front']> {
  const entries: NonNullable<HandLaid['front']> = [];
  for (let round = 1; round <= shape.rounds; round++) {
    const first = stitchesBefore(shape, round);
    const byBead = new Map<string, number[]>();
    for (let i = 0; i < stitchesInRound(shape, round); i++) {
      const bead = placed.get(first + i);
      if (bead === undefined) continue;
      const stitches = byBead.get(bead);
      if (stitches) stitches.push(i + 1);
      else byBead.set(bead, [i + 1]);
    }
    for (const [bead, stitches] of byBead) entries.push({ bead, round, stitches });
  }
  return entries;
}
