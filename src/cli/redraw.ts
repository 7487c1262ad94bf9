import { basename, dirname } from 'node:path';
import type { Command } from 'commander';
import { RondureError } from '../core/errors.js';
import { patternReport } from '../core/pattern/report.js';
import type { Words } from '../words/index.js';
import { runFolderCommand } from './folder-command.js';
import type { Io } from './io.js';
import { option } from './option-makers.js';
import { printOptions, refuseOutputContradictions, writeOptions } from './output-options.js';
import type { OutputOptions } from './output-options.js';

/** `redraw PATTERN`: every file of a pattern again, after it was edited by hand. */
export function addRedrawCommand(program: Command, words: Words, io: Io): void {
  const command = program
    .command('redraw')
    .description(words.edits.redraw)
    .argument('<PATTERN>', words.edits.redrawPattern)
    .addHelpText('before', words.edits.redrawExamples);
  command.addOption(option('-o, --output <DIR>', words.edits.redrawOutput));
  for (const one of [...printOptions(words), ...writeOptions(words)]) command.addOption(one);
  command.action(async (file: string) => {
    const options = withFolder(command.opts<OutputOptions>(), file, words);
    refuseOutputContradictions(options, words);
    // Read first: a slip in pattern.json is worth more than what it makes of its folder.
    const { readPattern } = await import('../node/read-pattern.js');
    const pattern = await readPattern(file, words);
    const made = { pattern, report: patternReport(pattern) };
    await runFolderCommand(options, words, io, () => Promise.resolve(made));
  });
}

/**
 * With `--force` and no `-o` the files go where pattern.json lies. A chart could be older than the
 * pattern.json beside it, so that only pattern.json itself may be written over.
 */
function withFolder(options: OutputOptions, file: string, words: Words): OutputOptions {
  if (options.output !== undefined || options.dryRun) return options;
  if (options.force && file !== '-' && basename(file) === 'pattern.json') {
    return { ...options, output: dirname(file) };
  }
  throw new RondureError('usage', { problem: words.edits.redrawNeedsFolder });
}
