import type { Command } from 'commander';
import { patternReport } from '../../core/pattern/report.js';
import type { Words } from '../../words/index.js';
import { bookletOptions } from '../options/booklet-option.js';
import type { BookletOptions } from '../options/booklet-option.js';
import { runFolderCommand } from '../run/folder-command.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { option } from '../options/option-makers.js';
import {
  printOptions,
  refuseOutputContradictions,
  writeOptions,
} from '../options/output-options.js';
import type { OutputOptions } from '../options/output-options.js';
import { withFolder } from '../run/pattern-folder.js';
import { swatchOption, useSwatchLate } from '../options/swatch-option.js';
import { threadOptions } from '../options/thread-options.js';
import type { ThreadOptions } from '../options/thread-options.js';

/** `redraw PATTERN`: every file of a pattern again, after it was edited by hand. */
export function addRedrawCommand(program: Command, words: Words, io: Io): void {
  const command = program
    .command('redraw')
    .description(words.edits.redraw)
    .argument('<PATTERN>', words.edits.redrawPattern)
    .addHelpText('before', words.edits.redrawExamples);
  const options = [
    ...underGroup(words, 'files', [option('-o, --output <DIR>', words.edits.redrawOutput)]),
    ...swatchOption(words),
    ...threadOptions(words),
    ...bookletOptions(words),
    ...printOptions(words),
    ...writeOptions(words),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string) => {
    const options = withFolder(
      command.opts<OutputOptions & ThreadOptions & BookletOptions>(),
      file,
    );
    refuseOutputContradictions(options);
    // Read first: a slip in pattern.json is worth more than what it makes of its folder.
    const { readPattern } = await import('../../node/read/read-pattern.js');
    const read = await readPattern(file);
    const swatch = await useSwatchLate(command);
    const pattern = swatch.pattern(read);
    const report = patternReport(pattern);
    report.warnings.unshift(...swatch.warnings(pattern));
    const made = { pattern, report };
    await runFolderCommand(options, words, io, () => Promise.resolve(made));
  });
}
