import { roundOfStitch, stitchCount } from '../panel/shape.js';
import type { Pattern } from '../pattern/pattern.js';
import { lettersInWorkingOrder } from '../pattern/stitches.js';
import { panelLengths } from '../thread/lengths.js';
import { beadsOnThread } from './on-thread.js';
import type { PanelProgress } from './progress.js';

type Done = Pick<PanelProgress, 'strung' | 'worked'>;

/**
 * What hands have not done yet: 1 for each stitch of a panel, in working order, that is not worked and
 * whose bead is on no thread. Of a length that is half strung that is its inner part: a thread is
 * strung from its rim end.
 */
export function openStitches(
  pattern: Pattern,
  panel: number,
  { strung, worked }: Done,
): Uint8Array {
  const marks = lettersInWorkingOrder(pattern.panels[panel]);
  const open = new Uint8Array(stitchCount(pattern.shape)).fill(1, worked);
  panelLengths(pattern, panel).forEach((length, n) => {
    const beads = beadsOnThread(marks, length);
    for (const { stitch } of beads.slice(beads.length - (strung[n] ?? 0))) open[stitch] = 0;
  });
  return open;
}

/** The first round, from 1, in which hands have something to do yet; the last one where all is done. */
export function firstOpenRound(pattern: Pattern, panel: number, done: Done): number {
  const first = openStitches(pattern, panel, done).indexOf(1);
  return first < 0 ? pattern.shape.rounds : roundOfStitch(pattern.shape, first);
}
