import type { Option } from 'commander';
import { RondureError } from '../core/errors.js';
import { en } from '../words/index.js';
import type { Words } from '../words/index.js';
import { option, shown } from './option-makers.js';

/** The options of every command that writes a folder, as commander hands them over. */
export interface OutputOptions {
  output?: string;
  json?: true;
  quiet?: true;
  force?: true;
  dryRun?: true;
}

/** `-o DIR`, which stands first in help. */
export function outputOption(words: Words): Option {
  return option('-o, --output <DIR>', words.cli.options.output);
}

/** `--json` and `--quiet`: what is printed. */
export function printOptions(words: Words): Option[] {
  const said = words.cli.options;
  return [
    shown(option('--json', said.json), said.off),
    shown(option('--quiet', said.quiet), said.off),
  ];
}

/** `--force` and `--dry-run`: what is written. */
export function writeOptions(words: Words): Option[] {
  const said = words.cli.options;
  return [
    shown(option('--force', said.force), said.off),
    shown(option('--dry-run', said.dryRun), said.off),
  ];
}

/** Refuses printing options that contradict each other. */
export function refusePrintContradictions(options: OutputOptions): void {
  if (options.json && options.quiet) {
    refuse('--json', '--quiet', en.expected.contradictions.printing);
  }
}

/** Refuses output options that contradict each other, and a run without a place to write to. */
export function refuseOutputContradictions(options: OutputOptions, words: Words): void {
  refusePrintContradictions(options);
  if (options.output === undefined && !options.dryRun) {
    throw new RondureError('usage', { problem: words.cli.outputNeeded });
  }
}

/** Refuses two options that would both read standard input. */
export function refuseInputTwice(
  argument: string,
  file: string | undefined,
  other: string | undefined,
  option = '--beads',
): void {
  if (file === '-' && other === '-') {
    refuse(`${argument} -`, `${option} -`, en.expected.contradictions.input);
  }
}

function refuse(first: string, second: string, why: string): never {
  throw new RondureError('options-contradict', { first, second, why });
}
