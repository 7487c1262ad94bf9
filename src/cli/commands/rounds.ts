import { basename } from 'node:path';
import type { Bead } from '../../core/beads/bead.js';
import { middleDiameter } from '../../core/beads/palette/fill.js';
import { defaultSize, sizeOf } from '../../core/beads/palette/sizes.js';
import { hexToLab65 } from '../../core/colour/lab.js';
import { patternLike } from '../../core/pattern/like.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { en } from '../../words/index.js';
import type { Command, Option } from 'commander';
import { patternFromRounds } from '../../core/pattern/read/from-rounds.js';
import type { RoundsWish } from '../../core/pattern/read/from-rounds.js';
import { patternReport } from '../../core/pattern/report.js';
import { readRoundList } from '../../core/pages/lists/read-rounds.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { nameIn, textOf } from '../../node/read/read-text.js';
import type { Words } from '../../words/index.js';
import { titleFrom } from '../options/chart-wish.js';
import { runFolderCommand } from '../run/folder-command.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { option, shown } from '../options/option-makers.js';
import {
  contradict,
  outputOption,
  printOptions,
  refuseInputTwice,
  refuseOutputContradictions,
  writeOptions,
} from '../options/output-options.js';
import type { OutputOptions } from '../options/output-options.js';
import { paletteFor } from '../options/palette-for.js';
import { refuseShapeContradictions, shapeOptions, shapeWish } from '../options/shape-options.js';
import type { ShapeOptions } from '../options/shape-options.js';
import { useSwatch } from '../options/swatch-option.js';
import { threadOptions } from '../options/thread-options.js';
import type { ThreadOptions } from '../options/thread-options.js';
import { title } from '../options/values.js';

/** Options of `rounds`: of the shape, only what was given goes before what the list says. */
interface RoundsOptions extends OutputOptions, Partial<ShapeOptions>, ThreadOptions {
  beads?: string;
  like?: string;
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
    ...underGroup(words, 'files', [
      shown(option('--beads <FILE>', said.roundsBeads), said.roundsBeadsDefault),
      shown(option('--like <PATTERN>', said.like), words.cli.options.none),
    ]),
    ...listShapeOptions(words),
    ...underGroup(words, 'printing', [
      shown(
        option('--title <TEXT>', words.cli.options.title).argParser(title('--title')),
        said.roundsTitleDefault,
      ),
    ]),
    ...threadOptions(words),
    ...printOptions(words),
    ...writeOptions(words),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string) => {
    const swatch = await useSwatch(command);
    const given = command.opts<RoundsOptions>();
    refuseInputTwice('FILE', file, given.beads);
    refuseInputTwice('FILE', file, given.like, '--like');
    refuseBesideLike(command);
    refuseShapeContradictions(command);
    refuseOutputContradictions(given);
    await runFolderCommand(given, words, io, async () => {
      const where = nameIn(file);
      const list = readRoundList(textOf(await readBytes(file), file), where);
      const like = given.like === undefined ? undefined : await readLike(given.like);
      const palette = like && !given.beads ? paletteOf(like) : await paletteFor(given);
      const wish: RoundsWish = {
        list,
        where,
        title: file === '-' ? words.cli.untitled : titleFrom(basename(file)) || words.cli.untitled,
        beads: palette.beads,
        inOrder: given.beads !== undefined,
        shape: { ...like?.shape, ...shapeWish(given, palette.diameterMm) },
        ...(given.start !== undefined && { startDegrees: given.start }),
      };
      const made = patternFromRounds(wish, words);
      const own = like ? patternLike(made.pattern, like) : made.pattern;
      const titled = { ...own, ...(given.title && { title: given.title }) };
      const pattern = swatch.pattern(titled);
      const report = patternReport(pattern);
      const notes = given.beads === undefined ? [] : palette.notes;
      const about = swatch.warnings(titled, given.beads ? palette.diameterMm : undefined);
      report.warnings.unshift(...notes, ...made.warnings, ...about);
      return { pattern, report };
    });
  });
}

/** The pattern that a list was printed from. */
async function readLike(file: string): Promise<Pattern> {
  const { readPattern } = await import('../../node/read/read-pattern.js');
  return readPattern(file);
}

/** Its own beads, as a palette. */
function paletteOf({ beads: own }: Pattern) {
  const beads = own.map(({ letter: _letter, ...bead }): Bead => {
    return { ...bead, lab: hexToLab65(bead.hex), filled: [] };
  });
  return { beads, diameterMm: middleDiameter(beads) ?? sizeOf(defaultSize).diameterMm, notes: [] };
}

/** The way of working is that of the pattern that the list is like. */
function refuseBesideLike(command: Command): void {
  if (command.getOptionValueSource('like') !== 'cli') return;
  for (const { attributeName, long } of listShapeOptions(en).map((one) => ({
    attributeName: one.attributeName(),
    long: one.long!,
  }))) {
    if (command.getOptionValueSource(attributeName) !== 'cli') continue;
    contradict('--like', long, 'shape-of-like');
  }
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
