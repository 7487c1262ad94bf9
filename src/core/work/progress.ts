import type { Pattern } from '../pattern/pattern.js';
import { lettersInWorkingOrder } from '../pattern/stitches.js';
import { panelLengths } from '../thread/lengths.js';
import type { Pace } from './round-at-hand.js';
import { stringPlans } from './stringing-steps.js';

/** Something to remember at a stitch. */
export interface StitchNote {
  /** Of the panel, from 0 in working order. */
  readonly stitch: number;
  readonly text: string;
  /** Letter of a bead that is not on the thread, and is to be sewn on when the panel is done. */
  readonly sewOn?: string | undefined;
  /** Letters of beads on the thread before it that have to come off, in the order of working. */
  readonly extra?: string | undefined;
}

/** How far one panel has come. */
export interface PanelProgress {
  /** Beads on the thread of each length. */
  readonly strung: readonly number[];
  /** How many of them were read back and found right. */
  readonly checked: readonly number[];
  /** Stitches worked, in working order. */
  readonly worked: number;
  readonly notes: readonly StitchNote[];
  /** Time that went into it, as far as it was counted. */
  readonly seconds: number;
}

/** Which panel of how many: the pattern's, from 0, and of those made by it the how-manieth, from 1. */
export interface PanelAt {
  readonly panel: number;
  readonly copy: number;
}

/** All that is remembered of the work of hands on one pattern. */
export interface Work {
  /** The pattern as it was when its first bead was strung. */
  readonly pattern: Pattern;
  /** How many of each panel are made. */
  readonly copies: number;
  readonly at: PanelAt;
  /** What is being done at the moment. */
  readonly open?: 'string' | 'crochet' | undefined;
  readonly pace: Pace;
  /** By `keyOf`. */
  readonly panels: Readonly<Record<string, PanelProgress>>;
  /** Whether time is counted. */
  readonly timed?: boolean | undefined;
  /** What an hour of work is worth, in the money of the bead prices. */
  readonly hourly?: number | undefined;
}

export const keyOf = ({ panel, copy }: PanelAt): string => `${panel}:${copy}`;

const nothingDone: PanelProgress = { strung: [], checked: [], worked: 0, notes: [], seconds: 0 };

export function beginWork(pattern: Pattern): Work {
  return { pattern, copies: 1, at: { panel: 0, copy: 1 }, pace: 'run', panels: {} };
}

export const progressOf = (work: Work, at: PanelAt = work.at): PanelProgress =>
  work.panels[keyOf(at)] ?? nothingDone;

/** The work with something else known of the panel at hand. */
export function withProgress(work: Work, part: Partial<PanelProgress>): Work {
  const next = { ...progressOf(work), ...part };
  return { ...work, panels: { ...work.panels, [keyOf(work.at)]: next } };
}

/** One number of a list by length, from 0; those before it that are not known yet are 0. */
export function putAt(list: readonly number[], index: number, value: number): number[] {
  return Array.from({ length: Math.max(list.length, index + 1) }, (_, n) =>
    n === index ? value : (list[n] ?? 0),
  );
}

/** Whether nothing has been strung or worked anywhere. */
export const untouched = ({ panels }: Work): boolean =>
  Object.values(panels).every(
    ({ strung, worked, notes }) =>
      worked === 0 && notes.length === 0 && strung.every((beads) => beads === 0),
  );

/** Whether hands do the same by two patterns, whatever else is said of them. */
export function sameToHands(one: Pattern, other: Pattern): boolean {
  const told = ({ shape, beads, panels, thread }: Pattern) =>
    JSON.stringify([
      shape,
      beads.map(({ letter, id, hex }) => [letter, id, hex]),
      panels.map(({ rounds }) => rounds),
      [thread?.lengthBeads, thread?.lengthMm, thread?.beadLengthMm],
    ]);
  return told(one) === told(other);
}

/**
 * The work gone over to a changed pattern: what is worked stays worked as long as the rounds are the
 * same ones, and a thread counts as strung up to the first bead that is another one now.
 */
export function goneOver(work: Work, pattern: Pattern): Work {
  const sameShape = JSON.stringify(work.pattern.shape) === JSON.stringify(pattern.shape);
  const there = (key: string) => Number(key.split(':')[0]) < pattern.panels.length;
  const entries = Object.entries(work.panels).filter(([key]) => there(key));
  const panels = Object.fromEntries(
    entries.map(([key, progress]) => [
      key,
      sameShape ? overTo(work.pattern, pattern, Number(key.split(':')[0]), progress) : nothingDone,
    ]),
  );
  const at = { ...work.at, panel: Math.min(work.at.panel, pattern.panels.length - 1) };
  return { ...work, pattern, panels, at };
}

function overTo(before: Pattern, after: Pattern, panel: number, progress: PanelProgress) {
  const [old, fresh] = [before, after].map((one) => {
    const ids = new Map(one.beads.map(({ letter, id }) => [letter, id]));
    return stringPlans(one, panel).map(({ beads, length }) => ({
      ids: [...beads].map((letter) => ids.get(letter)!),
      from: length.fromStitch,
      to: length.toStitch,
    }));
  });
  const strung = fresh.map(({ ids, from, to }, n) => {
    const was = old[n];
    const had = progress.strung[n] ?? 0;
    if (to <= progress.worked) return ids.length;
    if (was?.from !== from || was.to !== to) return 0;
    let same = 0;
    while (same < had && ids[same] === was.ids[same]) same++;
    return same;
  });
  const checked = strung.map((beads, n) => Math.min(beads, progress.checked[n] ?? 0));
  return { ...progress, strung, checked };
}

/** How many stitches that are worked already are other beads by a changed pattern. */
export function workedOtherwise(work: Work, pattern: Pattern): number {
  let stitches = 0;
  for (const [key, { worked }] of Object.entries(work.panels)) {
    const panel = Number(key.split(':')[0]);
    const [was, now] = [work.pattern, pattern].map((one) => {
      const ids = new Map(one.beads.map(({ letter, id }) => [letter, id]));
      return [...(one.panels[panel] ? lettersInWorkingOrder(one.panels[panel]) : '')].map(
        (mark) => ids.get(mark) ?? mark,
      );
    });
    for (let s = 0; s < worked; s++) if (was[s] !== now[s]) stitches++;
  }
  return stitches;
}

/** The first length, from 0, of which beads are still to be strung; undefined when all are. */
export function lengthToString(pattern: Pattern, panel: number, progress: PanelProgress) {
  const lengths = panelLengths(pattern, panel);
  const open = lengths.findIndex(({ beads }, n) => (progress.strung[n] ?? 0) < beads.length);
  return open === -1 ? undefined : open;
}
