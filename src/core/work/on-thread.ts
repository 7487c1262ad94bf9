import { isBead } from '../pattern/marks.js';
import type { Length } from '../thread/lengths.js';
import { alignBeads } from '../thread/find/align.js';
import type { StitchNote } from './progress.js';

/** A bead as it really is on the thread. */
export interface ThreadBead {
  readonly letter: string;
  /** Stitch that it is worked in; of a bead too many, the one that it comes before. */
  readonly stitch: number;
  /** One too many, which has to come off. */
  readonly extra: boolean;
}

type Cut = Pick<Length, 'fromStitch' | 'toStitch'>;

/**
 * What comes off the thread of one length, the bead that is worked first at the front: the beads of
 * the list, without those that are known to be missing and with those known to be too many.
 */
export function beadsOnThread(
  marks: string,
  { fromStitch, toStitch }: Cut,
  notes: readonly StitchNote[] = [],
): ThreadBead[] {
  const missing = new Set(notes.filter(({ sewOn }) => sewOn).map(({ stitch }) => stitch));
  const beads: ThreadBead[] = [];
  for (let s = fromStitch; s < toStitch; s++) {
    for (const { stitch, extra = '' } of notes) {
      if (stitch === s) for (const letter of extra) beads.push({ letter, stitch: s, extra: true });
    }
    if (isBead(marks[s]) && !missing.has(s)) {
      beads.push({ letter: marks[s], stitch: s, extra: false });
    }
  }
  return beads;
}

/** The marks as they can be worked: bare where the bead is to be sewn on later. */
export function workableMarks(marks: string, notes: readonly StitchNote[]): string {
  const all = [...marks];
  for (const { stitch, sewOn } of notes) if (sewOn) all[stitch] = '.';
  return all.join('');
}

/** A place where the beads that were read fit. */
export interface ThreadPlace {
  /** The stitch of the next bead. */
  readonly stitch: number;
  /** Beads among those read that differ from the list there. */
  readonly slips: number;
}

/** Slips that may lie among the beads that were read, at most. */
const mostSlips = 2;

/**
 * Where on a panel one is, by the beads that come next off the thread. Where none fit, places are
 * shown at which one of them, or else two, are wrong, missing or too many: a string has slips.
 *
 * @param lengths of the panel, each as `beadsOnThread` gives it
 * @param beads letters, the one nearest the hook first
 */
export function placesOnThread(
  lengths: readonly (readonly ThreadBead[])[],
  beads: string,
): ThreadPlace[] {
  const exact = lengths.flatMap((length) => placesWith(length, beads, 0));
  // A slip among three beads would fit almost anywhere.
  for (let slips = 1; exact.length === 0 && slips <= mostSlips; slips++) {
    if (beads.length < 5 * slips) break;
    const near = lengths.flatMap((length) => placesWith(length, beads, slips));
    if (near.length > 0) return near;
  }
  return exact;
}

function placesWith(length: readonly ThreadBead[], beads: string, slips: number): ThreadPlace[] {
  const text = length.map(({ letter }) => letter).join('');
  const found: ThreadPlace[] = [];
  for (let at = 0; at < length.length; at++) {
    const fits =
      slips === 0
        ? text.startsWith(beads, at)
        : alignBeads(text.slice(at, at + beads.length + slips), beads, {
            most: slips,
            freeEnd: true,
          }) !== undefined;
    if (!fits || length[at].extra) continue;
    found.push({ stitch: length[at].stitch, slips });
  }
  // A slip at the front lets the place beside the right one fit as well: the one with more beads in a row counts.
  return slips === 0 ? found : found.filter(({ stitch }) => startsRight(length, stitch, beads));
}

function startsRight(length: readonly ThreadBead[], stitch: number, beads: string): boolean {
  const at = length.findIndex((bead) => bead.stitch === stitch && !bead.extra);
  return length[at].letter === beads[0];
}
