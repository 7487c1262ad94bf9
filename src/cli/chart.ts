import { basename, resolve } from 'node:path';
import type { Command } from 'commander';
import { RondureError } from '../core/errors.js';
import { makePattern } from '../core/make.js';
import { readPalette } from '../core/palette/read-palette.js';
import { colourChanges } from '../core/texts/runs.js';
import { checkOutputFree, writeFolder } from '../node/output-folder.js';
import { defaultPalette } from '../node/palettes.js';
import { patternFiles } from '../node/pattern-files.js';
import { readBytes } from '../node/read-bytes.js';
import { readPicture } from '../node/read-picture.js';
import type { Words } from '../words/index.js';
import { addChartOptions } from './chart-options.js';
import type { ChartOptions } from './chart-options.js';
import { panelWish, refuseContradictions } from './chart-wish.js';
import type { Io } from './io.js';
import { Progress } from './progress.js';
import { summaryJson, summaryText } from './summary.js';
import type { ChartResult } from './summary.js';

/** `chart PICTURE`: the main job, from a picture to a folder. */
export function addChartCommand(program: Command, words: Words, io: Io): void {
  const command = program
    .command('chart')
    .description(words.cli.chart)
    .argument('<PICTURE>', words.cli.chartPicture)
    .helpOption('-h, --help', words.cli.options.help)
    .addHelpText('before', words.cli.examples)
    .addHelpText('after', `\n${words.cli.exitCodes}`);
  addChartOptions(command, words);
  command.action(async (picture: string) => chart(command, picture, words, io));
}

async function chart(command: Command, picture: string, words: Words, io: Io): Promise<void> {
  refuseContradictions(command, picture);
  const options = command.opts<ChartOptions>();
  const progress = new Progress(io.progress, options.quiet === true || options.json === true);
  try {
    const result = await work(command, picture, words, io, progress);
    progress.clear();
    if (options.json) io.out(summaryJson(result, words));
    else if (!options.quiet) io.out(summaryText(result, words));
  } finally {
    progress.clear();
  }
}

async function work(
  command: Command,
  pictureArgument: string,
  words: Words,
  io: Io,
  progress: Progress,
): Promise<ChartResult> {
  const options = command.opts<ChartOptions>();
  const folder = options.dryRun ? undefined : resolve(options.output);
  if (folder !== undefined) await checkOutputFree(folder, options.force === true);
  const palette = await paletteFor(options);
  progress.say(words.cli.steps.reading);
  const pictureName = pictureArgument === '-' ? 'picture' : basename(pictureArgument);
  const picture = await readPicture(await readBytes(pictureArgument), pictureArgument);
  progress.say(words.cli.steps.choosing);
  const wish = panelWish(command, { picture, pictureName, ...palette });
  const { pattern, report } = makePattern(wish);
  report.warnings.unshift(...palette.notes);
  refuseIfInterrupted(io.signal);
  let files: string[] = [];
  if (folder !== undefined) {
    const made = await patternFiles(pattern, words, (step) => progress.say(words.cli.steps[step]));
    refuseIfInterrupted(io.signal);
    progress.say(words.cli.steps.writing);
    await writeFolder(folder, made, { force: options.force === true, signal: io.signal });
    files = [...made.keys()].sort();
  }
  return {
    pattern,
    report,
    colourChanges: colourChanges(pattern, 0),
    wishMm: wish.acrossMm,
    folder: folder === undefined ? undefined : options.output,
    files,
  };
}

export async function paletteFor(options: Pick<ChartOptions, 'beads' | 'size'>) {
  const size = options.size === undefined ? {} : { size: options.size };
  if (options.beads === undefined) return readPalette(...(await defaultPalette()), size);
  const bytes = await readBytes(options.beads);
  return readPalette(new TextDecoder().decode(bytes), options.beads, size);
}

function refuseIfInterrupted(signal: AbortSignal): void {
  if (signal.aborted) throw new RondureError('interrupted', undefined);
}
