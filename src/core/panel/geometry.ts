import { directionOf, stitchCount } from './shape.js';
import type { Shape } from './shape.js';
import { spokeAt, turnBetween } from './spoke.js';
import { defaultStartDegrees, turnsInWedges } from './turn.js';
import { millionth } from '../units.js';

/** Where every stitch of a panel lies, on the bead face; x right, y down, origin at the centre. */
export interface PanelGeometry {
  /** The shape that is laid out. */
  readonly shape: Shape;
  /** Face angle of the first wedge line of round 1, degrees clockwise from 12 o'clock. */
  readonly startDegrees: number;
  /** +1 when work runs clockwise on the bead face. */
  readonly direction: 1 | -1;
  /** Number of stitches, N·R(R+1)/2. */
  readonly count: number;
  /** x, y of each stitch in working order, millimetres, rounded to 1e-6; length 2·count. */
  readonly centres: Float64Array;
  /** How each stitch is turned: face angle of its outward side, radians clockwise; by stitch. */
  readonly tilts: Float64Array;
  /** turn by round, in wedge angles, 0 to R+1. */
  readonly turns: Float64Array;
}

/** Settings of `panelGeometry` besides the shape. */
export interface GeometryOptions {
  /** Default: rim step or wedge line at 12 o'clock. */
  startDegrees?: number;
  /** true: leave turn out, as a chart drawn without lean would; only to show what lean does. */
  withoutTurn?: boolean;
}

/**
 * Lays out every stitch of a panel.
 *
 * In a spiral the distance grows steadily along the round (its middle lies at h·r) and turn runs
 * straight between the middles of rounds; joined rounds are exact rings.
 *
 * @param shape a whole shape (see `completeShape`)
 */
export function panelGeometry(shape: Shape, options: GeometryOptions = {}): PanelGeometry {
  const direction = directionOf(shape);
  const startDegrees = options.startDegrees ?? defaultStartDegrees(shape, direction);
  const turns = turnsInWedges(shape);
  if (options.withoutTurn) turns.fill(0);
  const count = stitchCount(shape);
  const centres = new Float64Array(2 * count);
  const tilts = new Float64Array(count);
  let s = 0;
  for (let r = 1; r <= shape.rounds; r++) {
    const inRound = shape.wedges * r;
    for (let i = 0; i < inRound; i++, s++) {
      const u = (i + 0.5) / inRound;
      const spoke = spokeAt(shape, u, distanceOf(shape, r, u));
      const place = { startDegrees, direction, wedges: shape.wedges };
      const tau = turnOf(shape, turns, r, u);
      const angle = faceAngle(place, spoke.angle, tau);
      centres[2 * s] = millionth(spoke.distance * Math.sin(angle));
      centres[2 * s + 1] = millionth(-spoke.distance * Math.cos(angle));
      tilts[s] = faceAngle(place, spoke.normal, tau);
    }
  }
  return { shape, startDegrees, direction, count, centres, tilts, turns };
}

/** Distance of a stitch from the centre (for a polygon: the apothem of its side), millimetres. */
export function distanceOf(
  shape: Pick<Shape, 'construction' | 'roundHeightMm'>,
  r: number,
  u: number,
): number {
  const h = shape.roundHeightMm;
  return shape.construction === 'joined' || r === 1 ? h * r : h * (r - 0.5 + u);
}

/** Turn at fraction u of round r, in wedge angles. */
export function turnOf(
  shape: Pick<Shape, 'construction'>,
  turns: Float64Array,
  r: number,
  u: number,
): number {
  return shape.construction === 'joined' ? turns[r] : turnBetween(turns, r - 0.5 + u);
}

/** Start, direction and turn applied: radians clockwise from 12 o'clock on the bead face. */
export function faceAngle(
  place: { startDegrees: number; direction: 1 | -1; wedges: number },
  angle: number,
  turnInWedges: number,
): number {
  const start = (place.startDegrees * Math.PI) / 180;
  return start + place.direction * (angle + (turnInWedges * 2 * Math.PI) / place.wedges);
}
