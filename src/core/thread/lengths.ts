import { layPanel } from '../panel/lay.js';
import { findSize, sizeOf } from '../beads/palette/sizes.js';
import { rememberedFor } from '../remember.js';
import type { Panel, Pattern, Thread } from '../pattern/pattern.js';
import type { PatternBead } from '../beads/bead.js';
import type { Shape } from '../panel/shape.js';
import { roundOfStitch, stitchesBefore } from '../panel/shape.js';

/** Beads strung at once where the maker says nothing, millimetres (common practice, no source). */
export const usualLengthMm = 1500;
/** Stitches within this angle of 12 o'clock lie at the top, where frame and seam pull. */
const topDegrees = 45;
/** Rounds at the rim in which a join at the top is avoided. */
const rimRounds = 4;

/** One strung thread. */
export interface Length {
  /** 1 for the one that is worked first. */
  readonly number: number;
  /** Stitches of the panel in working order: the first, and the one after the last. */
  readonly fromStitch: number;
  /** The stitch after its last one, 0-based, in working order. */
  readonly toStitch: number;
  /** Letters in working order; the string is the reverse. */
  readonly beads: string;
  /** What the beads take up on the thread, millimetres: an estimate from the bead sizes. */
  readonly strungMm: number;
}

/** Where a new length is joined on. */
export interface Join {
  /** The length that begins here. */
  readonly length: number;
  /** Round (from 1) and place in it (from 0) of its first stitch. */
  readonly round: number;
  /** Place of the stitch in that round, from 0. */
  readonly stitch: number;
  /** Whether the join lies between two rounds. */
  readonly atRoundEnd: boolean;
  /** Where on the bead face, as on a clock: 0 (12 o'clock) up to 12. */
  readonly clock: number;
}

/**
 * Splits the string of a panel into lengths, none with more beads than `thread.lengthBeads` or
 * longer than `thread.lengthMm` (1.5 m where the thread says neither). They end at the ends of
 * rounds where that can be, then at the ends of wedges, of runs of one colour, or anywhere, but
 * not at the top in the outermost rounds while another place will do; with all that they are as
 * few and as even as can be. A length holds one bead at least.
 */
export function panelLengths(
  pattern: Pick<Pattern, 'shape' | 'beads' | 'panels' | 'thread'>,
  panelIndex: number,
): readonly Length[] {
  const panel = pattern.panels[panelIndex];
  const marks = panel.rounds.join('');
  const takes = beadLengths(pattern.beads, pattern.thread);
  const limits = limitsOf(pattern.thread, takes);
  // Copies: who writes into a pattern gets other lengths.
  const from = [marks, [...takes], { ...pattern.shape }, panel.startDegrees, limits] as const;
  return lengthsOf(panel, ...from);
}

/** Charts, lists, amounts and drawings of one panel all ask for the same. */
const lengthsOf = rememberedFor(splitInLengths);

function splitInLengths(
  _panel: Panel,
  marks: string,
  takenMm: readonly (readonly [letter: string, mm: number])[],
  shape: Shape,
  startDegrees: number,
  limits: ReturnType<typeof limitsOf>,
): readonly Length[] {
  const takes = new Map(takenMm);
  /** Beads and millimetres before each stitch. */
  const beads = new Float64Array(marks.length + 1);
  const mm = new Float64Array(marks.length + 1);
  for (let s = 0; s < marks.length; s++) {
    const own = takes.get(marks[s]);
    beads[s + 1] = beads[s] + (own === undefined ? 0 : 1);
    mm[s + 1] = mm[s] + (own ?? 0);
  }
  const fits = (from: number, to: number) =>
    beads[to] - beads[from] <= limits.beads && mm[to] - mm[from] <= limits.mm + 1e-9;
  const cuts = fits(0, marks.length) ? [] : bestCuts(shape, startDegrees, marks, beads, fits);
  const ends = [0, ...cuts, marks.length];
  return ends.slice(1).map((to, n) => {
    const from = ends[n];
    return {
      number: n + 1,
      fromStitch: from,
      toStitch: to,
      beads: Array.from(marks.slice(from, to))
        .filter((mark) => takes.has(mark))
        .join(''),
      strungMm: mm[to] - mm[from],
    };
  });
}

/** Where each length after the first begins. */
export function panelJoins(
  { shape, panels }: Pick<Pattern, 'shape' | 'panels'>,
  panelIndex: number,
  lengths: readonly Length[],
): Join[] {
  const { startDegrees } = panels[panelIndex];
  const { centres } = layPanel(shape, { startDegrees }).geometry;
  return lengths.slice(1).map(({ number, fromStitch }) => {
    const round = roundOfStitch(shape, fromStitch);
    const stitch = fromStitch - stitchesBefore(shape, round);
    const degrees = degreesOf(centres, fromStitch);
    return { length: number, round, stitch, atRoundEnd: stitch === 0, clock: degrees / 30 };
  });
}

