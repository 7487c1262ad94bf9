import { alignBeads } from '../thread/find/align.js';
import type { Edit } from '../thread/find/align.js';
import { mostEdits } from '../thread/find/mend.js';
import type { StitchNote } from './progress.js';
import type { ThreadBead } from './on-thread.js';

/** One slip on a thread. */
export interface Slip {
  /** A bead missing; one too many; another colour; two neighbours in the wrong order. */
  readonly kind: 'missing' | 'extra' | 'other' | 'swap';
  /** Beads that were read before it, and beads of the list that they stand for. */
  readonly at: number;
  readonly wantedAt: number;
  /** Letters that the list wants there and that are on the thread, in the order of reading; '' for none. */
  readonly wanted: string;
  readonly got: string;
  /** Stitches of the wanted beads, one a letter; of a bead too many, the stitch that it comes before, if any. */
  readonly stitches: readonly number[];
}

/** What reading a piece of thread came to. */
export interface ThreadRead {
  /** In the order in which they were read; undefined when it is not this piece of thread at all. */
  readonly slips: readonly Slip[] | undefined;
  /** Beads of the list that were read, slips counted as the list wants them. */
  readonly covered: number;
}

/**
 * Reads a piece of thread against what it should be: the fewest beads to put in, take out, change or
 * swap. `wanted` goes on beyond what was read.
 *
 * @param wanted beads of the list in the order of reading
 * @param got letters as they were read
 * @param strungFirst true: the bead that was strung first comes first; else the one that is worked first
 */
export function readThread(
  wanted: readonly ThreadBead[],
  got: string,
  strungFirst: boolean,
): ThreadRead {
  const letters = wanted.map(({ letter }) => letter).join('');
  const most = Math.min(mostEdits, Math.max(2, Math.ceil(got.length / 4)));
  const found = alignBeads(letters, got, { most, freeEnd: true });
  if (!found) return { slips: undefined, covered: 0 };
  const edits = strungFirst
    ? found.edits.map((edit, n) => late(edit, letters, got, found.edits[n + 1]))
    : found.edits;
  const slips = edits.map(({ kind, wantedAt, gotAt, wanted: want, got: there }): Slip => {
    const own = wanted.slice(wantedAt, wantedAt + want.length).map(({ stitch }) => stitch);
    const stitches = want === '' ? comesBefore(wanted, wantedAt, strungFirst) : own;
    return { kind, at: gotAt, wantedAt, wanted: want, got: there, stitches };
  });
  return { slips, covered: found.wanted };
}

/**
 * Among equal beads nobody can tell which one is missing or too many: the last of them, so that as few
 * as can be come off the thread again.
 */
function late(edit: Edit, wanted: string, got: string, next: Edit | undefined): Edit {
  const { kind } = edit;
  if (kind !== 'missing' && kind !== 'extra') return edit;
  const letter = kind === 'missing' ? edit.wanted : edit.got;
  const [inWanted, inGot] = kind === 'missing' ? [1, 0] : [0, 1];
  const end = next ? next.gotAt : got.length;
  let by = 0;
  while (
    edit.gotAt + by + inGot < end &&
    got[edit.gotAt + by + inGot] === letter &&
    wanted[edit.wantedAt + by + inWanted] === letter
  ) {
    by++;
  }
  return { ...edit, gotAt: edit.gotAt + by, wantedAt: edit.wantedAt + by };
}

/** The stitch that a bead too many comes before when the thread is worked; none for the last of all. */
function comesBefore(wanted: readonly ThreadBead[], at: number, strungFirst: boolean): number[] {
  // What was strung before it is worked after it.
  const next = strungFirst ? wanted[at - 1] : wanted[at];
  return next ? [next.stitch] : [];
}

/**
 * What is pinned to the stitches so that slips that stay on the thread are mended at the hook: a bead
 * to sew on where the right one is missing, beads to take off where one is too many.
 */
export function notesForSlips(
  notes: readonly StitchNote[],
  slips: readonly Slip[],
  strungFirst: boolean,
): StitchNote[] {
  const all = [...notes];
  const pin = (stitch: number, part: Partial<StitchNote>) => {
    const at = all.findIndex((note) => note.stitch === stitch);
    const now = at === -1 ? { stitch, text: '' } : all[at];
    const extra = part.extra && (now.extra ?? '') + part.extra;
    const next = { ...now, ...part, ...(extra !== undefined && { extra }) };
    if (at === -1) all.push(next);
    else all[at] = next;
  };
  for (const { kind, wanted, got, stitches } of strungFirst ? [...slips].reverse() : slips) {
    if (kind !== 'extra') [...wanted].forEach((letter, n) => pin(stitches[n], { sewOn: letter }));
    // A bead of another colour has to come off as one too many has.
    const off = strungFirst ? [...got].reverse().join('') : got;
    if (off !== '' && stitches.length > 0) pin(Math.min(...stitches), { extra: off });
  }
  return all.sort((one, other) => one.stitch - other.stitch);
}
