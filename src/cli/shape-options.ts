import type { Command, Option } from 'commander';
import { RondureError } from '../core/errors.js';
import type { ShapeWish } from '../core/shape.js';
import { en } from '../words/index.js';
import type { Words } from '../words/index.js';
import { decimal, option, shown, whole } from './option-makers.js';
import { swatchOption } from './swatch-option.js';
import { length } from './values.js';

/** The options that say how a panel is worked, as commander hands them over. */
export interface ShapeOptions {
  wedges: number;
  rounds: number;
  across?: number;
  size?: string;
  roundHeight?: number;
  stitchWidth?: number;
  increase: 'last' | 'middle' | 'first';
  lean: number;
  outline?: 'polygon' | 'circle';
  construction: 'spiral' | 'joined';
  hand: 'right' | 'left';
  beadsFace: 'away' | 'toward';
  start?: number;
  swatch?: string;
}

/** The shape options, each with its default shown in help, in the order of help. */
export function shapeOptions(words: Words): Option[] {
  const said = words.cli.options;
  return [
    whole('--wedges <N>', said.wedges, 3, 12).default(7),
    whole('--rounds <R>', said.rounds, 2, 80).default(20),
    shown(option('--across <SIZE>', said.across).argParser(length('--across')), said.acrossDefault),
    shown(option('--size <SIZE>', said.size), said.sizeDefault),
    shown(decimal('--round-height <MM>', said.roundHeight, 0.1, 50), said.stitchDefault),
    shown(decimal('--stitch-width <MM>', said.stitchWidth, 0.1, 50), said.stitchDefault),
    option('--increase <PLACE>', said.increase)
      .choices(['last', 'middle', 'first'])
      .default('last'),
    decimal('--lean <L>', said.lean, -1, 1).default(0.5),
    shown(
      option('--outline <KIND>', said.outline).choices(['polygon', 'circle']),
      said.outlineDefault,
    ),
    option('--construction <KIND>', said.construction)
      .choices(['spiral', 'joined'])
      .default('spiral'),
    option('--hand <HAND>', said.hand).choices(['right', 'left']).default('right'),
    option('--beads-face <WAY>', said.beadsFace).choices(['away', 'toward']).default('away'),
    shown(decimal('--start <DEGREES>', said.start, -3600, 3600), said.startDefault),
    swatchOption(words),
  ];
}

/** Refuses shape options that say two things about one question. */
export function refuseShapeContradictions(command: Command): void {
  const given = (key: string) => command.getOptionValueSource(key) === 'cli';
  const options = command.opts<ShapeOptions>();
  if (given('rounds') && given('across')) {
    throw new RondureError('options-contradict', {
      first: '--rounds',
      second: '--across',
      why: en.expected.contradictions.size,
    });
  }
  if (given('outline') && options.outline === 'polygon' && options.increase === 'middle') {
    throw new RondureError('polygon-needs-end-increase', undefined);
  }
}

/** The shape that the options wish for; the stitch comes from the bead where it is not measured. */
export function shapeWish<Given extends Partial<ShapeOptions>>(
  options: Given,
  beadDiameterMm: number,
): WishOf<Given> {
  const wish = {
    wedges: options.wedges,
    rounds: options.rounds,
    increase: options.increase,
    lean: options.lean,
    construction: options.construction,
    hand: options.hand,
    beadsFace: options.beadsFace,
    outline: options.outline,
    stitchWidthMm: options.stitchWidth,
    roundHeightMm: options.roundHeight,
    beadDiameterMm,
  };
  const said = Object.entries(wish).filter(([, value]) => value !== undefined);
  return Object.fromEntries(said) as unknown as WishOf<Given>;
}

/** Wedges and rounds are sure to be there where the options have a default for them. */
type WishOf<Given> = Given extends ShapeOptions
  ? ShapeWish
  : Partial<ShapeWish> & Pick<ShapeWish, 'beadDiameterMm'>;
