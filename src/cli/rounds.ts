import { basename } from 'node:path';
import type { Command, Option } from 'commander';
import { patternFromRounds } from '../core/pattern-from-rounds.js';
import type { RoundsWish } from '../core/pattern-from-rounds.js';
import { patternReport } from '../core/pattern/report.js';
import { readRoundList } from '../core/texts/read-rounds.js';
import { readBytes } from '../node/read-bytes.js';
import { nameIn, textOf } from '../node/read-text.js';
import type { Words } from '../words/index.js';
import { titleFrom } from './chart-wish.js';
import { runFolderCommand } from './folder-command.js';
import type { Io } from './io.js';
import { option, shown } from './option-makers.js';
import {
  outputOption,
  printOptions,
  refuseInputTwice,
  refuseOutputContradictions,
  writeOptions,
} from './output-options.js';
import type { OutputOptions } from './output-options.js';
import { paletteFor } from './palette-for.js';
import { refuseShapeContradictions, shapeOptions, shapeWish } from './shape-options.js';
import type { ShapeOptions } from './shape-options.js';
import { useSwatch } from './swatch-option.js';
import { threadOptions } from './thread-options.js';
import type { ThreadOptions } from './thread-options.js';
import { title } from './values.js';

/** Options of `rounds`: of the shape, only what was given goes before what the list says. */
interface RoundsOptions extends OutputOptions, Partial<ShapeOptions>, ThreadOptions {
  beads?: string;
  title?: string;
}

/** `rounds FILE`: a pattern from a list of rounds that somebody typed or edited. */
export function addRoundsCommand(program: Command, words: Words, io: Io): void {
  const command = program
    .command('rounds')
    .description(words.edits.rounds)
    .argument('<FILE>', words.edits.roundsFile)
    .addHelpText('before', words.edits.roundsExamples);
  const said = words.edits;
  const options = [
    outputOption(words),
    shown(option('--beads <FILE>', said.roundsBeads), said.roundsBeadsDefault),
    ...listShapeOptions(words),
    shown(
      option('--title <TEXT>', words.cli.options.title).argParser(title('--title')),
      said.roundsTitleDefault,
    ),
    ...threadOptions(words),
    ...printOptions(words),
    ...writeOptions(words),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string) => {
    const swatch = await useSwatch(command, words);
    const given = command.opts<RoundsOptions>();
    refuseInputTwice('FILE', file, given.beads);
    refuseShapeContradictions(command);
    refuseOutputContradictions(given, words);
    await runFolderCommand(given, words, io, async () => {
      const where = nameIn(file);
      const list = readRoundList(textOf(await readBytes(file), file), where);
      const palette = await paletteFor(given);
      const wish: RoundsWish = {
        list,
        where,
        title: file === '-' ? words.cli.untitled : titleFrom(basename(file)) || words.cli.untitled,
        beads: palette.beads,
        inOrder: given.beads !== undefined,
        shape: shapeWish(given, palette.diameterMm),
        ...(given.start !== undefined && { startDegrees: given.start }),
      };
      const made = patternFromRounds(wish, words);
      const titled = { ...made.pattern, ...(given.title && { title: given.title }) };
      const pattern = swatch.pattern(titled);
      const report = patternReport(pattern);
      const notes = given.beads === undefined ? [] : palette.notes;
      const about = swatch.warnings(titled, given.beads ? palette.diameterMm : undefined);
      report.warnings.unshift(...notes, ...made.warnings, ...about);
      return { pattern, report };
    });
  });
}

/** The shape options of `chart` without its size; what a list can tell has no default of its own. */
function listShapeOptions(words: Words): Option[] {
  const said = words.edits;
  return shapeOptions(words)
    .filter(({ long }) => long !== '--rounds' && long !== '--across')
    .map((one) => {
      if (one.long === '--wedges' || one.long === '--increase') return shown(one, said.fromList);
      if (one.defaultValue === undefined) return one;
      return shown(one, said.fromListElse(String(one.defaultValue)));
    });
}
