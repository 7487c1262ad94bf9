import type { Pattern } from '../pattern/pattern.js';
import { panelLengths } from './lengths.js';
import type { Length } from './lengths.js';
import { threadPerStitch } from './per-stitch.js';

/** Thread to have over what the stitches take (common practice, no source). */
export const usualThreadReservePercent = 15;
/** What hangs out at each end of a length, to be woven in (from memory, unchecked). */
export const usualTailMm = 200;

/** What hangs out at each end of a length of this thread, as pages say it: whole centimetres. */
export function tailCmOf(thread: Pattern['thread']): number {
  return Math.max(1, Math.round((thread?.tailMm ?? usualTailMm) / 10));
}

/** Thread in millimetres; an estimate, unless the thread of a stitch was measured. */
export interface ThreadNeed {
  /** Stitches worked: with a bead, bare and not decided ones. */
  readonly stitches: number;
  /** Lengths, each with a tail at both ends: where one is joined on, two tails meet. */
  readonly lengths: number;
  /** What the stitches take. */
  readonly netMm: number;
  /** What is added to that, to be safe. */
  readonly reserveMm: number;
  /** What hangs out at the ends of all lengths. */
  readonly tailsMm: number;
  /** All of them together. */
  readonly totalMm: number;
}

/** The parts of a pattern that say how much thread it takes. */
export type Threaded = Pick<Pattern, 'shape' | 'beads' | 'panels' | 'thread'>;

/** The thread that one length of a panel needs. */
export function lengthThread(
  pattern: Threaded,
  { fromStitch, toStitch }: Pick<Length, 'fromStitch' | 'toStitch'>,
): ThreadNeed {
  return threadFor(pattern, toStitch - fromStitch, 1);
}

/** The thread that one panel needs, in all its lengths. */
export function panelThread(pattern: Threaded, panelIndex: number): ThreadNeed {
  const lengths = panelLengths(pattern, panelIndex);
  return threadFor(pattern, lengths.at(-1)!.toStitch, lengths.length);
}

/** The thread of some stitches in some lengths: stitches, reserve on them, and the tails. */
export function threadFor(pattern: Threaded, stitches: number, lengths: number): ThreadNeed {
  const { reservePercent = usualThreadReservePercent, tailMm = usualTailMm } = pattern.thread ?? {};
  const netMm = stitches * threadPerStitch(pattern).mm;
  const reserveMm = (netMm * reservePercent) / 100;
  const tailsMm = 2 * lengths * tailMm;
  return { stitches, lengths, netMm, reserveMm, tailsMm, totalMm: netMm + reserveMm + tailsMm };
}
