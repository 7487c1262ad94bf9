import { sizedShape } from '../../../core/panel/across.js';
import type { Shape } from '../../../core/panel/shape.js';
import { swatchShape } from './swatch-shape.js';
import type { Piece } from '../../store/piece.js';

type ShapePart = Partial<Piece['wish']['shape']>;

/** The piece with its shape wished otherwise. */
export function shaped(now: Piece, part: ShapePart): Piece {
  return { ...now, wish: { ...now.wish, shape: { ...now.wish.shape, ...part } } };
}

/** So many rounds, whatever size that gives. */
export function withRounds(now: Piece, rounds: number): Piece {
  const next = shaped(now, { rounds });
  return { ...next, wish: { ...next.wish, acrossMm: undefined } };
}

/** The size that is wanted, in as many rounds as come nearest. */
export function withAcross(now: Piece, acrossMm: number): Piece {
  const { rounds: _rounds, ...shape } = now.wish.shape;
  return { ...now, wish: { ...now.wish, shape, acrossMm } };
}

/** The shape as it is wished, with all that follows by itself. */
export function shapeOf({ wish, palette, swatch }: Piece): Shape {
  const { shape, acrossMm } = wish;
  const whole = { ...shape, ...swatchShape(swatch), beadDiameterMm: palette.diameterMm };
  return sizedShape(whole, acrossMm);
}
