import type { Words } from '../../../words/index.js';
import { framePlans } from '../../purse/frame/plan.js';
import type { StitchRun } from '../../purse/frame/stretch.js';
import { meetingStitch } from '../../panel/meet.js';
import { layPanel } from '../../panel/lay.js';
import type { Frame } from '../../purse/frame/measures.js';
import type { Pattern } from '../../pattern/pattern.js';
import { stitchesBefore, stitchesInRound } from '../../panel/shape.js';
import { oneLine, wrapped } from './lines.js';

/** Two stitches of the last rounds that lie over one another; both from 1. */
export interface SewnPair {
  /** Where it is, as on a clock, on each bead face: 1 to 12. */
  readonly frontHour: number;
  readonly backHour: number;
  readonly front: number;
  readonly back: number;
}

/** The stitches of the front that lie nearest to each hour, from 12 on, and those they meet. */
export function sewnPairs({ shape, panels }: Pick<Pattern, 'shape' | 'panels'>): SewnPair[] {
  const [front, back] = panels;
  const { centres } = layPanel(shape, { startDegrees: front.startDegrees }).geometry;
  const first = stitchesBefore(shape, shape.rounds);
  const inRim = stitchesInRound(shape, shape.rounds);
  const starts = { front: front.startDegrees, back: back.startDegrees };
  return Array.from({ length: 12 }, (_, hour) => {
    // Unit vector of the hour, x right and y down.
    const [x, y] = [Math.sin((hour * Math.PI) / 6), -Math.cos((hour * Math.PI) / 6)];
    let [nearest, most] = [0, -Infinity];
    for (let i = 0; i < inRim; i++) {
      const [atX, atY] = centres.subarray(2 * (first + i), 2 * (first + i) + 2);
      const along = (x * atX + y * atY) / Math.hypot(atX, atY);
      if (along > most + 1e-9) [nearest, most] = [i, along];
    }
    return {
      frontHour: hour === 0 ? 12 : hour,
      backHour: 12 - hour,
      front: nearest + 1,
      back: meetingStitch(shape, starts, nearest) + 1,
    };
  });
}

/** What of the rims a frame holds, and the first and last pair of stitches that are sewn. */
export interface SeamBesideFrame {
  /** Stitches in the frame, from 1. */
  readonly frontInFrame: readonly StitchRun[];
  readonly backInFrame: readonly StitchRun[];
  /** Stitches that meet, from 1; undefined where the frame leaves nothing to sew. */
  readonly first: { readonly front: number; readonly back: number } | undefined;
  readonly last: { readonly front: number; readonly back: number } | undefined;
  readonly pairs: number;
  /** Pairs of which only one stitch lies in the frame. */
  readonly halves: number;
}

/**
 * The seam of two panels in a frame: the stitches of which neither lies in it. In a spiral the two
 * stretches may differ by a stitch.
 *
 * @throws RondureError those of `planFrame`
 */
export function seamBeside(
  { shape, panels }: Pick<Pattern, 'shape' | 'panels'>,
  frame: Frame,
): SeamBesideFrame {
  const plans = framePlans({ frame, shape, panels });
  const [front, back] = plans.map(
    ({ seam }) => new Set(seam.runs.flatMap(({ from, to }) => numbers(from - 1, to))),
  );
  const inRim = stitchesInRound(shape, shape.rounds);
  const starts = { front: panels[0].startDegrees, back: panels[1].startDegrees };
  const sewn = numbers(0, inRim).map(
    (i) => front.has(i) && back.has(meetingStitch(shape, starts, i)),
  );
  const pair = (i: number) =>
    i < 0 ? undefined : { front: i + 1, back: meetingStitch(shape, starts, i) + 1 };
  return {
    frontInFrame: plans[0].framed[0].runs,
    backInFrame: plans[1].framed[0].runs,
    first: pair(sewn.findIndex((is, i) => is && !sewn[(i + inRim - 1) % inRim])),
    last: pair(sewn.findIndex((is, i) => is && !sewn[(i + 1) % inRim])),
    pairs: sewn.filter((is) => is).length,
    halves: numbers(0, inRim).filter(
      (i) => front.has(i) !== back.has(meetingStitch(shape, starts, i)),
    ).length,
  };
}

