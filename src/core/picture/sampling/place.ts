import { cornerRadius, finishedEdge } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { laySubject } from './lay-subject.js';
import type { Laid } from './lay-subject.js';
import { clippedScale, rotation } from './plane.js';
import { placeOnWedge } from './repeat.js';
import { millionth } from '../../units.js';

/** The panel that a picture is laid on. */
export type PlaceTarget = PanelGeometry;

/** Where an upright picture lies on the bead face, x right and y down from the panel's centre. */
export interface Place {
  /** What a pixel of the picture, as it was read, measures on the panel, millimetres: above 0. */
  mmPerPixel: number;
  /** The picture's centre, millimetres right of the panel's. */
  centreXmm: number;
  /** The picture's centre, millimetres below the panel's. */
  centreYmm: number;
  /** Clockwise on the bead face. */
  rotateDegrees: number;
  /** Left and right changed over, before rotating. */
  mirror: boolean;
  /** The picture lies on one wedge, rim up, and repeats in every wedge. */
  repeat?: boolean | undefined;
}

/** How a picture shall lie; zoom multiplies what `place` gives, then it is shifted. */
export interface PlaceWish {
  /**
   * subject: what stands on a clear or plain ground is laid as large as it goes inside the rim (see
   * standing/), any other picture as with fill; fit: the picture's longer side spans the circle through the outline's corners; fill: its
   * shorter side does; inside: its whole rectangle, as rotated, lies inside the finished edge.
   */
  place: 'subject' | 'fit' | 'fill' | 'inside';
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

/**
 * Where the upright picture lies on the bead face.
 *
 * @param known what a place `subject` needs: the hull in the picture's pixels, and the stitches that
 *   a frame bares
 */
export function placePicture(
  picture: { width: number; height: number },
  target: PlaceTarget,
  wish: PlaceWish,
  known: { hull?: Float64Array | undefined; bare?: Uint8Array | undefined } = {},
): Place {
  const rotateDegrees = wish.rotateDegrees ?? 0;
  const how = placeWithoutSubject(wish);
  const seen = wish.place === 'subject' && !wish.repeat ? known.hull : undefined;
  const laid = seen && laySubject(turnedHull(seen, picture, wish), target, known.bare);
  const base: Laid =
    laid ??
    (wish.repeat
      ? { centreXmm: 0, ...placeOnWedge(picture, target.shape, how, rotateDegrees) }
      : {
          mmPerPixel: scaleOnPanel(picture, target, how, rotateDegrees),
          centreXmm: 0,
          centreYmm: 0,
        });
  const zoom = wish.zoom ?? 1;
  // A subject grows and shrinks around the panel's centre, as all other pictures do.
  const [x, y] = laid ? [zoom * base.centreXmm, zoom * base.centreYmm] : [0, base.centreYmm];
  return {
    mmPerPixel: clippedScale(base.mmPerPixel * zoom),
    centreXmm: millionth(x + (wish.shiftXmm ?? 0)),
    centreYmm: millionth(y + (wish.shiftYmm ?? 0)),
    rotateDegrees,
    mirror: wish.mirror ?? false,
    ...(wish.repeat ? { repeat: true } : {}),
  };
}

/** How a picture lies whose subject is not told from its ground. */
export function placeWithoutSubject({
  place,
  repeat,
}: Pick<PlaceWish, 'place' | 'repeat'>): 'fit' | 'fill' | 'inside' {
  return place !== 'subject' ? place : repeat ? 'inside' : 'fill';
}

/** A hull from the middle of the picture, mirrored and turned as the picture will be. */
function turnedHull(
  hull: Float64Array,
  { width, height }: { width: number; height: number },
  { rotateDegrees = 0, mirror }: PlaceWish,
): Float64Array {
  const { cos, sin } = rotation(rotateDegrees);
  const turned = new Float64Array(hull.length);
  for (let p = 0; p < hull.length; p += 2) {
    const x = (hull[p] - width / 2) * (mirror ? -1 : 1);
    const y = hull[p + 1] - height / 2;
    turned[p] = cos * x - sin * y;
    turned[p + 1] = sin * x + cos * y;
  }
  return turned;
}

function scaleOnPanel(
  picture: { width: number; height: number },
  target: PlaceTarget,
  how: Exclude<PlaceWish['place'], 'subject'>,
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
