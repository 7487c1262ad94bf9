import type { Pattern } from '../../pattern/pattern.js';
import { backwards } from '../../pattern/stitches.js';
import { panelLengths } from '../lengths.js';
import { alignBeads } from './align.js';
import type { Edit } from './align.js';
import { beadStitches, placeOf } from './find-place.js';
import type { StitchPlace } from './find-place.js';

/** What `mendString` compares. */
export interface MendWish {
  /** Letters as they were strung, first bead strung first. */
  readonly strung: string;
  /** 0-based panel and length from 1. */
  readonly panel: number;
  /** Length of thread, from 1. */
  readonly length: number;
  /** true: stringing goes on; what is not strung yet is not missing. */
  readonly soFar?: boolean;
}

/** One repair: some neighbouring beads of one kind of slip, and where it will be worked. */
export interface Repair extends StitchPlace {
  /** What is to be done. */
  readonly kind: Edit['kind'];
  /** Beads concerned (of a swap: 2). */
  readonly count: number;
  /** Beads strung before the slip. */
  readonly after: number;
  /** Letters that the list wants there, and those on the thread; '' where there is none. */
  readonly wanted: string;
  /** Letters that are on the thread there; '' where there is none. */
  readonly got: string;
  /** A run that came out too short or too long: which of the list's, from 1, and both its lengths. */
  readonly run?: { readonly number: number; readonly wanted: number; readonly got: number };
  /** Beads strung after it: what would have to come off to string it anew. */
  readonly comeOff: number;
}

/** What is wrong with a string, and the smallest repair. */
export interface Mending {
  /** Beads of the list (up to where stringing has come) and on the thread. */
  readonly wanted: number;
  /** Beads on the thread. */
  readonly strung: number;
  /** Fewest beads to put in, take out, change, or pairs to swap; undefined when more than can be told. */
  readonly edits: number | undefined;
  /** In stringing order; empty when nothing is wrong or too much is. */
  readonly repairs: readonly Repair[];
  /** Beads that agree from the start, when something is wrong. */
  readonly agreeUpTo: number;
  /** The thread reads much better from its other end: it was perhaps read the wrong way round. */
  readonly betterBackwards: boolean;
}

/** Slips above which a string is another one rather than a wrong one. */
export const mostEdits = 400;

/**
 * Compares what was strung with the stringing list: the fewest beads to put in, take out, change
 * or swap with their neighbour (optimal string alignment distance, a restricted form of F. J.
 * Damerau, Communications of the ACM 7(3):171-176, 1964).
 *
 * The panel and the length must exist.
 */
export function mendString(pattern: Pattern, wish: MendWish): Mending {
  const length = panelLengths(pattern, wish.panel)[wish.length - 1];
  const list = backwards(length.beads);
  const free = wish.soFar ?? false;
  const found = alignBeads(list, wish.strung, { most: mostEdits, freeEnd: free });
  const least = Math.min(found?.edits.length ?? Infinity, mostEdits);
  const other = alignBeads(list, backwards(wish.strung), {
    most: Math.max(1, Math.floor(least / 2)),
    freeEnd: free,
  });
  const agree = agreement(list, wish.strung);
  const stitches = beadStitches(pattern, wish.panel, length);
  const place = (wantedAt: number) => {
    const bead = Math.min(Math.max(0, list.length - 1 - wantedAt), stitches.length - 1);
    return placeOf(pattern, stitches[bead] ?? length.fromStitch);
  };
  return {
    wanted: found?.wanted ?? list.length,
    strung: wish.strung.length,
    edits: found?.edits.length,
    repairs: grouped(found?.edits ?? []).map((repair) => ({
      ...repair.shown,
      ...runOf(list, wish.strung, repair),
      ...place(repair.wantedAt),
      comeOff: wish.strung.length - repair.shown.after,
    })),
    agreeUpTo: agree,
    betterBackwards:
      least > 3 && other !== undefined && other.edits.length * 4 <= least && least > 0,
  };
}

/** Neighbouring edits of one kind as one repair. */
function grouped(edits: readonly Edit[]) {
  const groups: {
    wantedAt: number;
    shown: Omit<Repair, keyof StitchPlace | 'comeOff' | 'run'>;
    next: { wanted: number; got: number };
  }[] = [];
  for (const edit of edits) {
    const last = groups.at(-1);
    const goesOn =
      last &&
      edit.kind !== 'swap' &&
      last.shown.kind === edit.kind &&
      last.next.wanted === edit.wantedAt &&
      last.next.got === edit.gotAt;
    const next = {
      wanted: edit.wantedAt + edit.wanted.length,
      got: edit.gotAt + edit.got.length,
    };
    if (goesOn) {
      const { shown } = last;
      last.shown = {
        ...shown,
        count: shown.count + 1,
        wanted: shown.wanted + edit.wanted,
        got: shown.got + edit.got,
      };
      last.next = next;
      continue;
    }
    const { kind, wanted, got, gotAt, wantedAt } = edit;
    const count = kind === 'swap' ? 2 : 1;
    groups.push({ wantedAt, next, shown: { kind, count, after: gotAt, wanted, got } });
  }
  return groups;
}

/**
 * A run of one colour that is too short or too long, where that is all that is wrong: some of its
 * beads missing or too many, so that no single one of them is the slip.
 */
function runOf(
  list: string,
  strung: string,
  { shown: { kind, wanted, got, after }, wantedAt }: ReturnType<typeof grouped>[number],
): Pick<Repair, 'run'> {
  const letter = (wanted || got)[0];
  if ((kind !== 'missing' && kind !== 'extra') || [...(wanted + got)].some((one) => one !== letter))
    return {};
  // A bead too many stands before the run of its colour or behind it.
  const at = list[wantedAt] === letter ? wantedAt : wantedAt - 1;
  const [inList, onThread] = [stretch(list, at, letter), stretch(strung, after, letter)];
  const count = Math.abs(inList.length - onThread.length);
  if (inList.length === 0 || onThread.length === 0 || count !== (wanted || got).length) return {};
  const number = list.slice(0, inList.from).replace(/(.)\1*/g, '.').length + 1;
  return { run: { number, wanted: inList.length, got: onThread.length } };
}

/** The beads of one colour that stand together at a place, or just before it. */
function stretch(text: string, at: number, letter: string): { from: number; length: number } {
  let from = text[at] === letter ? at : at - 1;
  if (text[from] !== letter) return { from: at, length: 0 };
  let to = from + 1;
  while (from > 0 && text[from - 1] === letter) from--;
  while (text[to] === letter) to++;
  return { from, length: to - from };
}

function agreement(one: string, other: string): number {
  let at = 0;
  while (at < Math.min(one.length, other.length) && one[at] === other[at]) at++;
  return at;
}
