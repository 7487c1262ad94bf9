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

/**
 * Whether the pixels of a window of a picture, which is not empty, are all the same, and opaque or clear.
 *
 * @param runs of that picture
 */
export function sameInWindow(
  { width, data }: Pick<Picture, 'width' | 'data'>,
  runs: Uint16Array,
  { left, top, columns, rows }: Window,
): boolean {
  const first = top * width + left;
  const alpha = data[4 * first + 3];
  // What shows through in part is added up piece by piece, to the last bit.
  if (alpha !== 255 && alpha !== 0) return false;
  // Where a footprint holds two colours, its middle row mostly shows it.
  if (runs[first + (rows >> 1) * width] < columns) return false;
  for (let row = 0, at = first; row < rows; row++, at += width) {
    if (runs[at] < columns || !samePixel(data, first, at)) return false;
  }
  return true;
}
