import { cornerRadius, finishedEdge } from '../geometry/edge.js';
import type { PanelGeometry } from '../geometry/panel.js';
import type { Place } from '../pattern/schema.js';
import { clippedScale, rotation } from './plane.js';
import { placeOnWedge } from './repeat.js';
import { millionth } from '../units.js';

/** The panel that a picture is laid on. */
export type PlaceTarget = PanelGeometry;

/** How a picture shall lie; zoom multiplies what `place` gives, then it is shifted. */
export interface PlaceWish {
  /**
   * fit: the picture's longer side spans the circle through the outline's corners; fill: its
   * shorter side does; inside: its whole rectangle, as rotated, lies inside the finished edge.
   */
  place: 'fit' | 'fill' | 'inside';
  /** Default 1. */
  zoom?: number;
  /** To the right, millimetres. */
  shiftXmm?: number;
  /** Down, millimetres. */
  shiftYmm?: number;
  /** Clockwise on the bead face. */
  rotateDegrees?: number;
  /** Left and right changed over, before rotating. */
  mirror?: boolean;
  /** One picture in every wedge (see repeat.ts). */
  repeat?: boolean;
}

/** Where the upright picture lies on the bead face. */
export function placePicture(
  picture: { width: number; height: number },
  target: PlaceTarget,
  wish: PlaceWish,
): Place {
  const rotateDegrees = wish.rotateDegrees ?? 0;
  const base = wish.repeat
    ? placeOnWedge(picture, target.shape, wish.place, rotateDegrees)
    : { mmPerPixel: scaleOnPanel(picture, target, wish.place, rotateDegrees), centreYmm: 0 };
  return {
    mmPerPixel: clippedScale(base.mmPerPixel * (wish.zoom ?? 1)),
    centreXmm: millionth(wish.shiftXmm ?? 0),
    centreYmm: millionth(base.centreYmm + (wish.shiftYmm ?? 0)),
    rotateDegrees,
    mirror: wish.mirror ?? false,
    ...(wish.repeat ? { repeat: true } : {}),
  };
}

function scaleOnPanel(
  picture: { width: number; height: number },
  target: PlaceTarget,
  how: PlaceWish['place'],
  rotateDegrees: number,
): number {
  if (how === 'inside') return scaleInsideRing(picture, finishedEdge(target), rotateDegrees);
  const diameter = 2 * cornerRadius(target.shape);
  const side = how === 'fit' ? Math.max : Math.min;
  return diameter / side(picture.width, picture.height);
}

/**
 * The largest scale at which a rectangle, centred at the origin and rotated clockwise, lies inside
 * a ring that is seen whole from the origin. Both boundaries are straight between their corners,
 * so the tightest place is a corner of one or the other.
 *
 * @param ring x, y pairs, millimetres
 * @returns millimetres per unit of the rectangle
 */
export function scaleInsideRing(
  size: { width: number; height: number },
  ring: Float64Array,
  rotateDegrees: number,
): number {
  const { cos, sin } = rotation(rotateDegrees);
  const halfWidth = size.width / 2;
  const halfHeight = size.height / 2;
  const n = ring.length;
  let scale = Infinity;
  for (let p = 0; p < n; p += 2) {
    const x = Math.abs(cos * ring[p] + sin * ring[p + 1]);
    const y = Math.abs(cos * ring[p + 1] - sin * ring[p]);
    scale = Math.min(scale, Math.max(x / halfWidth, y / halfHeight));
  }
  for (const [sx, sy] of [
    [1, 1],
    [1, -1],
    [-1, 1],
    [-1, -1],
  ]) {
    const cx = cos * sx * halfWidth - sin * sy * halfHeight;
    const cy = sin * sx * halfWidth + cos * sy * halfHeight;
    for (let p = 0; p < n; p += 2) {
      scale = Math.min(scale, alongRay(cx, cy, ring, p));
    }
  }
  return scale;
}

/** How many times (cx, cy) the ray through it goes before it meets the ring's side at p. */
function alongRay(cx: number, cy: number, ring: Float64Array, p: number): number {
  const q = (p + 2) % ring.length;
  const from = cx * ring[p + 1] - cy * ring[p];
  const to = cx * ring[q + 1] - cy * ring[q];
  if (from === to || from < 0 === to < 0) return Infinity;
  const t = from / (from - to);
  const x = ring[p] + t * (ring[q] - ring[p]);
  const y = ring[p + 1] + t * (ring[q + 1] - ring[p + 1]);
  const along = (x * cx + y * cy) / (cx * cx + cy * cy);
  return along > 0 ? along : Infinity;
}

/**
 * The affine map from the bead face (for a repeat: from the wedge, rim up) to the picture's
 * pixels, as the six numbers a, b, c, d, e, f: x' = a·x + c·y + e, y' = b·x + d·y + f. Pixel (0, 0)
 * covers 0 to 1.
 */
export function panelToPicture(
  place: Place,
  picture: { width: number; height: number },
): readonly [number, number, number, number, number, number] {
  const { cos, sin } = rotation(place.rotateDegrees);
  const perMm = 1 / place.mmPerPixel;
  const across = place.mirror ? -perMm : perMm;
  const a = cos * across;
  const c = sin * across;
  const b = -sin * perMm;
  const d = cos * perMm;
  const { centreXmm: x, centreYmm: y } = place;
  return [a, b, c, d, picture.width / 2 - a * x - c * y, picture.height / 2 - b * x - d * y];
}
