import { basename } from 'node:path';
import type { Command } from 'commander';
import { readBytes } from '../../node/read/read-bytes.js';
import { readPicture } from '../../node/read/read-picture.js';
import type { Frame } from '../../core/purse/frame/measures.js';
import type { Words } from '../../words/index.js';
import { readBack } from '../options/back-option.js';
import { addChartOptions } from '../options/chart-options.js';
import type { ChartOptions } from '../options/chart-options.js';
import { panelWish, refuseContradictions, subjectFile, titleFrom } from '../options/chart-wish.js';
import { runFolderCommand } from '../run/folder-command.js';
import { useFrom } from '../options/from-option.js';
import { frameFor } from '../options/frame-options.js';
import type { Io } from '../run/io.js';
import { paletteFor } from '../options/palette-for.js';
import { useSwatch } from '../options/swatch-option.js';

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
  refuseContradictions(command, argument);
  const from = await useFrom(command);
  const options = command.opts<ChartOptions>();
  const swatch = await useSwatch(command);
  await runFolderCommand(options, words, io, async (progress) => {
    progress.say(words.cli.steps.reading);
    const pictureName = argument === '-' ? 'picture' : basename(argument);
    // The palette is read, and fonts and most of the program are loaded, while another thread
    // decodes the picture.
    const { mask: maskName } = options;
    const subjectName = subjectFile(options.subject);
    const [picture, palette, mask, painted, frame, back, { makePattern }, fonts] =
      await Promise.all([
        readBytes(argument).then((bytes) => readPicture(bytes, argument)),
        paletteFor(options),
        maskName && readBytes(maskName).then((bytes) => readPicture(bytes, maskName)),
        subjectName && readBytes(subjectName).then((bytes) => readPicture(bytes, subjectName)),
        frameFor(options),
        readBack(options.back),
        import('../../core/make.js'),
        import('../../node/font/fonts.js').then(async (found) => {
          await found.bundledFonts();
          return found;
        }),
      ]);
    progress.say(words.cli.steps.choosing);
    const named = from.title(pictureName) ?? titleFrom(pictureName);
    const title = (await fonts.drawableText(named)) || words.cli.untitled;
    const masked = mask ? { picture: mask, name: basename(maskName!) } : from.mask;
    const wish = panelWish(command, {
      picture,
      pictureName,
      title,
      ...palette,
      diameterMm: from.beadDiameterMm ?? palette.diameterMm,
      ...(masked && { mask: masked }),
      subject: painted
        ? { picture: painted, name: basename(subjectName!) }
        : options.subject === undefined
          ? from.subject
          : 'plain',
      frame: frame ?? framedFrom(from.frame, options),
      back: back(palette.beads),
    });
    const chosen = makePattern(wish);
    const { pattern: made, report } = from.hand
      ? (await import('../../core/brush/by-hand.js')).byHand(chosen, {
          ...from.hand,
          palette: palette.beads,
        })
      : chosen;
    const pattern = swatch.pattern(made);
    report.warnings.unshift(...palette.notes, ...swatch.warnings(made, palette.diameterMm));
    return { pattern, report, wishMm: wish.acrossMm };
  });
}

/** The frame of an earlier pattern, with the bare rounds that are asked for now. */
function framedFrom(frame: Frame | undefined, { bareRounds }: ChartOptions): Frame | undefined {
  return frame && { ...frame, ...(bareRounds !== undefined && { bareRounds }) };
}
