import type { Words } from '../../words/index.js';
import { meetingStitch } from '../geometry/meet.js';
import { panelGeometry } from '../geometry/panel.js';
import type { Pattern } from '../pattern/schema.js';
import { stitchesBefore, stitchesInRound } from '../shape.js';
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
  const { centres } = panelGeometry(shape, { startDegrees: front.startDegrees });
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

/** sewing.txt: how the two panels of a pattern are sewn together, by count. */
export function sewingText(pattern: Pattern, words: Words): string {
  const { shape, panels } = pattern;
  const [front, back] = panels.map(({ name }) => oneLine(name));
  const say = words.sewing;
  const inRim = stitchesInRound(shape, shape.rounds);
  const pairs = sewnPairs(pattern);
  const sum = (pairs[0].front + pairs[0].back) % inRim;
  const names = { front, back };
  const paragraphs = [
    say.lay(names),
    say.count({ ...names, round: shape.rounds, stitches: inRim }),
    sum === 1
      ? say.meet({ ...names, stitches: inRim })
      : say.meetShifted({ ...names, stitch: pairs[0].front, meets: pairs[0].back }),
    say[shape.construction],
    pattern.frame === undefined ? say.opening : say.openingOfFrame,
    say.work,
    say.care,
  ];
  const columns = [
    say.columns(names),
    ...pairs.map((pair) => say.row({ ...pair, backName: back })),
  ];
  return `${[
    say.title(oneLine(pattern.title)),
    ...paragraphs.map((paragraph) => wrapped(paragraph)),
    wrapped(say.table),
    table(columns),
  ].join('\n\n')}\n`;
}

/** Rows in columns, each as wide as its widest cell. */
function table(rows: readonly (readonly string[])[]): string {
  const wide = rows[0].map((_, n) => Math.max(...rows.map((row) => row[n].length)));
  return rows
    .map((row) => `  ${row.map((cell, n) => cell.padEnd(wide[n])).join('   ')}`.trimEnd())
    .join('\n');
}
