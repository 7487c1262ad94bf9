import { basename } from 'node:path';
import type { Command } from 'commander';
import { readBytes } from '../node/read-bytes.js';
import { readPicture } from '../node/read-picture.js';
import type { Words } from '../words/index.js';
import { readBack } from './back-option.js';
import { addChartOptions } from './chart-options.js';
import type { ChartOptions } from './chart-options.js';
import { panelWish, refuseContradictions, titleFrom } from './chart-wish.js';
import { runFolderCommand } from './folder-command.js';
import { frameFor } from './frame-options.js';
import type { Io } from './io.js';
import { paletteFor } from './palette-for.js';
import { useSwatch } from './swatch-option.js';

/** `chart PICTURE`: the main job, from a picture to a folder. */
export function addChartCommand(program: Command, words: Words, io: Io): void {
  const command = program
    .command('chart')
    .description(words.cli.chart)
    .argument('<PICTURE>', words.cli.chartPicture)
    .addHelpText('before', words.cli.examples);
  addChartOptions(command, words);
  command.action(async (picture: string) => chart(command, picture, words, io));
}

async function chart(command: Command, argument: string, words: Words, io: Io): Promise<void> {
  refuseContradictions(command, argument, words);
  const options = command.opts<ChartOptions>();
  const swatch = await useSwatch(command, words);
  await runFolderCommand(options, words, io, async (progress) => {
    progress.say(words.cli.steps.reading);
    const pictureName = argument === '-' ? 'picture' : basename(argument);
    // The palette is read, and fonts and most of the program are loaded, while another thread
    // decodes the picture.
    const { mask: maskName } = options;
    const [picture, palette, mask, frame, back, { makePattern }, fonts] = await Promise.all([
      readBytes(argument).then((bytes) => readPicture(bytes, argument)),
      paletteFor(options),
      maskName && readBytes(maskName).then((bytes) => readPicture(bytes, maskName)),
      frameFor(options, words),
      readBack(options.back),
      import('../core/make.js'),
      import('../node/fonts.js').then(async (found) => {
        await found.bundledFonts();
        return found;
      }),
    ]);
    progress.say(words.cli.steps.choosing);
    const title = (await fonts.drawableText(titleFrom(pictureName))) || words.cli.untitled;
    const masked = mask && { mask: { picture: mask, name: maskName! } };
    const wish = panelWish(command, {
      picture,
      pictureName,
      title,
      ...palette,
      ...masked,
      frame,
      back: back(palette.beads),
    });
    const { pattern: made, report } = makePattern(wish);
    const pattern = swatch.pattern(made);
    report.warnings.unshift(...palette.notes, ...swatch.warnings(made, palette.diameterMm));
    return { pattern, report, wishMm: wish.acrossMm };
  });
}
