import type { Option } from 'commander';
import type { Pattern } from '../core/pattern/schema.js';
import type { Words } from '../words/index.js';
import { decimal, shown, whole } from './option-makers.js';

/** The options of the thread, as commander hands them over. */
export interface ThreadOptions {
  lengthBeads?: number;
  lengthM?: number;
}

/** The options of every command that writes stringing lists. */
export function threadOptions(words: Words): Option[] {
  const said = words.cli.options;
  return [
    shown(whole('--length-beads <COUNT>', said.lengthBeads, 1, 100_000), said.lengthDefault),
    shown(decimal('--length-m <METRES>', said.lengthM, 0.05, 50), said.lengthDefault),
  ];
}

/** The pattern with what the options say of its thread; without them as it was. */
export function withThread(pattern: Pattern, options: ThreadOptions): Pattern {
  const { lengthBeads, lengthM } = options;
  if (lengthBeads === undefined && lengthM === undefined) return pattern;
  const { lengthBeads: _beads, lengthMm: _mm, ...kept } = pattern.thread ?? {};
  const lengths = {
    ...(lengthBeads !== undefined && { lengthBeads }),
    ...(lengthM !== undefined && { lengthMm: Math.round(lengthM * 1e6) / 1000 }),
  };
  return { ...pattern, thread: { ...kept, ...lengths } };
}
