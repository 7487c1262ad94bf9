import { labOf, plainBead } from './bead.js';
import type { Bead, PatternBead } from './bead.js';
import { chooseBeads } from './choice/choose.js';
import { ciede2000 } from '../colour/ciede2000.js';
import { RondureError, warning } from '../errors.js';
import type { Warning } from '../errors.js';
import { beadsInStock } from './amounts.js';
import { letters } from '../pattern/marks.js';
import type { Pattern } from '../pattern/pattern.js';
import { beadCounts } from '../pattern/stitches.js';

/** What the maker wants changed; done in this order. */
export interface RecolourWish {
  /** The bead of a letter becomes another one; the letter stays. */
  swap?: readonly { letter: string; bead: Bead }[];
  /** Swaps hold only for the rest: in this panel (0-based), from this round (from 1) on. */
  swapOnly?: SwapScope;
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

/** The part of a pattern in which beads are swapped; all of it where nothing is said. */
export interface SwapScope {
  /** 0-based panel; all of them when undefined. */
  readonly panel?: number;
  /** First round, from 1, in which beads are swapped; all of them when undefined. */
  readonly fromRound?: number;
  /** Per panel 1 for each stitch, in working order, whose bead may be swapped; all of them when undefined. */
  readonly open?: readonly Uint8Array[];
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
 *   `recolour-nothing-left`, `no-letter-free`, and those of `chooseBeads`
 */
export function recolour(
  pattern: Pattern,
  wish: RecolourWish,
): { pattern: Pattern; report: RecolourReport } {
  const { swapOnly } = wish;
  const given = swapOnly ? swappedInPart(pattern, wish.swap ?? [], swapOnly) : pattern;
  /** Bead of each letter of the pattern as it was given. */
  const now: BeadOfLetter = new Map(given.beads.map((bead) => [bead.letter, bead]));
  if (!swapOnly) for (const { letter, bead } of wish.swap ?? []) swap(now, letter, bead);
  for (const { from, into } of wish.merge ?? []) merge(now, from, into);
  const counts = beadCounts(given);
  if (wish.leaveOut && wish.leaveOut.length > 0) leaveOut(now, wish.leaveOut, counts);
  if (wish.beads) chooseAgain(now, counts, wish.beads, wish);
  else if (wish.limit !== undefined && used(now, counts).length > wish.limit) {
    serve(now, counts, used(now, counts), wish.limit);
  }
  const made = rewritten(given, now);
  return { pattern: made, report: reportOf(pattern, made) };
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
  replace(now, old, { letter: old.letter, ...plainBead(wanted) });
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
    order.map((index) => [index, { letter: letterOf.get(index)!, ...plainBead(beads[index]) }]),
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
    Float64Array.from(beads.flatMap((one) => [...labOf(one)]));
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

function rewritten(pattern: Pattern, now: BeadOfLetter): Pattern {
  const beads = [...new Set(now.values())];
  beads.sort((one, other) => letters.indexOf(one.letter) - letters.indexOf(other.letter));
  const rewrite = (marks: string) =>
    Array.from(marks, (mark) => now.get(mark)?.letter ?? mark).join('');
  const { choice: _choice, ...kept } = pattern;
  const panels = pattern.panels.map((panel) => ({ ...panel, rounds: panel.rounds.map(rewrite) }));
  return { ...kept, beads, panels };
}

function reportOf(before: Pattern, after: Pattern): RecolourReport {
  const beads = [before, after].map((one) => new Map(one.beads.map((bead) => [bead.letter, bead])));
  const marks = [before, after].map((one) =>
    one.panels.map(({ rounds }) => rounds.join('')).join(''),
  );
  const pairs = new Map<string, number>();
  for (let s = 0; s < marks[0].length; s++) {
    const pair = marks[0][s] + marks[1][s];
    pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
  }
  let [stitches, sum, all] = [0, 0, 0];
  for (const [pair, count] of pairs) {
    const [old, bead] = [beads[0].get(pair[0]), beads[1].get(pair[1])];
    if (!old || !bead) continue;
    all += count;
    if (bead.id !== old.id || bead.hex !== old.hex) stitches += count;
    sum += count * ciede2000(...labOf(old), ...labOf(bead));
  }
  return { stitches, meanChange: all > 0 ? sum / all : 0 };
}

/**
 * Swaps in a part only: what is worked already keeps its letter, the rest gets the new bead's
 * letter, or the first free one. A bead of which nothing is left goes.
 */
function swappedInPart(
  pattern: Pattern,
  swaps: readonly { letter: string; bead: Bead }[],
  { panel, fromRound = 1, open }: SwapScope,
): Pattern {
  const taken = new Map(pattern.beads.map((bead) => [bead.letter, bead]));
  const becomes = new Map<string, string>();
  for (const { letter, bead } of swaps) {
    beadAt(taken, letter);
    const there = [...taken.values()].find(({ id }) => id === bead.id)?.letter;
    const free = there ?? [...letters].find((one) => !taken.has(one));
    if (free === undefined) throw new RondureError('no-letter-free', { most: letters.length });
    if (there === undefined) taken.set(free, { letter: free, ...plainBead(bead) });
    becomes.set(letter, free);
  }
  const swapped = (marks: string, within?: Uint8Array) =>
    Array.from(marks, (mark, i) => (within?.[i] === 0 ? mark : (becomes.get(mark) ?? mark))).join(
      '',
    );
  const panels = pattern.panels.map((one, n) => {
    if (panel !== undefined && n !== panel) return one;
    let first = 0;
    const rounds = one.rounds.map((marks, r) => {
      const from = first;
      first += marks.length;
      return r + 1 < fromRound ? marks : swapped(marks, open?.[n]?.subarray(from, first));
    });
    return { ...one, rounds };
  });
  const used = new Set(panels.flatMap(({ rounds }) => rounds).join(''));
  const beads = [...taken.values()].filter(
    ({ letter }) => !becomes.has(letter) || used.has(letter),
  );
  return { ...pattern, beads, panels };
}

/** Beads of which more are worked than before, and more than the jar holds. */
export function pastStockWarnings(before: Pattern, after: Pattern): Warning[] {
  const [had, has] = [before, after].map(beadCounts);
  const countBefore = (id: string) =>
    before.beads.reduce((sum, bead) => sum + (bead.id === id ? (had.get(bead.letter) ?? 0) : 0), 0);
  return after.beads.flatMap((bead) => {
    const { letter, id, name } = bead;
    const needed = has.get(letter) ?? 0;
    const inStock = beadsInStock(bead);
    if (inStock === undefined || needed <= inStock || needed <= countBefore(id)) return [];
    return [warning('jar-runs-out', { letter, name, needed, inStock })];
  });
}
