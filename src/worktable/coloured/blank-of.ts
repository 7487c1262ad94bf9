import { blankOfShape, blankPattern } from '../../core/blank/blank-pattern.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { patternWithSwatch } from '../../core/pattern/with-swatch.js';
import type { Piece } from '../store/piece.js';
import { inOrder } from '../engine/panel-wish.js';
import { swatchShape } from '../steps/panel/swatch-shape.js';

/** The empty chart of a piece, as `rondure blank` makes it of the same shape. */
export function blankOf(piece: Piece): Pattern {
  const { title, picture, opened, wish, swatch, palette } = piece;
  if (!picture && opened) {
    const { shape } = opened;
    const { startDegrees } = opened.panels[0];
    return patternWithSwatch(blankOfShape(title, shape, startDegrees), opened.swatch);
  }
  const { shape, acrossMm, startDegrees } = wish;
  const worked = { ...shape, ...swatchShape(swatch), beadDiameterMm: palette.diameterMm };
  const made = blankPattern({
    title,
    shape: inOrder(worked),
    ...(acrossMm !== undefined && { acrossMm }),
    ...(startDegrees !== undefined && { startDegrees }),
  });
  return patternWithSwatch(made, swatch);
}
