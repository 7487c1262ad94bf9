import type { Option } from 'commander';
import { RondureError } from '../../core/errors.js';
import type { Contradiction } from '../../words/en/expected.js';
import type { Words } from '../../words/index.js';
import { flag, inGroup, optionsOf, text } from './described.js';
import type { ValuesOf } from './described.js';

/** `-o DIR`, which stands first in help. */
export const outputTable = inGroup('files', {
  output: text('-o, --output <DIR>'),
});

/** `--json` and `--quiet`: what is printed. */
export const printTable = inGroup('printing', {
  json: flag('--json'),
  quiet: flag('--quiet'),
});

/** `--force` and `--dry-run`: what is written. */
export const writeTable = inGroup('printing', {
  force: flag('--force'),
  dryRun: flag('--dry-run'),
});

/** The values of the options of every command that writes a folder. */
export interface OutputOptions
  extends ValuesOf<typeof outputTable>, ValuesOf<typeof printTable>, ValuesOf<typeof writeTable> {}

/** `-o DIR` for commander. */
export const outputOption = (words: Words): Option => optionsOf(outputTable, words)[0];
/** What is printed, for commander. */
export const printOptions = (words: Words): Option[] => optionsOf(printTable, words);
/** What is written, for commander. */
export const writeOptions = (words: Words): Option[] => optionsOf(writeTable, words);

/** Refuses printing options that contradict each other. */
export function refusePrintContradictions(options: OutputOptions): void {
  if (options.json && options.quiet) contradict('--json', '--quiet', 'printing');
}

/** Refuses output options that contradict each other, and a run without a place to write to. */
export function refuseOutputContradictions(options: OutputOptions): void {
  refusePrintContradictions(options);
  if (options.output === undefined && !options.dryRun) {
    throw new RondureError('usage', { problem: { kind: 'no-pattern-folder' } });
  }
}

/** Refuses two options that would both read standard input. */
export function refuseInputTwice(
  argument: string,
  file: string | undefined,
  other: string | undefined,
  option = '--beads',
): void {
  if (file === '-' && other === '-') contradict(`${argument} -`, `${option} -`, 'input');
}

/** Refuses two options that cannot stand together. */
export function contradict(first: string, second: string, why: Contradiction): never {
  throw new RondureError('options-contradict', { first, second, why });
}
