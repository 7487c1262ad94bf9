import type { Bead } from './bead.js';
import { chooseBeads } from './choice/choose.js';
import { ciede2000 } from './colour/ciede2000.js';
import { hexToLab65 } from './colour/lab.js';
import { RondureError } from './errors.js';
import { letters } from './pattern/schema.js';
import type { Pattern, PatternBead } from './pattern/schema.js';
import { beadCounts } from './pattern/stitches.js';

/** What the maker wants changed; done in this order. */
export interface RecolourWish {
  /** The bead of a letter becomes another one; the letter stays. */
  swap?: readonly { letter: string; bead: Bead }[];
  /** All stitches of the first letter get the second one's bead. */
  merge?: readonly { from: string; into: string }[];
  /** Letters whose stitches get the nearest of the other beads. */
  leaveOut?: readonly string[];
  /** Choose again out of these, for the colours that the pattern now has. */
  beads?: readonly Bead[];
  /** Palette indices into `beads` that must not be chosen. */
  leaveOutOfBeads?: readonly number[];
  /** Most colours: the best of the pattern's own beads, or of `beads` where they are given. */
  limit?: number;
}

/** What recolouring did to the panels, all of them together. */
export interface RecolourReport {
  /** Stitches whose bead is another one than before. */
  readonly stitches: number;
  /** Mean CIEDE2000 between the beads before and after, over all beaded stitches. */
  readonly meanChange: number;
}

/**
 * Other beads for a pattern, stitch by stitch the same picture. A bead that stays keeps its letter,
 * so that marked dishes stay right; a new bead takes the letter of the bead that it replaces most.
 * What the pattern said of its choice no longer holds and is left away.
 *
 * @returns a new pattern; the one given is not changed
 * @throws RondureError `letter-not-in-pattern`, `merge-into-itself`, `swap-already-there`,
 *   `recolour-nothing-left`, and those of `chooseBeads`
 */
export function recolour(
  pattern: Pattern,
  wish: RecolourWish,
): { pattern: Pattern; report: RecolourReport } {
  const before = new Map(pattern.beads.map((bead) => [bead.letter, bead]));
  /** Bead of each letter of the pattern as it was given. */
  const now = new Map(before);
  for (const { letter, bead } of wish.swap ?? []) swap(now, letter, bead);
  for (const { from, into } of wish.merge ?? []) merge(now, from, into);
  const counts = beadCounts(pattern);
  if (wish.leaveOut && wish.leaveOut.length > 0) leaveOut(now, wish.leaveOut, counts);
  if (wish.beads) chooseAgain(now, counts, wish.beads, wish);
  else if (wish.limit !== undefined && used(now, counts).length > wish.limit) {
    serve(now, counts, used(now, counts), wish.limit);
  }
  return { pattern: rewritten(pattern, now), report: reportOf(before, now, counts) };
}

type BeadOfLetter = Map<string, PatternBead>;

function beadAt(now: BeadOfLetter, letter: string): PatternBead {
  const bead = now.get(letter);
  if (bead) return bead;
  throw new RondureError('letter-not-in-pattern', { letter, letters: [...now.keys()] });
}

function swap(now: BeadOfLetter, letter: string, wanted: Bead): void {
  const old = beadAt(now, letter);
  const same = [...now.values()].find((bead) => bead.id === wanted.id && bead !== old);
  if (same && same.letter !== old.letter) {
    throw new RondureError('swap-already-there', { letter, id: wanted.id, other: same.letter });
  }
  replace(now, old, { letter: old.letter, ...plain(wanted) });
}

function merge(now: BeadOfLetter, from: string, into: string): void {
  const [gone, stays] = [beadAt(now, from), beadAt(now, into)];
  if (gone === stays) throw new RondureError('merge-into-itself', { from, into });
  replace(now, gone, stays);
}

function leaveOut(now: BeadOfLetter, out: readonly string[], counts: Map<string, number>): void {
  const gone = new Set(out.map((letter) => beadAt(now, letter)));
  const stay = [...new Set(now.values())].filter((bead) => !gone.has(bead));
  if (stay.length === 0) throw new RondureError('recolour-nothing-left', undefined);
  serve(now, counts, stay, stay.length);
}

