import type { Command } from 'commander';
import { RondureError, warningSentence } from '../../core/errors.js';
import type { Warning } from '../../core/errors.js';
import { defaultSize, sizeOf } from '../../core/beads/palette/sizes.js';
import type { SwatchMeasured } from '../../core/swatch/swatch.js';
import { solveSwatch } from '../../core/swatch/solve.js';
import type { SwatchWish } from '../../core/swatch/solve.js';
import { parseSwatch, swatchText } from '../../core/swatch/swatch-file.js';
import { checkFileFree, writeOutputFile } from '../../node/output/output-file.js';
import type { Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import { refusePrintContradictions } from '../options/output-options.js';
import { writeGuide } from './swatch-guide.js';
import { addSwatchOptions, refuseSwatchContradictions } from '../options/swatch-options.js';
import type { SwatchOptions } from '../options/swatch-options.js';
import { photoOf } from './swatch-photo.js';
import { swatchJson, swatchSummary } from '../said/swatch-summary.js';

/** `swatch`: the stitch of a hand, from what was measured on a trial panel. */
export function addSwatchCommand(program: Command, words: Words, io: Io): void {
  const command = program
    .command('swatch')
    .description(words.swatch.about)
    .addHelpText('before', words.swatch.examples);
  addSwatchOptions(command, words);
  command.action(async () => swatch(command, words, io));
}

async function swatch(command: Command, words: Words, io: Io): Promise<void> {
  const options = command.opts<SwatchOptions>();
  refusePrintContradictions(options);
  refuseSwatchContradictions(command);
  const { output, dryRun, quiet, json } = options;
  if (output === undefined && !dryRun) {
    throw new RondureError('usage', { problem: { kind: 'no-swatch-file' } });
  }
  if (options.guide) return writeGuide(options, words, io);
  const writing = { force: options.force === true, isOurs };
  if (output !== undefined) await checkFileFree(output, writing);
  const wish = wishOf(options);
  const notes: Warning[] = [];
  if (options.photo !== undefined) {
    const { photo, measured, warnings } = await photoOf(options, wish);
    Object.assign(wish, { photo });
    Object.assign(wish.measured, measured);
    notes.push(...warnings);
  }
  const { swatch: solved, warnings } = solveSwatch(wish);
  const file = dryRun ? undefined : output;
  if (file !== undefined) {
    io.guard?.(true);
    try {
      await writeOutputFile(file, swatchText(solved), { ...writing, signal: io.signal });
    } finally {
      io.guard?.(false);
    }
  }
  const all = [...notes, ...warnings];
  if (json) io.out(swatchJson(solved, all, file, words));
  else if (!quiet) {
    const told = all.map((one) => warningSentence(words, one));
    io.out(swatchSummary(solved, told, file, words));
  }
}

/** What was measured, as the core solves it; the bead's diameter comes from the trade where unsaid. */
function wishOf(options: SwatchOptions): SwatchWish {
  const size = sizeOf(options.size ?? defaultSize);
  const [low, high] = size.diameterRangeMm;
  const { rounds = 10, wedges, turn } = options;
  const toRound = options.toRound ?? rounds;
  const perStitch = 360 / (wedges * toRound);
  const perUnit = turn?.unit === 'stitches' ? perStitch : 1;
  // A turn counted in stitches is read to a quarter of one.
  const turnOff = turn?.unit === 'stitches' ? perStitch / 4 : options.protractor;
  const measured: SwatchMeasured = {
    beadMm: options.beadMm ?? size.diameterMm,
    beadOffMm: options.beadMm === undefined ? Math.round((high - low) * 500) / 1000 : 0.05,
    ...(options.across !== undefined && { acrossMm: options.across }),
    ...(options.rimStitches !== undefined && {
      rimStitches: options.rimStitches,
      rimMm: options.rimMm,
    }),
    ...(turn && {
      turnDegrees: turn.amount * perUnit,
      turnOffDegrees: turnOff,
      fromRound: options.fromRound ?? Math.min(2, toRound - 1),
      toRound,
      markedWedge: options.markedWedge,
    }),
    ...(options.threadMm !== undefined && {
      threadMm: options.threadMm,
      threadStitches: options.threadStitches,
    }),
    ...(options.fiftyBeads !== undefined && { fiftyBeadsMm: options.fiftyBeads }),
    rulerMm: options.ruler,
  };
  return {
    worked: {
      wedges,
      rounds,
      increase: options.increase,
      construction: options.construction,
      hand: options.hand,
      beadsFace: options.beadsFace,
      ...(options.stitch && { stitch: options.stitch }),
      ...(options.outline && { outline: options.outline }),
    },
    lies: options.lies,
    measured,
  };
}

/** Whether a file is a swatch of ours, which may be replaced. */
function isOurs(older: Uint8Array): boolean {
  try {
    parseSwatch(new TextDecoder().decode(older), '');
    return true;
  } catch {
    return false;
  }
}