/**
 * What one bead of each letter takes up on the thread, millimetres. A length that the maker
 * measured holds for the first bead, which is worked most, and for those as long as it by the table.
 */
export function beadLengths(
  beads: readonly PatternBead[],
  thread?: Pick<Thread, 'beadLengthMm'>,
): Map<string, number> {
  const usual = sizeOf('11/0');
  const lengths = beads.map(({ letter, size, diameterMm }): [string, number] => {
    const known = size === undefined ? undefined : findSize(size);
    // A bead of unknown size is taken to be as flat as the commonest one.
    const flat = diameterMm === undefined ? 1 : diameterMm / usual.diameterMm;
    return [letter, known?.lengthMm ?? usual.lengthMm * flat];
  });
  const measured = thread?.beadLengthMm;
  if (measured === undefined || lengths.length === 0) return new Map(lengths);
  const first = lengths[0][1];
  return new Map(lengths.map(([letter, mm]) => [letter, mm === first ? measured : mm]));
}

function limitsOf(thread: Thread | undefined, takes: ReadonlyMap<string, number>) {
  const said = thread?.lengthBeads !== undefined || thread?.lengthMm !== undefined;
  const mm = thread?.lengthMm ?? (said ? Infinity : usualLengthMm);
  // A length holds one bead at least.
  return { beads: thread?.lengthBeads ?? Infinity, mm: Math.max(mm, ...takes.values()) };
}

/**
 * Dynamic programming over the places where the string may be cut: least penalty, then fewest
 * lengths, then least sum of squares, which is what makes them even.
 */
function bestCuts(
  shape: Shape,
  startDegrees: number,
  marks: string,
  beads: Float64Array,
  fits: (from: number, to: number) => boolean,
): number[] {
  const { centres } = layPanel(shape, { startDegrees }).geometry;
  const places = placesToCut(shape, marks, fits);
  const penalty = places.map((s) =>
    s === marks.length ? 0 : penaltyOf(shape, marks, s, degreesOf(centres, s)),
  );
  const best = places.map(() => ({ penalty: Infinity, lengths: 0, squares: 0, from: -1 }));
  best[0].penalty = 0;
  for (let to = 1; to < places.length; to++) {
    for (let from = to - 1; from >= 0 && fits(places[from], places[to]); from--) {
      const before = best[from];
      if (before.penalty === Infinity) continue;
      const held = beads[places[to]] - beads[places[from]];
      const found = {
        penalty: before.penalty + penalty[to],
        lengths: before.lengths + 1,
        squares: before.squares + held * held,
        from,
      };
      if (isBetter(found, best[to])) best[to] = found;
    }
  }
  const cuts: number[] = [];
  for (let at = best.at(-1)!.from; at > 0; at = best[at].from) cuts.push(places[at]);
  return cuts.reverse();
}

type Found = { penalty: number; lengths: number; squares: number };

function isBetter(one: Found, other: Found): boolean {
  if (one.penalty !== other.penalty) return one.penalty < other.penalty;
  if (one.lengths !== other.lengths) return one.lengths < other.lengths;
  return one.squares < other.squares;
}

/** 0, the ends of wedges (of stitches, where a wedge does not fit on one length) and the end. */
function placesToCut(
  shape: Pick<Shape, 'wedges' | 'rounds'>,
  marks: string,
  fits: (from: number, to: number) => boolean,
): number[] {
  const places = [0];
  for (let r = 1; r <= shape.rounds; r++) {
    for (let k = 0; k < shape.wedges; k++) {
      const from = stitchesBefore(shape, r) + k * r;
      if (!fits(from, from + r)) for (let s = from + 1; s < from + r; s++) places.push(s);
      places.push(from + r);
    }
  }
  return places[places.length - 1] === marks.length ? places : [...places, marks.length];
}

/** How unwelcome a join before stitch s is. */
function penaltyOf(shape: Shape, marks: string, s: number, degrees: number): number {
  const round = roundOfStitch(shape, s);
  const place = s - stitchesBefore(shape, round);
  const last = place === 0 ? round - 1 : round;
  const atTop = Math.min(degrees, 360 - degrees) <= topDegrees;
  const spoilsTop = atTop && last > shape.rounds - rimRounds ? 2 : 0;
  if (place === 0) return spoilsTop;
  if (place % round === 0) return 1 + spoilsTop;
  return (marks[s] === marks[s - 1] ? 4 : 3) + spoilsTop;
}

/** Face angle of a stitch, degrees clockwise from 12 o'clock, 0 up to 360. */
function degreesOf(centres: Float64Array, s: number): number {
  const degrees = (Math.atan2(centres[2 * s], -centres[2 * s + 1]) * 180) / Math.PI;
  return Math.round((degrees < 0 ? degrees + 360 : degrees) * 1e6) / 1e6;
}
