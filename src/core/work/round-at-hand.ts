import { isBead } from '../pattern/marks.js';
import { pairStart } from '../panel/links.js';
import { roundOfStitch, stitchCount, stitchesBefore, stitchesInRound } from '../panel/shape.js';
import type { Shape } from '../panel/shape.js';
import type { Length } from '../thread/lengths.js';

/** How much is worked from one tap to the next. */
export type Pace = 'stitch' | 'run' | 'wedge';

/** Some stitches that are worked in one go. */
export interface WorkStep {
  /** Stitches of the panel in working order: the first, and the one after the last. */
  readonly from: number;
  readonly to: number;
  /** All from 1. */
  readonly round: number;
  readonly wedge: number;
  readonly parts: readonly WorkPart[];
}

/** Equal stitches of a step, or the two that are worked into one stitch of the round below. */
export interface WorkPart {
  readonly from: number;
  /** Letters, `.` for bare; one a stitch. */
  readonly marks: string;
  /** An increase: both stitches go into one. */
  readonly pair: boolean;
}

type Wedged = Pick<Shape, 'wedges' | 'rounds' | 'increase'>;

/**
 * What is to be worked when so many stitches are; undefined when the panel is done. A step never
 * goes beyond its wedge, and never parts an increase except stitch by stitch.
 *
 * @param marks of the whole panel, in working order
 */
export function workStep(
  shape: Wedged,
  marks: string,
  worked: number,
  pace: Pace,
): WorkStep | undefined {
  if (worked >= stitchCount(shape)) return undefined;
  const round = roundOfStitch(shape, worked);
  const place = worked - stitchesBefore(shape, round);
  const wedge = Math.floor(place / round);
  const wedgeFrom = stitchesBefore(shape, round) + wedge * round;
  const parts = partsOf(marks, wedgeFrom, round, pairStart(shape, round)).flatMap((part) =>
    restOf(part, worked),
  );
  const taken =
    pace === 'wedge'
      ? parts
      : pace === 'run'
        ? parts.slice(0, 1)
        : [{ ...parts[0], marks: parts[0].marks[0] }];
  const last = taken[taken.length - 1];
  return {
    from: worked,
    to: last.from + last.marks.length,
    round,
    wedge: wedge + 1,
    parts: taken,
  };
}

/** Stitches that were worked before the step that led to where the work stands. */
export function workedBefore(shape: Wedged, marks: string, worked: number, pace: Pace): number {
  if (worked <= 0) return 0;
  if (pace === 'stitch') return worked - 1;
  const round = roundOfStitch(shape, worked - 1);
  const place = worked - 1 - stitchesBefore(shape, round);
  const wedgeFrom = worked - 1 - (place % round);
  if (pace === 'wedge') return wedgeFrom;
  const parts = partsOf(marks, wedgeFrom, round, pairStart(shape, round));
  return parts.filter(({ from }) => from < worked).at(-1)!.from;
}

/** The parts of one wedge of a round. */
function partsOf(marks: string, from: number, round: number, pairAt: number | undefined) {
  const parts: WorkPart[] = [];
  for (let j = 0; j < round;) {
    if (j === pairAt) {
      parts.push({ from: from + j, marks: marks.slice(from + j, from + j + 2), pair: true });
      j += 2;
      continue;
    }
    const stop = pairAt !== undefined && j < pairAt ? pairAt : round;
    let end = j + 1;
    while (end < stop && marks[from + end] === marks[from + j]) end++;
    parts.push({ from: from + j, marks: marks.slice(from + j, from + end), pair: false });
    j = end;
  }
  return parts;
}

function restOf(part: WorkPart, worked: number): WorkPart[] {
  const done = worked - part.from;
  if (done <= 0) return [part];
  if (done >= part.marks.length) return [];
  return [{ from: worked, marks: part.marks.slice(done), pair: part.pair }];
}

/** What is told where the work stands, before it goes on. */
export interface Cues {
  /** The round that was just finished. */
  readonly roundDone:
    | {
        readonly round: number;
        readonly stitches: number;
        readonly beads: number;
        /** Beads worked in all. */
        readonly beadsInAll: number;
      }
    | undefined;
  /** The length that is joined on here. */
  readonly join: number | undefined;
  readonly begins: boolean;
  readonly done: boolean;
}

export function cuesAt(
  shape: Wedged,
  marks: string,
  lengths: readonly Pick<Length, 'number' | 'fromStitch'>[],
  worked: number,
): Cues {
  const count = stitchCount(shape);
  const before = worked === 0 ? 0 : roundOfStitch(shape, worked - 1);
  const ends = worked > 0 && worked === stitchesBefore(shape, before + 1);
  const first = stitchesBefore(shape, before);
  return {
    roundDone: ends
      ? {
          round: before,
          stitches: stitchesInRound(shape, before),
          beads: beadsIn(marks.slice(first, worked)),
          beadsInAll: beadsIn(marks.slice(0, worked)),
        }
      : undefined,
    join: lengths.find(({ number, fromStitch }) => number > 1 && fromStitch === worked)?.number,
    begins: worked === 0,
    done: worked >= count,
  };
}

const beadsIn = (marks: string): number => [...marks].filter(isBead).length;

/** The length, from 0, that a stitch is worked from; -1 when the panel is done. */
export function lengthIndexAt(
  lengths: readonly Pick<Length, 'fromStitch' | 'toStitch'>[],
  stitch: number,
): number {
  return lengths.findIndex(({ fromStitch, toStitch }) => stitch >= fromStitch && stitch < toStitch);
}
