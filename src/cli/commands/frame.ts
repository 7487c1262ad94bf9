import type { Command } from 'commander';
import { RondureError } from '../../core/errors.js';
import { frameText, isFrameText, requirePossible } from '../../core/purse/frame/frame-file.js';
import {
  usualRatio,
  frameWarnings,
  planFrame,
  roundsForFrame,
} from '../../core/purse/frame/plan.js';
import { sizedShape, sizeRange } from '../../core/panel/across.js';
import { layPanel } from '../../core/panel/lay.js';
import { defaultSize, sizeOf } from '../../core/beads/palette/sizes.js';
import { wornWidthMm } from '../../core/purse/frame/worn.js';
import { frameLimits } from '../../core/purse/frame/measures.js';
import type { Frame } from '../../core/purse/frame/measures.js';
import { shapeLimits } from '../../core/panel/limits.js';
import type { Words } from '../../words/index.js';
import { frameJson, framePlanText } from '../said/frame-summary.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { decimal, option, shown, whole } from '../options/option-makers.js';
import { contradict } from '../options/output-options.js';
import { refuseShapeContradictions, shapeOptions, shapeWish } from '../options/shape-options.js';
import type { ShapeOptions } from '../options/shape-options.js';
import { useSwatch } from '../options/swatch-option.js';
import { length } from '../options/values.js';
import { writeFileGuarded } from '../run/write-file.js';

interface FrameOptions extends Omit<ShapeOptions, 'rounds'> {
  output?: string;
  kind: Frame['kind'];
  width?: number;
  height?: number;
  cornerRadius?: number;
  hingeWidth?: number;
  fixing: Frame['fixing'];
  channelDepth?: number;
  holeSpacing?: number;
  ratio: number;
  gather: number;
  rounds?: number;
  swatch?: string;
  json?: true;
  force?: true;
}

/** `frame`: plans a panel for a purse frame. */
export function addFrameCommand(program: Command, words: Words, io: Io): void {
  const said = words.frame.options;
  const command = program
    .command('frame')
    .description(words.frame.about)
    .addHelpText('before', words.frame.examples);
  const measured = (flags: string, text: string, instead: string) =>
    shown(option(flags, text).argParser(length(/--[a-z-]+/.exec(flags)![0])), instead);
  const shape = shapeOptions(words).map((one) =>
    one.long === '--rounds'
      ? shown(
          whole('--rounds <R>', said.rounds, shapeLimits.rounds.least, shapeLimits.rounds.most),
          said.roundsDefault,
        )
      : one,
  );
  const options = [
    ...underGroup(words, 'files', [
      shown(option('-o, --output <FILE>', said.output), words.cli.options.none),
    ]),
    ...underGroup(words, 'frame', [
      option('--kind <KIND>', said.kind)
        .choices(['half-round', 'squared', 'oval'])
        .default('half-round'),
      measured('--width <SIZE>', said.width, said.needed),
      measured('--height <SIZE>', said.height, said.needed),
      measured('--corner-radius <SIZE>', said.corner, said.cornerDefault),
      measured('--hinge-width <SIZE>', said.hinge, said.hingeDefault),
      option('--fixing <HOW>', said.fixing).choices(['sewn', 'glued']).default('sewn'),
      measured('--channel-depth <SIZE>', said.channel, said.fourMm),
      measured('--hole-spacing <SIZE>', said.holes, said.fourMm),
      decimal('--ratio <TIMES>', said.ratio, 1.05, 1.5).default(usualRatio),
      decimal(
        '--gather <PERCENT>',
        said.gather,
        frameLimits.gatherPercent.least,
        frameLimits.gatherPercent.most,
      ).default(0),
    ]),
    ...underGroup(words, 'shape', shape),
    ...underGroup(words, 'printing', [
      shown(option('--json', said.json), words.cli.options.off),
      shown(option('--force', said.force), words.cli.options.off),
    ]),
  ];
  for (const one of options) command.addOption(one);
  command.action(async () => frame(command, words, io));
}

