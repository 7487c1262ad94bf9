import { Option } from 'commander';
import type { Command } from 'commander';
import { bare, undecided } from '../core/bead.js';
import type { Bead } from '../core/bead.js';
import { RondureError } from '../core/errors.js';
import { readBlank } from '../core/reading/read-blank.js';
import { doubtfulCsv } from '../core/texts/doubtful.js';
import { checkOutputFree, writeFolder } from '../node/output-folder.js';
import { patternFiles } from '../node/pattern-files.js';
import { readBytes } from '../node/read-bytes.js';
import { readPattern } from '../node/read-pattern.js';
import { readPicture } from '../node/read-picture.js';
import type { Words } from '../words/index.js';
import { paletteFor } from './palette-for.js';
import { beadNamed } from './chart-wish.js';
import type { Io } from './io.js';
import { Progress } from './progress.js';
import { readJson, readText } from './read-summary.js';
import { title, wholeNumber } from './values.js';

interface ReadOptions {
  output?: string;
  blank?: string;
  beads?: string;
  size?: string;
  colours: number;
  colors?: number;
  unpainted?: string;
  title?: string;
  json?: true;
  quiet?: true;
  force?: true;
  dryRun?: true;
}

/** `read PHOTO`: a blank chart that was coloured by hand becomes a pattern. */
export function addReadCommand(program: Command, words: Words, io: Io): void {
  const said = words.cli.options;
  const own = words.read.options;
  const add = (flags: string, text: string) => new Option(flags, text);
  const shown = (option: Option, text: string) => option.default(undefined, text);
  const command = program
    .command('read')
    .description(words.read.about)
    .argument('<PHOTO>', words.read.photo)
    .helpOption('-h, --help', said.help)
    .addHelpText('before', words.read.examples);
  const options = [
    add('-o, --output <DIR>', said.output),
    add('--blank <FILE>', own.blank),
    shown(add('--beads <FILE>', said.beads), said.beadsDefault),
    shown(add('--size <SIZE>', said.size), said.sizeDefault),
    add('--colours <K>', own.colours)
      .argParser(wholeNumber('--colours', 1, 24))
      .default(8),
    add('--colors <K>', said.colors).argParser(wholeNumber('--colors', 1, 24)),
    shown(add('--unpainted <WHAT>', own.unpainted), own.unpaintedDefault),
    shown(add('--title <TEXT>', said.title).argParser(title('--title')), own.titleDefault),
    shown(add('--json', said.json), said.off),
    shown(add('--quiet', said.quiet), said.off),
    shown(add('--force', said.force), said.off),
    shown(add('--dry-run', said.dryRun), said.off),
  ];
  for (const option of options) command.addOption(option);
  command.action(async (photo: string) => read(command, photo, words, io));
}

async function read(command: Command, photo: string, words: Words, io: Io): Promise<void> {
  const options = command.opts<ReadOptions>();
  const force = options.force === true;
  const { blank: blankName } = options;
  if (blankName === undefined) throw new RondureError('usage', { problem: words.read.sayBlank });
  if (options.output === undefined && !options.dryRun) {
    throw new RondureError('usage', { problem: words.blank.sayWhere });
  }
  const folder = options.dryRun ? undefined : options.output!;
  if (folder !== undefined) await checkOutputFree(folder, force);
  const blank = await readPattern(blankName, words);
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
      await writeFolder(folder, made, { force, signal: io.signal });
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
