import { RondureError } from '../errors.js';
import type { SizeRange } from '../../words/pages/numbers.js';
import { acrossMm } from './edge.js';
import { completeShape, flatHeightPerWidth, shapeLimits } from './shape.js';
import type { Shape, ShapeWish } from './shape.js';

export type { SizeRange } from '../../words/pages/numbers.js';

/** A shape whose rounds may be left to a wished size. */
export type SizedWish = Omit<ShapeWish, 'rounds'> & { rounds?: number };

/** Rounds where neither they nor a size are asked for. */
const usualRounds = 20;

/**
 * The whole shape of a wish: with its rounds, with those that come nearest to a size across in
 * millimetres, or with 20. The one way from a size to rounds.
 *
 * @throws RondureError `shape-impossible`, `polygon-needs-end-increase`, `across-out-of-reach`
 */
export function sizedShape(wish: SizedWish, wishMm?: number): Shape {
  const shape = completeShape({ ...wish, rounds: wish.rounds ?? usualRounds });
  return wishMm === undefined ? shape : { ...shape, rounds: roundsForAcross(shape, wishMm) };
}

/**
 * The number of rounds that comes nearest to a wished size across; ties go to the smaller.
 *
 * @throws RondureError `across-out-of-reach` when that is more than a round away
 */
export function roundsForAcross(shape: Shape, wishMm: number): number {
  const { least, most } = shapeLimits.rounds;
  const sizeOf = (rounds: number) => acrossMm({ ...shape, rounds });
  let best: number = least;
  for (let rounds: number = least; rounds <= most; rounds++) {
    if (Math.abs(sizeOf(rounds) - wishMm) < Math.abs(sizeOf(best) - wishMm) - 1e-9) best = rounds;
  }
  const perRound = sizeOf(least + 1) - sizeOf(least);
  if (!(Math.abs(sizeOf(best) - wishMm) <= perRound + 1e-9)) {
    const [leastMm, mostMm] = [sizeOf(least), sizeOf(most)];
    throw new RondureError('across-out-of-reach', { gotMm: wishMm, leastMm, mostMm });
  }
  return best;
}

/**
 * The size across that can be promised. An elastic model of the piece (stitches w apart, children
 * `lean` behind and h outward) settles on a soft polygon between our two outlines, so that before
 * a swatch the size is a range between both; a swatch is measured on the piece itself, and after
 * it both agree.
 */
export function acrossRange(panel: SizedPanel): SizeRange {
  return sizeRange(panel, acrossMm);
}

/** A shape, and the swatch that its stitch was measured on. */
export interface SizedPanel {
  /** The shape with that many rounds. */
  shape: Shape;
  /** A `Swatch`: one that tells the height of a round makes the size sure. */
  swatch?: { readonly measured: object; readonly roundHeightMm?: object | undefined } | undefined;
}

/** The same for any size that follows from the shape. */
export function sizeRange(
  { shape, swatch }: SizedPanel,
  sizeOf: (shape: Shape) => number,
): SizeRange {
  const own = sizeOf(shape);
  if (swatch?.roundHeightMm) return { leastMm: own, mostMm: own };
  const other = sizeOf(withOtherOutline(shape));
  return { leastMm: Math.min(own, other), mostMm: Math.max(own, other) };
}

/** The other outline of stitches as large as these that lie as flat. */
function withOtherOutline(shape: Shape): Shape {
  const { wedges, stitchWidthMm, roundHeightMm } = shape;
  const outline = shape.outline === 'circle' ? 'polygon' : 'circle';
  const ratio = flatHeightPerWidth(wedges, outline) / flatHeightPerWidth(wedges, shape.outline);
  return {
    ...shape,
    outline,
    stitchWidthMm: stitchWidthMm / Math.sqrt(ratio),
    roundHeightMm: roundHeightMm * Math.sqrt(ratio),
  };
}
