import type { Command } from 'commander';
import { blankPattern } from '../../core/blank/blank-pattern.js';
import { RondureError, warningSentence } from '../../core/errors.js';
import { defaultSize, sizeOf } from '../../core/beads/palette/sizes.js';
import { stitchCount } from '../../core/panel/shape.js';
import { blankFiles } from '../../node/output/blank-files.js';
import { checkOutputFree } from '../../node/output/output-folder.js';
import type { Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { option, shown } from '../options/option-makers.js';
import {
  outputOption,
  printOptions,
  refusePrintContradictions,
} from '../options/output-options.js';
import { refuseShapeContradictions, shapeOptions, shapeWish } from '../options/shape-options.js';
import type { ShapeOptions } from '../options/shape-options.js';
import { useSwatch } from '../options/swatch-option.js';
import { title } from '../options/values.js';
import { writeSet } from '../run/write-set.js';

interface BlankOptions extends ShapeOptions {
  output?: string;
  title?: string;
  json?: true;
  quiet?: true;
  force?: true;
}

/** `blank`: an empty chart to colour by hand. */
export function addBlankCommand(program: Command, words: Words, io: Io): void {
  const said = words.cli.options;
  const command = program
    .command('blank')
    .description(words.blank.about)
    .addHelpText('before', words.blank.examples);
  const options = [
    outputOption(words),
    ...shapeOptions(words),
    ...underGroup(words, 'printing', [
      shown(
        option('--title <TEXT>', said.title).argParser(title('--title')),
        words.blank.titleDefault,
      ),
      ...printOptions(words),
      shown(option('--force', said.force), said.off),
    ]),
  ];
  for (const one of options) command.addOption(one);
  command.action(async () => blank(command, words, io));
}

async function blank(command: Command, words: Words, io: Io): Promise<void> {
  const swatch = await useSwatch(command);
  const options = command.opts<BlankOptions>();
  const { output } = options;
  refuseShapeContradictions(command);
  refusePrintContradictions(options);
  if (output === undefined) throw new RondureError('usage', { problem: { kind: 'no-folder' } });
  const force = options.force === true;
  await checkOutputFree(output, force);
  const { diameterMm } = sizeOf(options.size ?? defaultSize);
  const made = blankPattern({
    shape: shapeWish(options, diameterMm),
    ...(options.across !== undefined && { acrossMm: options.across }),
    ...(options.start !== undefined && { startDegrees: options.start }),
    title: options.title ?? words.blank.title,
  });
  const pattern = swatch.pattern(made);
  const told = swatch.warnings(made, diameterMm).map((one) => {
    return `${words.cli.summary.warning} ${warningSentence(words, one)}`;
  });
  const { blankPdf } = await import('../../booklet/blank-pdf.js');
  const { files, paper } = await blankFiles(pattern, words, (sheet) => blankPdf(sheet));
  await writeSet(output, files, { force }, io);
  if (options.quiet) return;
  const { wedges, rounds } = pattern.shape;
  const facts = { folder: output, wedges, rounds, stitches: stitchCount(pattern.shape), paper };
  if (!options.json) return io.out([words.blank.made(facts), ...told, ''].join('\n'));
  const summary = { schema: 'rondure-blank', version: 1, title: pattern.title, ...facts };
  io.out(`${JSON.stringify({ ...summary, files: [...files.keys()].sort() }, null, 2)}\n`);
}
