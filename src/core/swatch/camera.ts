import { solve } from '../equations.js';
import { homographyOf } from '../homography.js';
import type { Point } from '../homography.js';

/**
 * How a flat panel is seen on a photograph. `straight`: from above, so that it is only moved,
 * turned and enlarged (4 numbers); `perspective`: from anywhere (8 numbers).
 */
export type Camera = 'straight' | 'perspective';

/** Where a point of the panel is seen, pixels. */
export function seenBy(camera: Camera, p: ArrayLike<number>, [x, y]: Point): [number, number] {
  if (camera === 'straight') return [p[0] * x - p[1] * y + p[2], p[1] * x + p[0] * y + p[3]];
  const w = p[6] * x + p[7] * y + 1;
  return [(p[0] * x + p[1] * y + p[2]) / w, (p[3] * x + p[4] * y + p[5]) / w];
}

/** Which point of the panel is seen at a pixel: two equations in x and y. */
export function panelPoint(camera: Camera, p: ArrayLike<number>, [u, v]: Point): Point | undefined {
  const rows =
    camera === 'straight'
      ? [
          [p[0], -p[1], u - p[2]],
          [p[1], p[0], v - p[3]],
        ]
      : [
          [p[0] - u * p[6], p[1] - u * p[7], u - p[2]],
          [p[3] - v * p[6], p[4] - v * p[7], v - p[5]],
        ];
  const found = solve(rows);
  return found && [found[0], found[1]];
}

/** A first guess of a camera from points of the panel and where they are seen. */
export function firstCamera(
  camera: Camera,
  from: readonly Point[],
  to: readonly Point[],
): Float64Array | undefined {
  if (camera === 'perspective') return homographyOf(from, to);
  const [[x, y], [farX, farY]] = from;
  const [[u, v], [farU, farV]] = to;
  const [dx, dy, du, dv] = [farX - x, farY - y, farU - u, farV - v];
  const square = dx * dx + dy * dy;
  if (!(square > 0)) return undefined;
  const a = (du * dx + dv * dy) / square;
  const b = (dv * dx - du * dy) / square;
  return Float64Array.of(a, b, u - a * x + b * y, v - b * x - a * y);
}
