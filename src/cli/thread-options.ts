import type { Option } from 'commander';
import { RondureError } from '../core/errors.js';
import type { Pattern, Thread } from '../core/pattern/schema.js';
import { usualTailMm, usualThreadReservePercent } from '../core/thread/need.js';
import { en } from '../words/index.js';
import type { Words } from '../words/index.js';
import { decimal, option, shown, whole } from './option-makers.js';
import { length, title } from './values.js';

/** The options of the thread, as commander hands them over. */
export interface ThreadOptions {
  lengthBeads?: number;
  lengthM?: number;
  threadPerStitch?: number;
  threadDiameter?: number;
  threadTex?: number;
  threadName?: string;
  reserve?: number;
  tail?: number;
}

/** The options of every command that writes stringing lists. */
export function threadOptions(words: Words): Option[] {
  const said = words.cli.options;
  const [reserve, tail] = [`${usualThreadReservePercent}`, `${usualTailMm / 10}cm`];
  return [
    shown(whole('--length-beads <COUNT>', said.lengthBeads, 1, 100_000), said.lengthDefault),
    shown(decimal('--length-m <METRES>', said.lengthM, 0.05, 50), said.lengthDefault),
    shown(decimal('--thread-per-stitch <MM>', said.perStitch, 2, 500), said.perStitchDefault),
    shown(decimal('--thread-diameter <MM>', said.threadDiameter, 0.05, 5), said.notKnown),
    shown(decimal('--thread-tex <N>', said.threadTex, 1, 2000), said.notKnown),
    shown(
      option('--thread-name <TEXT>', said.threadName).argParser(title('--thread-name')),
      said.none,
    ),
    shown(decimal('--reserve <PERCENT>', said.threadReserve, 0, 200), reserve),
    shown(option('--tail <LENGTH>', said.tail).argParser(length('--tail')), tail),
  ];
}

/** Refuses options that say two things about the thread, before any work is done. */
export function refuseThreadContradictions(options: ThreadOptions): void {
  if (options.threadDiameter === undefined || options.threadTex === undefined) return;
  throw new RondureError('options-contradict', {
    first: '--thread-diameter',
    second: '--thread-tex',
    why: en.expected.contradictions.thickness,
  });
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
