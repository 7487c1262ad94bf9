import { RondureError } from '../errors.js';
import { stitchesBefore, stitchesInRound } from '../panel/shape.js';
import { bareMark, letters } from '../pattern/marks.js';
import type { PatternBead } from '../beads/bead.js';
import type { Pattern } from '../pattern/pattern.js';
import { lettersInWorkingOrder } from '../pattern/stitches.js';
import type { HandLaid } from '../pattern/wished.js';
import { laidEntries } from './laid-entries.js';

/** What lies on one panel by hand: id of the bead, or `.` for none, by stitch in working order from 0. */
export type LaidOnPanel = ReadonlyMap<number, string>;

/**
 * Lays beads by hand over those that were chosen. A bead that stays keeps its letter, so that marked
 * dishes stay right; one that comes new takes the first free letter; one of which nothing is left
 * goes. The wish of the pattern, where it has one, keeps what was laid.
 *
 * @param laid for the wedges of the pattern: with others none of them has a place
 * @returns a new pattern, and how many of the beads have no stitch in it
 * @throws RondureError `no-letter-free`
 */
export function withHandLaid(pattern: Pattern, laid: HandLaid): { pattern: Pattern; lost: number } {
  const placed = pattern.panels.map((_, n) => laidOnPanel(pattern, laid, n));
  const wished = [laid.front ?? [], laid.back ?? []]
    .flat()
    .reduce((sum, { stitches }) => sum + stitches.length, 0);
  const stands = placed.reduce((sum, one) => sum + one.size, 0);
  if (stands === 0) return { pattern, lost: wished };
  const before = pattern.panels.map((panel) => Array.from(lettersInWorkingOrder(panel)));
  const stay = new Set(before.flatMap((marks, n) => marks.filter((_, s) => !placed[n].has(s))));
  const { beads, markOf } = lettered(pattern, laid, placed, before, stay);
  const panels = pattern.panels.map((panel, n) => {
    const marks = before[n].map((mark, s) => markOf.get(placed[n].get(s) ?? '') ?? mark);
    return { ...panel, rounds: inRounds(pattern, marks.join('')) };
  });
  const { wish } = pattern;
  const kept = { ...laid, ...laidEntries(pattern.shape, placed) };
  return {
    pattern: { ...pattern, beads, panels, ...(wish && { wish: { ...wish, laid: kept } }) },
    lost: wished - stands,
  };
}

/**
 * What of the beads laid by hand has a stitch in a panel; of two in one place the later.
 *
 * @param panel 0 for the front, 1 for the back
 */
export function laidOnPanel(
  { shape, beads, panels }: Pattern,
  laid: HandLaid,
  panel: number,
): LaidOnPanel {
  const placed = new Map<number, string>();
  if (laid.wedges !== shape.wedges || panel >= panels.length) return placed;
  const known = new Set([bareMark, ...[...beads, ...laid.beads].map(({ id }) => id)]);
  for (const { bead, round, stitches } of (panel === 0 ? laid.front : laid.back) ?? []) {
    if (round > shape.rounds || !known.has(bead)) continue;
    const before = stitchesBefore(shape, round);
    for (const i of stitches) {
      if (i <= stitchesInRound(shape, round)) placed.set(before + i - 1, bead);
    }
  }
  return placed;
}

/** The beads as they are then, by letter, and the mark of each id. */
function lettered(
  pattern: Pattern,
  laid: HandLaid,
  placed: readonly LaidOnPanel[],
  before: readonly (readonly string[])[],
  stay: ReadonlySet<string>,
): { beads: PatternBead[]; markOf: Map<string, string> } {
  const wanted = new Set(placed.flatMap((one) => [...one.values()]));
  const had = new Set(before.flat());
  const beads = pattern.beads.filter(
    ({ letter, id }) => stay.has(letter) || wanted.has(id) || !had.has(letter),
  );
  const markOf = new Map([[bareMark, bareMark]]);
  for (const { id, letter } of beads) markOf.set(id, letter);
  const taken = new Set(beads.map(({ letter }) => letter));
  for (const bead of laid.beads) {
    if (!wanted.has(bead.id) || markOf.has(bead.id)) continue;
    const letter = [...letters].find((one) => !taken.has(one));
    if (letter === undefined) throw new RondureError('no-letter-free', { most: letters.length });
    taken.add(letter);
    markOf.set(bead.id, letter);
    beads.push({ letter, ...bead });
  }
  const place = ({ letter }: PatternBead) => letters.indexOf(letter);
  return { beads: beads.sort((one, other) => place(one) - place(other)), markOf };
}

/** Marks in working order as the strings of their rounds. */
function inRounds({ shape }: Pattern, marks: string): string[] {
  return Array.from({ length: shape.rounds }, (_, n) =>
    marks.slice(stitchesBefore(shape, n + 1), stitchesBefore(shape, n + 2)),
  );
}
