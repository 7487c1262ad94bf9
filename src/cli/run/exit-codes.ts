import type { ErrorCode } from '../../core/errors.js';

/** Documented in docs/guide/exit-codes.md: what a script can tell from the exit code. */
export const exitCodes = {
  done: 0,
  bug: 1,
  usage: 2,
  input: 3,
  impossible: 4,
  output: 5,
  interrupted: 130,
} as const;

const usage = new Set<string>([
  'usage',
  'option-value',
  'options-contradict',
  'bead-unknown',
  'bead-kept-and-left-out',
  'polygon-needs-end-increase',
  'swatch-measures-nothing',
  'photo-points-too-few',
  'photo-points-in-line',
  'palette-too-small-to-keep',
  'palette-all-left-out',
  'size-unknown',
  'port-taken',
  'beads-unreadable',
  'beads-too-many',
  'panel-unknown',
  'length-unknown',
  'letter-not-in-pattern',
  'merge-into-itself',
  'swap-already-there',
  'recolour-nothing-left',
  'from-needs-back',
  'no-letter-free',
]);
const impossible = new Set<string>([
  'frame-measure-impossible',
  'frame-out-of-reach',
  'frame-too-wide',
  'frame-rail-too-long',

  'shape-impossible',
  'across-out-of-reach',
  'nothing-to-bead',
  'stock-too-small',
  'lining-impossible',
  'measurement-impossible',
  'photo-lean-impossible',
  'turn-impossible',
  'stock-too-small-for-plain',
]);

/** The one table from error codes to exit codes; what is not named is about the input. */
export function exitCodeFor(code: ErrorCode): number {
  if (usage.has(code)) return exitCodes.usage;
  if (impossible.has(code)) return exitCodes.impossible;
  if (code.startsWith('output-')) return exitCodes.output;
  if (code === 'interrupted') return exitCodes.interrupted;
  return exitCodes.input;
}
