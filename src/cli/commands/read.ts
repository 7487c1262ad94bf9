import type { Command } from 'commander';
import { bare, undecided } from '../../core/beads/bead.js';
import type { Bead } from '../../core/beads/bead.js';
import { RondureError } from '../../core/errors.js';
import { readBlank } from '../../core/blank/read-blank.js';
import { doubtfulCsv } from '../../core/pages/lists/doubtful.js';
import { checkOutputFree } from '../../node/output/output-folder.js';
import { patternFiles } from '../../node/output/pattern-files.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { readPattern } from '../../node/read/read-pattern.js';
import { readPicture } from '../../node/read/read-picture.js';
import type { Words } from '../../words/index.js';
import { paletteFor } from '../options/palette-for.js';
import { beadNamed } from '../options/bead-named.js';
import type { Io } from '../run/io.js';
import { Progress } from '../said/progress.js';
import { readJson, readText } from '../said/read-summary.js';
import { underGroup } from '../options/described.js';
import { option, shown, whole } from '../options/option-makers.js';
import {
  outputOption,
  printOptions,
  refuseInputTwice,
  refusePrintContradictions,
  writeOptions,
} from '../options/output-options.js';
import type { OutputOptions } from '../options/output-options.js';
import { title } from '../options/values.js';
import { writeSet } from '../run/write-set.js';

interface ReadOptions extends OutputOptions {
  blank?: string;
  beads?: string;
  size?: string;
  colours: number;
  colors?: number;
  unpainted?: string;
  title?: string;
}

/** `read PHOTO`: a blank chart that was coloured by hand becomes a pattern. */
export function addReadCommand(program: Command, words: Words, io: Io): void {
  const said = words.cli.options;
  const own = words.read.options;
  const command = program
    .command('read')
    .description(words.read.about)
    .argument('<PHOTO>', words.read.photo)
    .addHelpText('before', words.read.examples);
  const options = [
    outputOption(words),
    ...underGroup(words, 'files', [
      option('--blank <FILE>', own.blank),
      shown(option('--beads <FILE>', said.beads), said.beadsDefault),
    ]),
    ...underGroup(words, 'shape', [shown(option('--size <SIZE>', said.size), said.sizeDefault)]),
    ...underGroup(words, 'colours', [
      whole('--colours <K>', own.colours, 1, 24).default(8),
      whole('--colors <K>', said.colors, 1, 24),
      shown(option('--unpainted <WHAT>', own.unpainted), own.unpaintedDefault),
    ]),
    ...underGroup(words, 'printing', [
      shown(option('--title <TEXT>', said.title).argParser(title('--title')), own.titleDefault),
    ]),
    ...printOptions(words),
    ...writeOptions(words),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (photo: string) => read(command, photo, words, io));
}

async function read(command: Command, photo: string, words: Words, io: Io): Promise<void> {
  const options = command.opts<ReadOptions>();
  const force = options.force === true;
  const { blank: blankName } = options;
  refusePrintContradictions(options);
  refuseInputTwice('PHOTO', photo, options.beads);
  refuseInputTwice('PHOTO', photo, blankName, '--blank');
  refuseInputTwice('--blank', blankName, options.beads);
  if (blankName === undefined) throw new RondureError('usage', { problem: { kind: 'no-blank' } });
  if (options.output === undefined && !options.dryRun) {
    throw new RondureError('usage', { problem: { kind: 'no-folder' } });
  }
  const folder = options.dryRun ? undefined : options.output!;
  if (folder !== undefined) await checkOutputFree(folder, force);
  const blank = await readPattern(blankName);
  const { beads } = await paletteFor(options);
  const progress = new Progress(io.progress, options.quiet === true || options.json === true);
  try {
    progress.say(words.read.reading);
    const { pattern, report } = readBlank({
      picture: await readPicture(await readBytes(photo), photo),
      pictureName: photo,
      blank,
      title: options.title ?? blank.title,
      beads,
      colours: options.colors ?? options.colours,
      unpainted: unpaintedBead(beads, options.unpainted),
    });
    let files: string[] = [];
    if (folder !== undefined) {
      const say = (step: 'drawing' | 'rendering') => progress.say(words.cli.steps[step]);
      const made = await patternFiles(pattern, words, say);
      if (report.doubts.length > 0) made.set('doubtful.csv', doubtfulCsv(report.doubts));
      await writeSet(folder, made, { force }, io);
      files = [...made.keys()].sort();
    }
    progress.clear();
    const result = { pattern, report, files, folder: folder && options.output };
    if (options.json) io.out(readJson(result));
    else if (!options.quiet) io.out(readText(result, words));
  } finally {
    progress.clear();
  }
}

function unpaintedBead(beads: readonly Bead[], text: string | undefined): number {
  if (text === undefined) return undecided;
  return text.toLowerCase() === 'bare' ? bare : beadNamed(beads, '--unpainted', text);
}