async function frame(command: Command, words: Words, io: Io): Promise<void> {
  const swatch = await useSwatch(command);
  const options = command.opts<FrameOptions>();
  refuseShapeContradictions(command);
  refuseKindContradictions(options);
  const measured = measuredFrame(options);
  requirePossible(measured);
  const { diameterMm } = sizeOf(options.size ?? defaultSize);
  const { rounds: asked, across, start, ...shapeOf } = options;
  const wish = { ...shapeWish(shapeOf, diameterMm), wedges: options.wedges };
  const recommended = asked === undefined && across === undefined;
  const sized = sizedShape({ ...wish, ...(asked !== undefined && { rounds: asked }) }, across);
  const rounds = recommended ? roundsForFrame(measured, sized, start) : sized.rounds;
  const shape = { ...sized, rounds };
  const geometry = layPanel(shape, start === undefined ? {} : { startDegrees: start }).geometry;
  const plan = planFrame(measured, geometry);
  const warnings = [
    ...swatch.warnings({ shape }, diameterMm),
    ...frameWarnings(measured, geometry),
  ];
  const { output } = options;
  if (output !== undefined) {
    const isOurs = (older: Uint8Array) => isFrameText(new TextDecoder().decode(older));
    await writeFileGuarded(
      output,
      frameText(measured),
      { force: options.force === true, isOurs },
      io,
    );
  }
  const result = {
    frame: measured,
    plan,
    worn: sizeRange({ shape, swatch: swatch.measured }, (one) => wornWidthMm(one, start)),
    warnings,
    recommended,
    file: output,
    swatch: options.swatch !== undefined,
  };
  io.out(options.json ? frameJson(result, words) : framePlanText(result, words));
}

/** Refuses a missing measurement, and one that the kind of frame does not have. */
function refuseKindContradictions(options: FrameOptions): void {
  const { kind, fixing } = options;
  for (const name of ['width', 'height'] as const) {
    if (options[name] === undefined) {
      throw new RondureError('usage', { problem: { kind: 'frame-unmeasured', name } });
    }
  }
  const { cornerRadius, hingeWidth, channelDepth, holeSpacing } = options;
  if (kind !== 'squared' && cornerRadius !== undefined) {
    contradict('--corner-radius', `--kind ${kind}`, 'frame-corner');
  }
  if (kind !== 'oval' && hingeWidth !== undefined) {
    contradict('--hinge-width', `--kind ${kind}`, 'frame-hinge');
  }
  if (fixing === 'sewn' && channelDepth !== undefined) {
    contradict('--channel-depth', '--fixing sewn', 'frame-channel');
  }
  if (fixing === 'glued' && holeSpacing !== undefined) {
    contradict('--hole-spacing', '--fixing glued', 'frame-holes');
  }
  if (options.force && options.output === undefined) {
    throw new RondureError('usage', { problem: { kind: 'force-without-file' } });
  }
}

/** The frame as its options say; what was not measured is left out. */
function measuredFrame(options: FrameOptions): Frame {
  const mm = (value: number) => Math.round(value * 1000) / 1000;
  const { kind, fixing, cornerRadius, hingeWidth, channelDepth, holeSpacing } = options;
  return {
    kind,
    widthMm: mm(options.width!),
    heightMm: mm(options.height!),
    ...(cornerRadius !== undefined && { cornerRadiusMm: mm(cornerRadius) }),
    ...(hingeWidth !== undefined && { hingeWidthMm: mm(hingeWidth) }),
    fixing,
    ...(channelDepth !== undefined && { channelDepthMm: mm(channelDepth) }),
    ...(holeSpacing !== undefined && { holeSpacingMm: mm(holeSpacing) }),
    ratio: options.ratio,
    gatherPercent: options.gather,
  };
}
