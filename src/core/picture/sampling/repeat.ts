import type { Shape } from '../../panel/shape.js';
import { rotation } from './plane.js';

/*
 * A repeated picture lies on one wedge as the wedge chart shows it: an ideal triangle, rim up, in
 * which round r is a row of r cells, each a stitch wide and a round high. The apex cell of round 1
 * is centred at (0, -h), the panel's centre at the origin, x right, y down.
 */

/** Number of cells in a wedge. */
export const cellsInWedge = (rounds: number): number => (rounds * (rounds + 1)) / 2;

/** Number of the cell with place j in round r: r(r-1)/2 + j. */
export const cellOf = (r: number, j: number): number => (r * (r - 1)) / 2 + j;

/**
 * The cell of place j in round r as a ring of positive area, millimetres. With the work running
 * clockwise a row reads left to right, otherwise right to left.
 */
export function cellRing(shape: Shape, direction: 1 | -1, r: number, j: number): Float64Array {
  const { stitchWidthMm: w, roundHeightMm: h } = shape;
  const x = direction * (j + 0.5 - r / 2) * w;
  const [left, right] = [x - w / 2, x + w / 2];
  const [top, bottom] = [-(r + 0.5) * h, -(r - 0.5) * h];
  return Float64Array.of(left, top, right, top, right, bottom, left, bottom);
}

/** The cells that touch each cell within one wedge, by cell number: two beside it, two above, two below. */
export function neighbourCells(rounds: number): (cell: number) => number[] {
  const near: number[][] = [];
  for (let r = 1; r <= rounds; r++) {
    for (let j = 0; j < r; j++) {
      const around: [number, number][] = [[r - 1, j - 1], [r - 1, j], [r, j - 1], [r, j + 1], [r + 1, j], [r + 1, j + 1]]; // prettier-ignore
      near.push(
        around.filter(([q, k]) => q <= rounds && k >= 0 && k < q).map(([q, k]) => cellOf(q, k)),
      );
    }
  }
  return (cell) => near[cell];
}

/** The colours of one wedge's cells as those of all stitches, in working order. */
export function inEveryWedge(
  { wedges, rounds }: Pick<Shape, 'wedges' | 'rounds'>,
  cells: { linear: Float64Array; covered: Float64Array },
): { linear: Float64Array; covered: Float64Array } {
  const count = wedges * cellsInWedge(rounds);
  const all = { linear: new Float64Array(3 * count), covered: new Float64Array(count) };
  let s = 0;
  for (let r = 1; r <= rounds; r++) {
    for (let i = 0; i < wedges * r; i++, s++) {
      const c = cellOf(r, i % r);
      all.linear.set(cells.linear.subarray(3 * c, 3 * c + 3), 3 * s);
      all.covered[s] = cells.covered[c];
    }
  }
  return all;
}

/**
 * Scale and height of a picture on the triangle of R·w by R·h.
 *
 * - fit: the whole picture, as rotated, inside the box around the triangle, centred in it;
 * - fill: the picture covers that box;
 * - inside: the box around the picture, as rotated, inside the rows of cells themselves, as large
 *   as can be, centred in the rows that it needs.
 */
export function placeOnWedge(
  picture: { width: number; height: number },
  shape: Shape,
  how: 'fit' | 'fill' | 'inside',
  rotateDegrees: number,
): { mmPerPixel: number; centreYmm: number } {
  const { rounds: R, stitchWidthMm: w, roundHeightMm: h } = shape;
  const { cos, sin } = rotation(rotateDegrees);
  const [c, s] = [Math.abs(cos), Math.abs(sin)];
  const width = picture.width * c + picture.height * s;
  const height = picture.width * s + picture.height * c;
  const centreYmm = (-h * (R + 1)) / 2;
  if (how === 'fit') {
    return { mmPerPixel: Math.min((R * w) / width, (R * h) / height), centreYmm };
  }
  if (how === 'fill') {
    const [boxWidth, boxHeight] = [R * w * c + R * h * s, R * w * s + R * h * c];
    const mmPerPixel = Math.max(boxWidth / picture.width, boxHeight / picture.height);
    return { mmPerPixel, centreYmm };
  }
  let best = { mmPerPixel: 0, centreYmm };
  for (let r = 1; r <= R; r++) {
    const mmPerPixel = Math.min((r * w) / width, ((R - r + 1) * h) / height);
    if (mmPerPixel > best.mmPerPixel) best = { mmPerPixel, centreYmm: (-h * (R + r)) / 2 };
  }
  return best;
}
