import { solve } from './equations.js';

/** A plane seen in perspective: 8 numbers, the ninth is 1. */
export type Homography = Float64Array;
/** A point of a plane or a picture: x and y. */
export type Point = readonly [number, number];

/**
 * The perspective that takes four points to four others, by Gaussian elimination with pivots on the
 * eight linear equations (Hartley and Zisserman, Multiple View Geometry, 2nd ed., 4.1).
 *
 * @returns undefined when three of the points lie on a line
 */
export function homographyOf(from: readonly Point[], to: readonly Point[]): Homography | undefined {
  const rows: number[][] = [];
  for (let n = 0; n < 4; n++) {
    const [x, y] = from[n];
    const [u, v] = to[n];
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y, u], [0, 0, 0, x, y, 1, -v * x, -v * y, v]);
  }
  return solve(rows);
}

/** Where a point of the plane is seen. */
export function seenAt(h: Homography, x: number, y: number): [number, number] {
  const w = h[6] * x + h[7] * y + 1;
  return [(h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w];
}

/** How the plane is stretched around a point: du/dx, du/dy, dv/dx, dv/dy. */
export function stretchAt(
  h: Homography,
  x: number,
  y: number,
): [ux: number, uy: number, vx: number, vy: number] {
  const w = h[6] * x + h[7] * y + 1;
  const [u, v] = seenAt(h, x, y);
  return [
    (h[0] - h[6] * u) / w,
    (h[1] - h[7] * u) / w,
    (h[3] - h[6] * v) / w,
    (h[4] - h[7] * v) / w,
  ];
}
