import type { Pattern } from '../../pattern/pattern.js';
import { backwards } from '../../pattern/stitches.js';
import { roundOfStitch, stitchesBefore } from '../../panel/shape.js';
import { panelLengths } from '../lengths.js';
import type { Length } from '../lengths.js';

/** What `findPlaces` looks for. */
export interface FindWish {
  /** Letters in working order: those that come next on the thread, or those last worked. */
  readonly beads: string;
  /** true: `beads` are the last ones worked, the latest at the end. */
  readonly worked?: boolean;
  /** Only this panel (0-based), only this length (from 1). */
  readonly panel?: number;
  /** Only this length, from 1; all of them when undefined. */
  readonly length?: number;
}

/** Where a stitch is, all from 1. */
export interface StitchPlace {
  readonly round: number;
  readonly stitch: number;
  readonly wedge: number;
  /** Its place in that wedge. */
  readonly inWedge: number;
}

/** One place where the beads fit: of the next bead, or of the last bead worked. */
export interface FoundPlace extends StitchPlace {
  /** 0-based. */
  readonly panel: number;
  /** Length of thread, from 1. */
  readonly length: number;
  /** Beads still to be worked of this length, and of this panel. */
  readonly left: number;
  /** Beads still to be worked of this panel. */
  readonly leftInPanel: number;
  /**
   * How many beads more must be read, if this is the place, until no other fits. They are the ones
   * that follow on the thread or, for worked beads, those worked before. One more than there are
   * means that the thread ends there. Undefined if other places never stop to fit.
   */
  readonly certainAfter: number | undefined;
}

/**
 * Every place of a pattern where these beads come next, or were last worked; in working order.
 * What comes next is searched length by length, since a thread goes no further; what was worked is
 * searched through the whole panel, since the work goes on over a join. Runs may be begun: 2A fits
 * wherever at least two beads A are left.
 */
export function findPlaces(pattern: Pattern, wish: FindWish): FoundPlace[] {
  const worked = wish.worked ?? false;
  const found = pattern.panels.flatMap((_, panel) => {
    if (wish.panel !== undefined && wish.panel !== panel) return [];
    return placesInPanel(pattern, panel, wish);
  });
  const rests = found.map(({ before, after }) => (worked ? backwards(before) : after));
  const certain = certainAfter(rests);
  return found.map(({ place }, n) => ({ ...place, certainAfter: certain[n] }));
}

/** The places of one panel, with the beads before and after those that were looked for. */
function placesInPanel(pattern: Pattern, panel: number, wish: FindWish) {
  const worked = wish.worked ?? false;
  const lengths = panelLengths(pattern, panel);
  const all = lengths.map(({ beads }) => beads).join('');
  let start = 0;
  return lengths.flatMap((length) => {
    const [from, to] = [start, start + length.beads.length];
    start = to;
    if (wish.length !== undefined && wish.length !== length.number) return [];
    const stitchOf = beadStitches(pattern, panel, length);
    const text = all.slice(worked ? 0 : from, to);
    const offset = worked ? 0 : from;
    return occurrences(text, wish.beads)
      .map((at) => ({ at, bead: offset + (worked ? at + wish.beads.length - 1 : at) }))
      .filter(({ bead }) => bead >= from)
      .map(({ at, bead }) => ({
        before: text.slice(0, at),
        after: text.slice(at + wish.beads.length),
        place: {
          panel,
          length: length.number,
          ...placeOf(pattern, stitchOf[bead - from]),
          left: to - bead - (worked ? 1 : 0),
          leftInPanel: all.length - bead - (worked ? 1 : 0),
        },
      }));
  });
}

/** Stitch of the panel, in working order, of each bead of a length. */
export function beadStitches(pattern: Pattern, panel: number, length: Length): Int32Array {
  const marks = pattern.panels[panel].rounds.join('');
  const stitches = new Int32Array(length.beads.length);
  let bead = 0;
  for (let s = length.fromStitch; s < length.toStitch; s++) {
    if (/[A-Z]/.test(marks[s])) stitches[bead++] = s;
  }
  return stitches;
}

/** Where a stitch of the panel is, all from 1: round and stitch in it, wedge and stitch in that. */
export function placeOf({ shape }: Pick<Pattern, 'shape'>, s: number): StitchPlace {
  const round = roundOfStitch(shape, s);
  const i = s - stitchesBefore(shape, round);
  return { round, stitch: i + 1, wedge: Math.floor(i / round) + 1, inWedge: (i % round) + 1 };
}

function occurrences(text: string, part: string): number[] {
  const found: number[] = [];
  for (let at = text.indexOf(part); at >= 0; at = text.indexOf(part, at + 1)) found.push(at);
  return found;
}

/** Of each text: how many characters tell it from all others, with one more for its end. */
function certainAfter(texts: readonly string[]): (number | undefined)[] {
  const order = [...texts.keys()].sort((p, q) =>
    texts[p] < texts[q] ? -1 : texts[p] > texts[q] ? 1 : p - q,
  );
  const certain: (number | undefined)[] = texts.map(() => 0);
  for (let n = 1; n < order.length; n++) {
    const [one, other] = [order[n - 1], order[n]];
    const same = texts[one] === texts[other];
    const needed = same ? undefined : shared(texts[one], texts[other]) + 1;
    for (const at of [one, other]) {
      const soFar = certain[at];
      certain[at] =
        needed === undefined || soFar === undefined ? undefined : Math.max(soFar, needed);
    }
  }
  return certain;
}

/** Length of the common beginning of two texts. */
function shared(one: string, other: string): number {
  const most = Math.min(one.length, other.length);
  let at = 0;
  while (at < most && one[at] === other[at]) at++;
  return at;
}
