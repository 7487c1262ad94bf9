import type { ShapeWish } from '../../../core/panel/shape.js';
import type { Swatch } from '../../../core/swatch/swatch.js';

/** What a swatch says of the shape. */
export function swatchShape(swatch: Swatch | undefined): Partial<ShapeWish> {
  if (!swatch) return {};
  const { stitchWidthMm, roundHeightMm, lean } = swatch;
  return {
    ...(stitchWidthMm && { stitchWidthMm: stitchWidthMm.value }),
    ...(roundHeightMm && { roundHeightMm: roundHeightMm.value }),
    ...(lean && { lean: lean.value }),
  };
}
