import type { Bead } from './bead.js';
import { recolour } from './recolour.js';
import type { Pattern } from '../pattern/pattern.js';

/** The bead that lies where one was chosen; a chain of changes is followed to its end. */
export function endOf(id: string, instead: Readonly<Record<string, string>>): string {
  const seen = new Set([id]);
  let at = id;
  while (instead[at] !== undefined && !seen.has(instead[at])) {
    at = instead[at];
    seen.add(at);
  }
  return at;
}

/** A pattern with the beads that the maker laid instead; as `rondure recolour` makes it. */
export function withInstead(
  pattern: Pattern,
  instead: Readonly<Record<string, string>>,
  palette: readonly Bead[],
): Pattern {
  let now = pattern;
  for (const { id } of pattern.beads) {
    const end = endOf(id, instead);
    if (end === id) continue;
    const letter = now.beads.find((bead) => bead.id === id)?.letter;
    const there = now.beads.find((bead) => bead.id === end);
    const bead = palette.find((one) => one.id === end);
    if (letter === undefined || (!there && !bead)) continue;
    const wish = there
      ? { merge: [{ from: letter, into: there.letter }] }
      : { swap: [{ letter, bead: bead! }] };
    now = recolour(now, wish).pattern;
  }
  return now;
}