function chooseAgain(
  now: BeadOfLetter,
  counts: Map<string, number>,
  beads: readonly Bead[],
  { limit, leaveOutOfBeads }: RecolourWish,
): void {
  const old = used(now, counts);
  const letterOfId = new Map(old.map((bead) => [bead.id, bead.letter]));
  const chosen = choose(old, counts, now, beads, limit ?? old.length, leaveOutOfBeads);
  const uses = new Map<number, number>();
  const replaces = new Map<number, PatternBead[]>();
  old.forEach((bead, n) => {
    const index = chosen[n];
    uses.set(index, (uses.get(index) ?? 0) + usesOf(bead, now, counts));
    replaces.set(index, [...(replaces.get(index) ?? []), bead]);
  });
  const order = [...uses.keys()].sort((p, q) => uses.get(q)! - uses.get(p)! || p - q);
  const letterOf = new Map<number, string>();
  const taken = new Set<string>();
  const give = (index: number, wanted: string | undefined) => {
    if (wanted === undefined || taken.has(wanted) || letterOf.has(index)) return;
    letterOf.set(index, wanted);
    taken.add(wanted);
  };
  for (const index of order) give(index, letterOfId.get(beads[index].id));
  for (const index of order) {
    const replaced = replaces.get(index)!.slice();
    replaced.sort((p, q) => usesOf(q, now, counts) - usesOf(p, now, counts));
    for (const { letter } of replaced) give(index, letter);
  }
  for (const index of order)
    give(
      index,
      [...letters].find((letter) => !taken.has(letter)),
    );
  const fresh = new Map(
    order.map((index) => [index, { letter: letterOf.get(index)!, ...plain(beads[index]) }]),
  );
  old.forEach((bead, n) => replace(now, bead, fresh.get(chosen[n])!));
}

/** Gives every bead in use the best of some candidates, at most `most` of them in all. */
function serve(
  now: BeadOfLetter,
  counts: Map<string, number>,
  candidates: readonly PatternBead[],
  most: number,
): void {
  const old = [...new Set(now.values())];
  const chosen = choose(old, counts, now, candidates, most);
  old.forEach((bead, n) => replace(now, bead, candidates[chosen[n]]));
}

/** Which candidate serves each old bead, by the choice of the main job. */
function choose(
  old: readonly PatternBead[],
  counts: Map<string, number>,
  now: BeadOfLetter,
  candidates: readonly (PatternBead | Bead)[],
  most: number,
  leaveOutOf: readonly number[] = [],
): Int16Array {
  const labs = (beads: readonly (PatternBead | Bead)[]) =>
    Float64Array.from(beads.flatMap((one) => ('lab' in one ? [...one.lab] : hexToLab65(one.hex))));
  return chooseBeads({
    stitches: labs(old),
    weights: Float64Array.from(old, (bead) => usesOf(bead, now, counts)),
    palette: labs(candidates),
    most,
    leaveOut: leaveOutOf,
  }).beadOf;
}

/** Beads that at least one stitch carries, in the order of the pattern's letters. */
function used(now: BeadOfLetter, counts: Map<string, number>): PatternBead[] {
  return [...new Set(now.values())].filter((bead) => usesOf(bead, now, counts) > 0);
}

function usesOf(bead: PatternBead, now: BeadOfLetter, counts: Map<string, number>): number {
  let sum = 0;
  for (const [letter, one] of now) if (one === bead) sum += counts.get(letter) ?? 0;
  return sum;
}

function replace(now: BeadOfLetter, old: PatternBead, bead: PatternBead): void {
  for (const [letter, one] of now) if (one === old) now.set(letter, bead);
}

function plain(bead: Bead): Omit<PatternBead, 'letter'> {
  const { lab: _lab, filled: _filled, ...kept } = bead;
  return kept;
}

function rewritten(pattern: Pattern, now: BeadOfLetter): Pattern {
  const beads = [...new Set(now.values())];
  beads.sort((one, other) => letters.indexOf(one.letter) - letters.indexOf(other.letter));
  const rewrite = (marks: string) =>
    Array.from(marks, (mark) => now.get(mark)?.letter ?? mark).join('');
  const { choice: _choice, ...kept } = pattern;
  const panels = pattern.panels.map((panel) => ({ ...panel, rounds: panel.rounds.map(rewrite) }));
  return { ...kept, beads, panels };
}

function reportOf(
  before: BeadOfLetter,
  now: BeadOfLetter,
  counts: Map<string, number>,
): RecolourReport {
  let [stitches, sum, all] = [0, 0, 0];
  for (const [letter, old] of before) {
    const count = counts.get(letter) ?? 0;
    const bead = now.get(letter)!;
    all += count;
    if (bead.id !== old.id || bead.hex !== old.hex) stitches += count;
    sum += count * ciede2000(...hexToLab65(old.hex), ...hexToLab65(bead.hex));
  }
  return { stitches, meanChange: all > 0 ? sum / all : 0 };
}
