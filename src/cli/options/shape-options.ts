import type { Command, Option } from 'commander';
import { RondureError } from '../../core/errors.js';
import { shapeLimits } from '../../core/panel/limits.js';
import type { ShapeWish } from '../../core/panel/shape.js';
import { wishLimits } from '../../core/pattern/wish-limits.js';
import type { Words } from '../../words/index.js';
import { choice, decimal, inGroup, optionsOf, size, text, usually, whole } from './described.js';
import type { ValuesOf } from './described.js';
import { contradict } from './output-options.js';

/** The options that say how a panel is worked, in the order of help. */
export const shapeTable = inGroup('shape', {
  wedges: usually(
    whole('--wedges <N>', shapeLimits.wedges, { from: ({ shape }) => shape.wedges }),
    7,
  ),
  rounds: usually(
    whole('--rounds <R>', shapeLimits.rounds, { from: ({ shape }) => shape.rounds }),
    20,
  ),
  across: size('--across <SIZE>', {
    said: 'acrossDefault',
    from: ({ shape }) => shape.acrossMm,
  }),
  size: text('--size <SIZE>', { said: 'sizeDefault' }),
  roundHeight: decimal('--round-height <MM>', shapeLimits.stitchMm, {
    said: 'stitchDefault',
    from: ({ shape }) => shape.roundHeightMm,
  }),
  stitchWidth: decimal('--stitch-width <MM>', shapeLimits.stitchMm, {
    said: 'stitchDefault',
    from: ({ shape }) => shape.stitchWidthMm,
  }),
  increase: usually(
    choice('--increase <PLACE>', ['last', 'middle', 'first'], {
      from: ({ shape }) => shape.increase,
    }),
    'last',
  ),
  lean: usually(decimal('--lean <L>', shapeLimits.lean, { from: ({ shape }) => shape.lean }), 0.5),
  outline: choice('--outline <KIND>', ['polygon', 'circle'], {
    said: 'outlineDefault',
    from: ({ shape }) => shape.outline,
  }),
  construction: usually(
    choice('--construction <KIND>', ['spiral', 'joined'], {
      from: ({ shape }) => shape.construction,
    }),
    'spiral',
  ),
  hand: usually(
    choice('--hand <HAND>', ['right', 'left'], { from: ({ shape }) => shape.hand }),
    'right',
  ),
  beadsFace: usually(
    choice('--beads-face <WAY>', ['away', 'toward'], { from: ({ shape }) => shape.beadsFace }),
    'away',
  ),
  stitch: choice('--stitch <WAY>', ['both-loops', 'bead-side-loop', 'slip'], {
    said: 'stitchWayDefault',
    from: ({ shape }) => shape.stitch,
  }),
  start: decimal('--start <DEGREES>', wishLimits.degrees, {
    said: 'startDefault',
    from: ({ shape }) => shape.startDegrees,
  }),
  swatch: text('--swatch <FILE>', { said: 'none', word: (words) => words.swatch.options.use }),
});

/** The values of the options that say how a panel is worked. */
export interface ShapeOptions extends ValuesOf<typeof shapeTable> {}

/** The shape options, each with its default shown in help, in the order of help. */
export const shapeOptions = (words: Words): Option[] => optionsOf(shapeTable, words);

/** Refuses shape options that say two things about one question. */
export function refuseShapeContradictions(command: Command): void {
  const given = (key: string) => command.getOptionValueSource(key) === 'cli';
  const options = command.opts<ShapeOptions>();
  if (given('rounds') && given('across')) contradict('--rounds', '--across', 'size');
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
    stitch: options.stitch,
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
