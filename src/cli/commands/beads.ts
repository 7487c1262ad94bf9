import { basename, resolve } from 'node:path';
import { Option } from 'commander';
import type { Command } from 'commander';
import { RondureError } from '../../core/errors.js';
import { decodePalette } from '../../core/beads/palette/decode.js';
import { jarsCsv, readJars } from '../../core/beads/palette/photo/read-jars.js';
import { surveyPalette } from '../../core/beads/palette/read-palette.js';
import { checkOutputFree } from '../../node/output/output-folder.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { readPicture } from '../../node/read/read-picture.js';
import { cardFolder, sampleFiles } from '../../node/output/sample-files.js';
import type { RowFault } from '../../words/en/palette.js';
import type { Words } from '../../words/index.js';
import { beadsJson, beadsText } from '../said/beads-summary.js';
import type { BeadsResult } from '../said/beads-summary.js';
import type { Io } from '../run/io.js';
import { Progress } from '../said/progress.js';
import { underGroup } from '../options/described.js';
import { contradict } from '../options/output-options.js';
import { wholeNumber } from '../options/values.js';
import { writeSet } from '../run/write-set.js';

interface BeadsOptions {
  output?: string;
  size?: string;
  fromPicture?: string;
  rows?: number;
  columns?: number;
  force?: true;
  json?: true;
}

/** `beads FILE`: looks through a palette, and makes its sample card. */
export function addBeadsCommand(program: Command, words: Words, io: Io): void {
  const said = words.beads.options;
  const shown = (flags: string, text: string, instead: string) =>
    new Option(flags, text).default(undefined, instead);
  const { none, off } = words.beads;
  const command = program
    .command('beads')
    .description(words.beads.command)
    .argument('[FILE]', words.beads.file)
    .addHelpText('before', words.beads.examples);
  const options = [
    ...underGroup(words, 'files', [shown('-o, --output <DIR>', said.output, none)]),
    ...underGroup(words, 'shape', [
      shown('--size <SIZE>', said.size, words.cli.options.sizeDefault),
    ]),
    ...underGroup(words, 'picture', [
      shown('--from-picture <PHOTO>', said.fromPicture, none),
      shown('--rows <R>', said.rows, none).argParser(wholeNumber('--rows', 1, 60)),
      shown('--columns <C>', said.columns, none).argParser(wholeNumber('--columns', 1, 60)),
    ]),
    ...underGroup(words, 'printing', [
      shown('--force', said.force, off),
      shown('--json', said.json, off),
    ]),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string | undefined) => {
    const options = command.opts<BeadsOptions>();
    refuseContradictions(file, options);
    const progress = new Progress(io.progress, options.json === true);
    try {
      await beads(file, options, words, io, progress);
    } finally {
      progress.clear();
    }
  });
}

function refuseContradictions(file: string | undefined, options: BeadsOptions): void {
  const { fromPicture, rows, columns } = options;
  if (file !== undefined && fromPicture !== undefined) {
    contradict('FILE', '--from-picture', 'two-palettes');
  }
  if (file !== undefined && (rows !== undefined || columns !== undefined)) {
    contradict('FILE', rows === undefined ? '--columns' : '--rows', 'grid-without-picture');
  }
  if (file === undefined && fromPicture === undefined) {
    throw new RondureError('usage', { problem: { kind: 'no-palette' } });
  }
  if (fromPicture !== undefined && (rows === undefined || columns === undefined)) {
    throw new RondureError('usage', { problem: { kind: 'no-grid' } });
  }
  if (options.force && options.output === undefined) {
    throw new RondureError('usage', { problem: { kind: 'force-without-folder' } });
  }
}

async function beads(
  file: string | undefined,
  options: BeadsOptions,
  words: Words,
  io: Io,
  progress: Progress,
): Promise<void> {
  const folder = options.output === undefined ? undefined : resolve(options.output);
  const force = options.force === true;
  if (folder !== undefined) await checkOutputFree(folder, force, cardFolder);
  const survey =
    options.fromPicture === undefined
      ? await fromFile(file!, options)
      : await fromPicture(options.fromPicture, options, words, progress);
  const usable = survey.problems.length === 0;
  let files: string[] = [];
  if (folder !== undefined && usable) {
    progress.say(words.beads.steps.drawing);
    const made = await sampleFiles(survey.beads, titleOf(survey.where), words);
    if (io.signal.aborted) throw new RondureError('interrupted', undefined);
    await writeSet(folder, made, { force, kind: cardFolder }, io);
    files = [...made.keys()];
  }
  progress.clear();
  const result: BeadsResult = {
    ...survey,
    folder: files.length > 0 ? options.output : undefined,
    files,
  };
  io.out(options.json ? beadsJson(result, words) : beadsText(result, words));
  if (!usable) {
    const problems = survey.problems.map(({ code, facts }) => ({ code, facts }) as RowFault);
    throw new RondureError('palette-unusable', { where: survey.where, problems });
  }
}

type Surveyed = Omit<BeadsResult, 'folder' | 'files'>;

async function fromFile(file: string, options: BeadsOptions): Promise<Surveyed> {
  const text = decodePalette(await readBytes(file));
  return { where: file, ...surveyPalette(text, file, sizeWish(options)) };
}

async function fromPicture(
  photo: string,
  options: BeadsOptions,
  words: Words,
  progress: Progress,
): Promise<Surveyed> {
  progress.say(words.beads.steps.reading);
  const picture = await readPicture(await readBytes(photo), photo);
  const grid = { rows: options.rows!, columns: options.columns! };
  const { jars, notes } = readJars(picture, grid, photo);
  const text = jarsCsv(jars, words);
  const survey = surveyPalette(text, photo, sizeWish(options));
  return { where: photo, ...survey, format: 'photo', notes: [...notes, ...survey.notes] };
}

function sizeWish({ size }: BeadsOptions): { size?: string } {
  return size === undefined ? {} : { size };
}

/** The file's name without folder and ending. */
function titleOf(where: string): string {
  const base = where === '-' ? '' : basename(where).replace(/\.[^.]{1,5}$/, '');
  return (
    base
      .replace(/\p{Cc}/gu, ' ')
      .trim()
      .slice(0, 100) || 'beads'
  );
}
