import { arc } from '../../lines.js';
import type { Spot } from '../../lines.js';
import { cornerOf, hingesOf } from './measures.js';
import type { Frame } from './measures.js';

/** The rail from its left hinge over the top to the right one; hinges on y = 0, millimetres. */
export function railLine(frame: Frame): Spot[] {
  const { kind, widthMm, heightMm } = frame;
  const half = widthMm / 2;
  if (kind === 'squared') {
    const corner = cornerOf(frame);
    return [
      [-half, 0],
      ...arc([-half + corner, corner - heightMm], corner, 180, 270),
      ...arc([half - corner, corner - heightMm], corner, 270, 360),
      [half, 0],
    ];
  }
  if (kind === 'half-round') return arc([0, 0], [half, heightMm], 180, 360);
  const below = Math.sqrt(1 - Math.min(1, hingesOf(frame) / widthMm) ** 2);
  const other = heightMm / (1 + below);
  const sink = (Math.asin(below) * 180) / Math.PI;
  return arc([0, -below * other], [half, other], 180 - sink, 360 + sink);
}

/** The panel below the hinges: an arc as long as the seam from one hinge to the other. */
export function bellyLine(hingesMm: number, seamMm: number): Spot[] {
  // Half the angle of an arc of that length over that chord, by halving.
  let [low, high] = [1e-6, Math.PI - 1e-6];
  for (let k = 0; k < 60; k++) {
    const half = (low + high) / 2;
    if (Math.sin(half) / half > hingesMm / seamMm) low = half;
    else high = half;
  }
  const radius = seamMm / (2 * low);
  const degrees = (low * 180) / Math.PI;
  return arc([0, -radius * Math.cos(low)], radius, 90 - degrees, 90 + degrees);
}
