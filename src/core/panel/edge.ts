import { mm } from '../units.js';
import type { Millimetres } from '../units.js';
import type { Shape } from './shape.js';
import { faceAngle, turnOf } from './geometry.js';
import type { PanelGeometry } from './geometry.js';
import { spokeAt } from './spoke.js';

/** Points per full turn: on a circle 100 mm across the chords leave two micrometres out. */
const pointsPerTurn = 360;

/** What the lines between rounds are drawn from. */
export type EdgeGeometry = Pick<PanelGeometry, 'shape' | 'startDegrees' | 'direction' | 'turns'>;

/**
 * The line between round r and round r+1 as one open turn from the start mark, x, y pairs in
 * millimetres on the bead face: the ring h·(r+0.5) when joined, h·(r+u) climbing with a spiral.
 */
export function ringLine(geometry: EdgeGeometry, r: number, points = pointsPerTurn): Float64Array {
  const line = new Float64Array(2 * (points + 1));
  for (let p = 0; p <= points; p++) line.set(edgePoint(geometry, r, p / points), 2 * p);
  return line;
}

/**
 * A place on the line between round r and round r+1, millimetres on the bead face.
 *
 * @param u fraction of the turn from the start mark, 0 to 1
 */
export function edgePoint(
  { shape, startDegrees, direction, turns }: EdgeGeometry,
  r: number,
  u: number,
): [x: number, y: number] {
  const rho = shape.roundHeightMm * (shape.construction === 'joined' ? r + 0.5 : r + u);
  const spoke = spokeAt(shape, u, rho);
  const place = { startDegrees, direction, wedges: shape.wedges };
  const angle = faceAngle(place, spoke.angle, turnOf(shape, turns, r, u));
  return [spoke.distance * Math.sin(angle), -spoke.distance * Math.cos(angle)];
}

/**
 * The finished edge of the panel as a closed ring of x, y pairs in millimetres, seen from the
 * centre in order of angle. A spiral ends in a step at the start mark; where turn makes its end
 * overlap its beginning, the later stitches win.
 */
export function finishedEdge(geometry: EdgeGeometry): Float64Array {
  const { shape, direction, turns } = geometry;
  const R = shape.rounds;
  const points = pointsPerTurn - (pointsPerTurn % shape.wedges);
  const line = ringLine(geometry, R, points);
  if (shape.construction === 'joined') return line.subarray(0, 2 * points);
  // Angle swept by one turn of the spiral, in turns; above 1 where the end overlaps the beginning.
  const swept = 1 + (turnOf(shape, turns, R, 1) - turnOf(shape, turns, R, 0)) / shape.wedges;
  if (swept <= 1) return line;
  const kept: number[] = [];
  const end = Math.atan2(line[2 * points], -line[2 * points + 1]);
  let passed = false;
  for (let p = 0; p <= points; p++) {
    const x = line[2 * p];
    const y = line[2 * p + 1];
    const ahead = normalised(direction * (Math.atan2(x, -y) - end));
    passed ||= ahead > 0 && ahead < Math.PI;
    if (passed) kept.push(x, y);
  }
  return Float64Array.from(kept);
}

/** An angle brought to -π..π. */
function normalised(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** Radius of the small hole that stays at the centre: half a round. */
export function holeRadius(shape: Pick<Shape, 'roundHeightMm'>): Millimetres {
  return mm(shape.roundHeightMm / 2);
}

/** Distance from the centre to the outline's corners (its radius, for a circle). */
export function cornerRadius(shape: Shape): Millimetres {
  const edge = shape.roundHeightMm * (shape.rounds + 0.5);
  return mm(shape.outline === 'circle' ? edge : edge / Math.cos(Math.PI / shape.wedges));
}

/**
 * The widest place over the edge h·(R+0.5): the diameter of a circle; of an N-gon its longest
 * diagonal, 2·Rc for even N and 2·Rc·cos(π/2N) for odd N.
 */
export function acrossMm(shape: Shape): Millimetres {
  const corner = cornerRadius(shape);
  const odd = shape.outline === 'polygon' && shape.wedges % 2 === 1;
  return mm(2 * corner * (odd ? Math.cos(Math.PI / (2 * shape.wedges)) : 1));
}
