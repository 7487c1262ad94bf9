import type { Picture } from '../picture.js';
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
