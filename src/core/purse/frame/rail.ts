import { millionth } from '../../units.js';
import { ellipseArc } from './elliptic.js';
import { cornerOf, hingesOf } from './measures.js';
import type { FrameMeasures } from './measures.js';

/**
 * Length of one rail of a purse frame from hinge to hinge, millimetres: the line into which the
 * rim of one panel is sewn or glued, seen flat from the front.
 *
 * - `half-round`: the upper half of an ellipse whose hinges lie `widthMm` apart and whose top lies
 *   `heightMm` above the line between them; half a circle where the height is half the width.
 * - `squared`: from each hinge straight up, a quarter circle of the corner radius, and straight
 *   across; `widthMm` wide, `heightMm` high.
 * - `oval`: an arc of an ellipse that is `widthMm` wide at its widest, bends in again below it and
 *   ends at hinges `hingeWidthMm` apart; its top lies `heightMm` above the line between them.
 */
export function railLengthMm(frame: FrameMeasures): number {
  const { kind, widthMm, heightMm } = frame;
  const half = widthMm / 2;
  if (kind === 'squared') {
    const corner = cornerOf(frame);
    const straight = 2 * (heightMm - corner) + (widthMm - 2 * corner);
    return millionth(straight + Math.PI * corner);
  }
  if (kind === 'half-round') return millionth(2 * ellipseArc(half, heightMm, Math.PI / 2));
  const share = Math.min(1, hingesOf(frame) / widthMm);
  // The hinges lie this share of the other half-axis below the widest place.
  const below = Math.sqrt(1 - share * share);
  const other = heightMm / (1 + below);
  return millionth(2 * ellipseArc(half, other, Math.PI - Math.asin(share)));
}
