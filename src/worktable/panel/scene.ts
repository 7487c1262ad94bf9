import { cornerRadius } from '../../core/panel/edge.js';
import type { Shape } from '../../core/panel/shape.js';
import type { View } from '../store/view.js';

/** From the bead face to the screen and back; pixels are CSS pixels of the panel's canvas. */
export interface Scene {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerMm: number;
  /** Whether the bead face is seen as in a mirror, left for right. */
  readonly mirrored: boolean;
  toFace(xPx: number, yPx: number): { xMm: number; yMm: number };
  /** Sets a drawing context to millimetres of the bead face. */
  apply(context: CanvasRenderingContext2D, dotsPerPx: number): void;
}

/** Share of the shorter side that the panel spans, so that its shadow and handles have room. */
const span = 0.86;

/** How far a panel reaches from its centre, millimetres. */
export function reachMm(shape: Shape): number {
  const step = shape.construction === 'spiral' ? shape.roundHeightMm / 2 : 0;
  return cornerRadius(shape) + step;
}

export function sceneOf(
  shape: Shape,
  view: Pick<View, 'turnDegrees' | 'zoom' | 'panXmm' | 'panYmm'>,
  widthPx: number,
  heightPx: number,
  mirrored = false,
): Scene {
  const pxPerMm = ((Math.min(widthPx, heightPx) * span) / (2 * reachMm(shape))) * view.zoom;
  const turn = (view.turnDegrees * Math.PI) / 180;
  const side = mirrored ? -1 : 1;
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return {
    widthPx,
    heightPx,
    pxPerMm,
    mirrored,
    toFace(xPx, yPx) {
      const x = (xPx - widthPx / 2) / pxPerMm + view.panXmm;
      const y = (yPx - heightPx / 2) / pxPerMm + view.panYmm;
      return { xMm: side * (cos * x + sin * y), yMm: cos * y - sin * x };
    },
    apply(context, dots) {
      const k = pxPerMm * dots;
      const x = (widthPx / 2) * dots - view.panXmm * k;
      const y = (heightPx / 2) * dots - view.panYmm * k;
      context.setTransform(side * k * cos, side * k * sin, -k * sin, k * cos, x, y);
    },
  };
}