/** Whole numbers from one up to, and without, another. */
function numbers(from: number, to: number): number[] {
  return Array.from({ length: to - from }, (_, n) => from + n);
}

/**
 * How the two panels of a pattern are sewn together, by count: paragraphs, the cautions last. In a
 * booklet the cautions, what lies in the frame and what is common practice stand elsewhere.
 */
export function sewingParagraphs(
  pattern: Pattern,
  words: Words,
  { booklet = false } = {},
): string[] {
  const { shape, panels } = pattern;
  const [front, back] = panels.map(({ name }) => oneLine(name));
  const say = words.sewing;
  const inRim = stitchesInRound(shape, shape.rounds);
  const [first] = sewnPairs(pattern);
  const sum = (first.front + first.back) % inRim;
  const names = { front, back };
  return [
    say.lay(names),
    say.count({ ...names, round: shape.rounds, stitches: inRim }),
    sum === 1
      ? say.meet({ ...names, stitches: inRim })
      : say.meetShifted({ ...names, stitch: first.front, meets: first.back }),
    say[shape.construction],
    pattern.frame === undefined
      ? say.opening({ marked: !booklet })
      : say.openingOfFrame({ ...names, ...seamBeside(pattern, pattern.frame), told: booklet }),
    say.work,
    ...(booklet ? [] : [say.care(pattern.frame?.fixing)]),
  ];
}

/** Hours of the front between which the rim stays open where no frame is known: 45 % of it. */
const usualOpening = { from: 9.3, to: 2.7 };

/** The pairs of `sewnPairs` that the seam takes: those that lie in the frame stay open. */
function pinnedPairs(pattern: Pattern): SewnPair[] {
  const pairs = sewnPairs(pattern);
  if (pattern.frame === undefined) {
    const { from, to } = usualOpening;
    return pairs.filter(({ frontHour }) => frontHour > to && frontHour < from);
  }
  const { frontInFrame, backInFrame } = seamBeside(pattern, pattern.frame);
  const within = (runs: readonly StitchRun[], stitch: number) =>
    runs.some(({ from, to }) => from <= stitch && stitch <= to);
  return pairs.filter(
    ({ front, back }) => !within(frontInFrame, front) && !within(backInFrame, back),
  );
}

/** The table of stitches that meet and are sewn together, its head first. */
export function sewingTable(pattern: Pattern, words: Words): string[][] {
  const [front, back] = pattern.panels.map(({ name }) => oneLine(name));
  const say = words.sewing;
  return [
    say.columns({ front, back }),
    ...pinnedPairs(pattern).map((pair) => say.row({ ...pair, backName: back })),
  ];
}

/** How the rim of a panel is spread over the frame, or by how much it is usually longer. */
export function frameSpread(pattern: Pattern, words: Words): string {
  const { frame, shape, panels } = pattern;
  if (frame === undefined) return words.booklet.making.frameEase;
  const [{ stitches, railMm, holes, gatherPercent }] = framePlans({ frame, shape, panels });
  return words.frame.spread({
    stitches,
    railMm,
    holes: holes && { perSpace: stitches / holes.spaces, spacingMm: holes.spacingMm },
    longerPercent: gatherPercent,
  });
}

/** sewing.txt: how the two panels of a pattern are sewn together, by count. */
export function sewingText(pattern: Pattern, words: Words): string {
  const say = words.sewing;
  return `${[
    say.title(oneLine(pattern.title)),
    ...sewingParagraphs(pattern, words).map((paragraph) => wrapped(paragraph)),
    wrapped(say.table),
    table(sewingTable(pattern, words)),
    ...(pattern.frame === undefined
      ? []
      : [`${words.booklet.making.frameText} ${frameSpread(pattern, words)}`].map((text) =>
          wrapped(text),
        )),
  ].join('\n\n')}\n`;
}

/** Rows in columns, each as wide as its widest cell. */
function table(rows: readonly (readonly string[])[]): string {
  const wide = rows[0].map((_, n) => Math.max(...rows.map((row) => row[n].length)));
  return rows
    .map((row) => `  ${row.map((cell, n) => cell.padEnd(wide[n])).join('   ')}`.trimEnd())
    .join('\n');
}
