import type { Curve, CurvePiece } from '../../pages/surface/curve.js';

type Point = readonly [x: number, y: number];

/**
 * A convex polygon grown by a disc (their Minkowski sum): straight sides joined by arcs of the
 * disc's radius. A circle is one point and a radius, a sharp polygon has radius 0. Every outline
 * of a lining is one, so that an offset is exact: it only changes the radius.
 */
export interface SoftOutline {
  /** Corners in clockwise order on the page (y points down), millimetres; one or at least three. */
  readonly corners: readonly (readonly [x: number, y: number])[];
  /** How far round the corners the outline runs. */
  readonly radiusMm: number;
}

/** A spot on an outline and the direction straight out of it. */
export interface OutlineSpot {
  /** Millimetres to the right of the middle. */
  readonly x: number;
  /** Millimetres below the middle. */
  readonly y: number;
  /** Unit vector out of the cloth. */
  readonly outX: number;
  /** The same downward. */
  readonly outY: number;
}

/** Grown by the same length in every direction: its support function grows by exactly that. */
export function grown({ corners, radiusMm }: SoftOutline, by: number): SoftOutline {
  return { corners, radiusMm: radiusMm + by };
}

/** Support function: how far an outline reaches in a direction (radians, 0 to the right, y down). */
export function support({ corners, radiusMm }: SoftOutline, angle: number): number {
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  return Math.max(...corners.map(([x, y]) => x * ux + y * uy)) + radiusMm;
}

/** Whether a point lies inside, at least this far from the edge; good enough to set words by. */
export function holds(outline: SoftOutline, x: number, y: number, marginMm: number): boolean {
  for (let degree = 0; degree < 360; degree += 2) {
    const angle = (degree * Math.PI) / 180;
    const reach = x * Math.cos(angle) + y * Math.sin(angle);
    if (reach > support(outline, angle) - marginMm) return false;
  }
  return true;
}

/** The widest place: the greatest distance of two points of an outline. */
export function widestMm({ corners, radiusMm }: SoftOutline): number {
  let widest = 0;
  for (const [ax, ay] of corners)
    for (const [bx, by] of corners) widest = Math.max(widest, Math.hypot(ax - bx, ay - by));
  return widest + 2 * radiusMm;
}

/** Length of an outline: the polygon's sides and one full turn of the disc. */
export function lengthOfOutline({ corners, radiusMm }: SoftOutline): number {
  const sides = corners.reduce((sum, [x, y], k) => {
    const [nx, ny] = corners[(k + 1) % corners.length];
    return sum + Math.hypot(nx - x, ny - y);
  }, 0);
  return sides + 2 * Math.PI * radiusMm;
}

/** An outline as straight pieces and arcs, clockwise on the page. */
export function outlineCurve({ corners, radiusMm: radius }: SoftOutline): Curve {
  const n = corners.length;
  if (n === 1) {
    const [cx, cy] = corners[0];
    const top: Point = [cx, cy - radius];
    const arc = { centre: corners[0], radiusMm: radius, sweep: 2 * Math.PI };
    return { start: top, pieces: [{ to: top, arc }] };
  }
  const pieces: CurvePiece[] = [];
  for (let k = 0; k < n; k++) {
    const centre = corners[(k + 1) % n];
    const out = outOfSide(corners, k);
    const next = outOfSide(corners, (k + 1) % n);
    pieces.push({ to: [centre[0] + radius * out[0], centre[1] + radius * out[1]] });
    if (radius === 0) continue;
    const sweep = Math.atan2(
      out[0] * next[1] - out[1] * next[0],
      out[0] * next[0] + out[1] * next[1],
    );
    const to: Point = [centre[0] + radius * next[0], centre[1] + radius * next[1]];
    pieces.push({ to, arc: { centre, radiusMm: radius, sweep } });
  }
  const out = outOfSide(corners, 0);
  const [x, y] = corners[0];
  return { start: [x + radius * out[0], y + radius * out[1]], pieces };
}

/**
 * The spot that lies a length along the outline, clockwise from where the line straight up from
 * the origin meets it; the origin lies inside.
 */
export function spotFromTop(outline: SoftOutline, alongMm: number): OutlineSpot {
  const { start, pieces } = outlineCurve(outline);
  const whole = lengthOfOutline(outline);
  const first = Math.atan2(start[0], -start[1]);
  // Seen from the origin the angle only ever grows along a convex outline: halve until found.
  let [low, high] = [0, whole];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    const { x, y } = spotAlong(outline, pieces, start, middle);
    if (turnTo(Math.atan2(x, -y) - first) < turnTo(-first)) low = middle;
    else high = middle;
  }
  const along = (((low + alongMm) % whole) + whole) % whole;
  return spotAlong(outline, pieces, start, along);
}

function spotAlong(
  { corners, radiusMm: radius }: SoftOutline,
  pieces: readonly CurvePiece[],
  start: Point,
  along: number,
): OutlineSpot {
  let from = start;
  let left = along;
  for (const [k, { to, arc }] of pieces.entries()) {
    const length = arc ? radius * arc.sweep : Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (left <= length || k === pieces.length - 1) {
      const share = length === 0 ? 0 : Math.min(1, left / length);
      if (arc) {
        const [cx, cy] = arc.centre;
        const angle = Math.atan2(from[1] - cy, from[0] - cx) + share * arc.sweep;
        const [outX, outY] = [Math.cos(angle), Math.sin(angle)];
        return { x: cx + radius * outX, y: cy + radius * outY, outX, outY };
      }
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const side = radius === 0 ? k : k / 2;
      const [outX, outY] = outOfSide(corners, side);
      return { x: from[0] + share * dx, y: from[1] + share * dy, outX, outY };
    }
    left -= length;
    from = to;
  }
  throw new RangeError('an outline without pieces');
}

/** Unit vector out of side k of a clockwise polygon. */
function outOfSide(corners: readonly Point[], k: number): Point {
  const [ax, ay] = corners[k];
  const [bx, by] = corners[(k + 1) % corners.length];
  const length = Math.hypot(bx - ax, by - ay);
  return [(by - ay) / length, -(bx - ax) / length];
}

/** An angle brought to 0 up to a whole turn. */
function turnTo(angle: number): number {
  const turn = 2 * Math.PI;
  return ((angle % turn) + turn) % turn;
}
