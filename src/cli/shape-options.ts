import { Option } from 'commander';
import type { Command } from 'commander';
import type { ShapeWish } from '../core/shape.js';
import { RondureError } from '../core/errors.js';
import type { Words } from '../words/index.js';
import type { ChartOptions } from './chart-options.js';
import { length, numberBetween, wholeNumber } from './values.js';

/** The options that say how a panel is worked, without its picture. */
export type ShapeOptions = Pick<
  ChartOptions,
  | 'wedges'
  | 'rounds'
  | 'across'
  | 'size'
  | 'roundHeight'
  | 'stitchWidth'
  | 'increase'
  | 'lean'
  | 'outline'
  | 'construction'
  | 'hand'
  | 'beadsFace'
  | 'start'
>;

/** Adds the shape options, the same as those of `chart`. */
export function addShapeOptions(command: Command, words: Words): Command {
  const said = words.cli.options;
  const shown = (option: Option, text: string) => option.default(undefined, text);
  const add = (flags: string, text: string) => new Option(flags, text);
  const decimal = (flags: string, text: string, least: number, most: number) =>
    add(flags, text).argParser(numberBetween(flags.split(' ')[0], least, most));
  const options = [
    add('--wedges <N>', said.wedges)
      .argParser(wholeNumber('--wedges', 3, 12))
      .default(7),
    add('--rounds <R>', said.rounds)
      .argParser(wholeNumber('--rounds', 2, 80))
      .default(20),
    shown(add('--across <SIZE>', said.across).argParser(length('--across')), said.acrossDefault),
    shown(add('--size <SIZE>', said.size), said.sizeDefault),
    shown(decimal('--round-height <MM>', said.roundHeight, 0.1, 50), said.stitchDefault),
    shown(decimal('--stitch-width <MM>', said.stitchWidth, 0.1, 50), said.stitchDefault),
    add('--increase <PLACE>', said.increase).choices(['last', 'middle', 'first']).default('last'),
    decimal('--lean <L>', said.lean, -1, 1).default(0.5),
    shown(
      add('--outline <KIND>', said.outline).choices(['polygon', 'circle']),
      said.outlineDefault,
    ),
    add('--construction <KIND>', said.construction).choices(['spiral', 'joined']).default('spiral'),
    add('--hand <HAND>', said.hand).choices(['right', 'left']).default('right'),
    add('--beads-face <WAY>', said.beadsFace).choices(['away', 'toward']).default('away'),
    shown(decimal('--start <DEGREES>', said.start, -3600, 3600), said.startDefault),
  ];
  for (const option of options) command.addOption(option);
  return command;
}

/** The shape options as a wish; refuses two answers to one question. */
export function shapeWish(
  command: Command,
  beadDiameterMm: number,
): { shape: ShapeWish; acrossMm?: number; startDegrees?: number } {
  const options = command.opts<ShapeOptions>();
  const given = (key: string) => command.getOptionValueSource(key) === 'cli';
  if (given('rounds') && given('across')) {
    const why = 'both set the size';
    throw new RondureError('options-contradict', { first: '--rounds', second: '--across', why });
  }
  const { wedges, rounds, increase, lean, construction, hand, beadsFace } = options;
  return {
    shape: {
      ...{ wedges, rounds, increase, lean, construction, hand, beadsFace, beadDiameterMm },
      ...(options.outline && { outline: options.outline }),
      ...(options.stitchWidth !== undefined && { stitchWidthMm: options.stitchWidth }),
      ...(options.roundHeight !== undefined && { roundHeightMm: options.roundHeight }),
    },
    ...(options.across !== undefined && { acrossMm: options.across }),
    ...(options.start !== undefined && { startDegrees: options.start }),
  };
}
