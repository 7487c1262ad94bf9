import type { SwatchWish } from '../../../core/swatch/solve.js';
import type { Piece } from '../../store/piece.js';

/** A swatch of so many rounds, worked as the piece will be. */
export function workedLike({ wish }: Piece, rounds: number): SwatchWish['worked'] {
  const { shape } = wish;
  return {
    wedges: shape.wedges,
    rounds,
    increase: shape.increase ?? 'last',
    construction: shape.construction ?? 'spiral',
    hand: shape.hand ?? 'right',
    beadsFace: shape.beadsFace ?? 'away',
  };
}
