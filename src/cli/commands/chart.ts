import { basename } from 'node:path';
import type { Command } from 'commander';
import { readBytes } from '../../node/read/read-bytes.js';
import { readPicture } from '../../node/read/read-picture.js';
import type { Frame } from '../../core/purse/frame/measures.js';
import type { Picture } from '../../core/picture/picture.js';
import type { Words } from '../../words/index.js';
import { readBack } from '../options/back-option.js';
import { refuseContradictions, subjectFile } from '../options/chart-contradictions.js';
import { addChartOptions } from '../options/chart-options.js';
import type { ChartOptions } from '../options/chart-options.js';
import { frameFor } from '../options/frame-options.js';
import type { Io } from '../run/io.js';

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
  const begun = begin(argument);
  const { runFolderCommand, useFrom, useSwatch, paletteFor, panelWish, titleFrom } =
    await import('../run/chart-parts.js');
  const from = await useFrom(command);
  const options = command.opts<ChartOptions>();
  const swatch = await useSwatch(command);
  await runFolderCommand(options, words, io, async (progress) => {
    progress.say(words.cli.steps.reading);
    const pictureName = argument === '-' ? 'picture' : basename(argument);
    const { mask: maskName } = options;
    const subjectName = subjectFile(options.subject);
    const [picture, palette, mask, painted, frame, back, { makePattern }, fonts] =
      await Promise.all([
        begun ?? read(argument),
        paletteFor(options),
        maskName && read(maskName),
        subjectName && read(subjectName),
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

const read = async (name: string): Promise<Picture> => readPicture(await readBytes(name), name);

/**
 * Another thread decodes the picture while palette, fonts and most of the program are loaded. What
 * is wrong with it is told when it is asked for; the standard input is not begun, since nothing
 * would end it where another file is at fault.
 */
function begin(name: string): Promise<Picture> | undefined {
  if (name === '-') return undefined;
  const picture = read(name);
  picture.catch(() => undefined);
  return picture;
}

/** The frame of an earlier pattern, with the bare rounds that are asked for now. */
function framedFrom(frame: Frame | undefined, { bareRounds }: ChartOptions): Frame | undefined {
  return frame && { ...frame, ...(bareRounds !== undefined && { bareRounds }) };
}
