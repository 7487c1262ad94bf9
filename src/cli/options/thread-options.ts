import type { Option } from 'commander';
import type { Pattern, Thread } from '../../core/pattern/pattern.js';
import { threadLimits } from '../../core/thread/limits.js';
import { usualTailMm, usualThreadReservePercent } from '../../core/thread/need.js';
import type { Words } from '../../words/index.js';
import { decimal, inGroup, line, optionsOf, size, whole } from './described.js';
import type { ValuesOf } from './described.js';
import { contradict } from './output-options.js';

/** The options of every command that writes stringing lists, in the order of help. */
export const threadTable = inGroup('thread', {
  lengthBeads: whole('--length-beads <COUNT>', threadLimits.lengthBeads, { said: 'lengthDefault' }),
  lengthM: decimal('--length-m <METRES>', threadLimits.lengthM, { said: 'lengthDefault' }),
  threadPerStitch: decimal('--thread-per-stitch <MM>', threadLimits.perStitchMm, {
    said: 'perStitchDefault',
  }),
  threadDiameter: decimal('--thread-diameter <MM>', threadLimits.diameterMm, { said: 'notKnown' }),
  threadTex: decimal('--thread-tex <N>', threadLimits.tex, { said: 'notKnown' }),
  threadName: line('--thread-name <TEXT>', { said: 'none' }),
  reserve: decimal('--reserve <PERCENT>', threadLimits.reservePercent, {
    said: () => `${usualThreadReservePercent}`,
  }),
  tail: size('--tail <LENGTH>', { said: () => `${usualTailMm / 10}cm` }),
  spoolM: decimal('--spool-m <METRES>', threadLimits.spoolM, { said: 'notKnown' }),
  spoolPrice: decimal('--spool-price <PRICE>', threadLimits.spoolPrice, { said: 'notKnown' }),
  hook: decimal('--hook <MM>', threadLimits.hookMm, { said: 'hookDefault' }),
});

/** The values of the options of the thread. */
export interface ThreadOptions extends ValuesOf<typeof threadTable> {}

/** The options of every command that writes stringing lists. */
export const threadOptions = (words: Words): Option[] => optionsOf(threadTable, words);

/** Refuses options that say two things about the thread, before any work is done. */
export function refuseThreadContradictions(options: ThreadOptions): void {
  if (options.threadDiameter === undefined || options.threadTex === undefined) return;
  contradict('--thread-diameter', '--thread-tex', 'thickness');
}

/** The pattern with what the options say of its thread; without them as it was. */
export function withThread(pattern: Pattern, options: ThreadOptions): Pattern {
  const { lengthBeads, lengthM, threadDiameter, threadTex, threadPerStitch, threadName } = options;
  const given: Thread = {
    ...(lengthBeads !== undefined && { lengthBeads }),
    ...(lengthM !== undefined && { lengthMm: Math.round(lengthM * 1e6) / 1000 }),
    ...(threadName !== undefined && { name: threadName }),
    ...(threadDiameter !== undefined && { diameterMm: threadDiameter }),
    ...(threadTex !== undefined && { tex: threadTex }),
    ...(threadPerStitch !== undefined && { perStitchMm: threadPerStitch }),
    ...(options.reserve !== undefined && { reservePercent: options.reserve }),
    ...(options.tail !== undefined && { tailMm: Math.round(options.tail * 1000) / 1000 }),
    ...(options.spoolM !== undefined && { spoolMm: Math.round(options.spoolM * 1e6) / 1000 }),
    ...(options.spoolPrice !== undefined && { spoolPrice: options.spoolPrice }),
    ...(options.hook !== undefined && { hookMm: options.hook }),
  };
  if (Object.keys(given).length === 0) return pattern;
  const kept = { ...pattern.thread };
  // One question, one answer: a new limit or thickness replaces an older one of the other kind.
  if (lengthBeads !== undefined || lengthM !== undefined) {
    delete kept.lengthBeads;
    delete kept.lengthMm;
  }
  if (threadDiameter !== undefined || threadTex !== undefined) {
    delete kept.diameterMm;
    delete kept.tex;
  }
  return { ...pattern, thread: { ...kept, ...given } };
}
