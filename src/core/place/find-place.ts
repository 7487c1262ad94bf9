import type { Pattern } from '../pattern/schema.js';
import { stitchesBefore } from '../shape.js';
import { panelLengths } from '../thread/lengths.js';
import type { Length } from '../thread/lengths.js';

/** What `findPlaces` looks for. */
export interface FindWish {
  /** Letters in working order: those that come next on the thread, or those last worked. */
  readonly beads: string;
  /** true: `beads` are the last ones worked, the latest at the end. */
  readonly worked?: boolean;
  /** Only this panel (0-based), only this length (from 1). */
  readonly panel?: number;
  readonly length?: number;
}

/** One place where the beads fit. */
export interface FoundPlace {
  /** 0-based. */
  readonly panel: number;
  readonly length: number;
  /** Round and stitch, both from 1: of the next bead, or of the last bead worked. */
  readonly round: number;
  readonly stitch: number;
  /** Beads still to be worked of this length, and of this panel. */
  readonly left: number;
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
 * Lengths are searched one by one, since a thread goes no further. Runs may be begun: 2A fits
 * wherever at least two beads A are left.
 */
export function findPlaces(pattern: Pattern, wish: FindWish): FoundPlace[] {
  const worked = wish.worked ?? false;
  const strings: Strung[] = pattern.panels.flatMap((_, panel) => {
    if (wish.panel !== undefined && wish.panel !== panel) return [];
    return panelLengths(pattern, panel)
      .filter(({ number }) => wish.length === undefined || wish.length === number)
      .map((length) => ({ panel, length, stitchOf: beadStitches(pattern, panel, length) }));
  });
  const found = strings.flatMap((strung) =>
    occurrences(strung.length.beads, wish.beads).map((at) => ({ ...strung, at })),
  );
  const rests = found.map(({ length: { beads }, at }) =>
    worked ? backwards(beads.slice(0, at)) : beads.slice(at + wish.beads.length),
  );
  const certain = certainAfter(rests);
  return found.map(({ panel, length, stitchOf, at }, n) => {
    const bead = worked ? at + wish.beads.length - 1 : at;
    const left = length.beads.length - (worked ? bead + 1 : bead);
    const later = strings.filter((one) => one.panel === panel && one.length.number > length.number);
    const leftInPanel = later.reduce((sum, one) => sum + one.length.beads.length, left);
    const place = placeOf(pattern, stitchOf[bead]);
    return {
      panel,
      length: length.number,
      ...place,
      left,
      leftInPanel: wish.length === undefined ? leftInPanel : left,
      certainAfter: certain[n],
    };
  });
}

interface Strung {
  readonly panel: number;
  readonly length: Length;
  /** Stitch of the panel of each bead of the length. */
  readonly stitchOf: Int32Array;
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

/** Round and stitch, both from 1, of a stitch of the panel. */
export function placeOf({ shape }: Pick<Pattern, 'shape'>, s: number) {
  let round = 1;
  while (round < shape.rounds && s >= stitchesBefore(shape, round + 1)) round++;
  return { round, stitch: s - stitchesBefore(shape, round) + 1 };
}

function occurrences(text: string, part: string): number[] {
  const found: number[] = [];
  for (let at = text.indexOf(part); at >= 0; at = text.indexOf(part, at + 1)) found.push(at);
  return found;
}

function backwards(text: string): string {
  return Array.from(text).reverse().join('');
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
