import type { Picture } from '../picture.js';
import type { Window } from './coverage.js';
import { fromSecondTime } from './second-time.js';

/** Whether two pixels of RGBA data are the same. */
export function samePixel(data: Picture['data'], p: number, q: number): boolean {
  const [at, to] = [4 * p, 4 * q];
  return (
    data[at] === data[to] &&
    data[at + 1] === data[to + 1] &&
    data[at + 2] === data[to + 2] &&
    data[at + 3] === data[to + 3]
  );
}

/**
 * How many pixels, itself counted, are the same from each pixel on, over the ends of rows too and
 * 65,535 at most; where it is worth having.
 */
export const pixelRuns = fromSecondTime(({ data }): Uint16Array => {
  const runs = new Uint16Array(data.length / 4).fill(1);
  for (let p = runs.length - 2; p >= 0; p--) {
    if (runs[p + 1] < 65_535 && samePixel(data, p, p + 1)) runs[p] = runs[p + 1] + 1;
  }
  return runs;
});

const mostSide = 255;

/**
 * How many pixels the largest square is across that begins at each pixel, to the right and down, and in
 * which all are the same, 255 at most; where it is worth having.
 */
export const pixelSquares = fromSecondTime(({ width, height, data }): Uint8Array => {
  const sides = new Uint8Array(width * height).fill(1);
  for (let y = height - 2; y >= 0; y--) {
    for (let p = y * width + width - 2; p >= y * width; p--) {
      const below = p + width;
      if (!samePixel(data, p, p + 1) || !samePixel(data, p, below)) continue;
      const least = Math.min(sides[p + 1], sides[below], sides[below + 1]);
      // A larger square beside or below it holds the pixel between them.
      if (least > 1 || samePixel(data, p, below + 1)) sides[p] = Math.min(mostSide, least + 1);
    }
  }
  return sides;
});

/**
 * Whether the pixels of a window of a picture, which is not empty, are all the same, and opaque or clear.
 *
 * @param squares of that picture
 */
export function sameInWindow(
  { width, data }: Pick<Picture, 'width' | 'data'>,
  squares: Uint8Array,
  { left, top, columns, rows }: Window,
): boolean {
  const first = top * width + left;
  const alpha = data[4 * first + 3];
  // What shows through in part is added up piece by piece, to the last bit.
  if (alpha !== 255 && alpha !== 0) return false;
  const side = Math.min(columns, rows, mostSide);
  const lastX = columns - side;
  const lastY = rows - side;
  if (side === 1) {
    for (let p = first + lastX; p > first; p--) if (!samePixel(data, first, p)) return false;
    for (let y = lastY; y > 0; y--) if (!samePixel(data, first, first + y * width)) return false;
    return true;
  }
  // The window in squares that overlap by a row or a column at least.
  for (let y = 0; ; y = Math.min(y + side - 1, lastY)) {
    for (let x = 0; ; x = Math.min(x + side - 1, lastX)) {
      if (squares[first + y * width + x] < side) return false;
      if (x === lastX) break;
    }
    if (y === lastY) break;
  }
  return true;
}
