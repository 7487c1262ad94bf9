import type { Shape } from './shape.js';

/** A place on the panel before start and direction are applied. */
export interface Spoke {
  /** Angle from the first wedge line, with the work, radians. */
  angle: number;
  /** Distance from the centre, millimetres. */
  distance: number;
  /** Angle of the outward normal of the side it lies on; the angle itself on a circle. */
  normal: number;
}

/**
 * The point at fraction u (0 to 1) of one turn around a round at distance rho.
 * Circle: simply angle 2πu. Polygon: the point at that fraction of the N-gon with apothem rho and
 * corners at the angles 2πk/N.
 */
export function spokeAt(shape: Pick<Shape, 'wedges' | 'outline'>, u: number, rho: number): Spoke {
  const { wedges, outline } = shape;
  if (outline === 'circle') {
    const angle = 2 * Math.PI * u;
    return { angle, distance: rho, normal: angle };
  }
  const side = Math.min(wedges - 1, Math.floor(u * wedges));
  const along = (u * wedges - side - 0.5) * 2 * rho * Math.tan(Math.PI / wedges);
  const normal = ((side + 0.5) * 2 * Math.PI) / wedges;
  return { angle: normal + Math.atan2(along, rho), distance: Math.hypot(rho, along), normal };
}

/** `turn` at any place s along the rounds, straight between whole rounds; 0 before round 1. */
export function turnBetween(turns: Float64Array, s: number): number {
  if (s <= 1) return 0;
  const r = Math.min(turns.length - 2, Math.floor(s));
  return turns[r] + (s - r) * (turns[r + 1] - turns[r]);
}
