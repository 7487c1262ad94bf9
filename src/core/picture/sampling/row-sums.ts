import { srgbToLinear } from '../../colour/srgb.js';
import { rememberedFor } from '../../remember.js';
import type { Picture } from '../picture.js';
import { isOpaque } from '../picture.js';
import { fromSecondTime } from './second-time.js';

/** Pixels of a row up to which its sums are exact: light is a multiple of 2^-40 of at most 1. */
const mostExactPx = 8192;

/*
 * Running sums of light along each row of a picture: at 3·(y·(width + 1) + x) + c that of channel c
 * of the x pixels before x. Every number is exact, so that a difference of two is the same as
 * adding up pixel by pixel.
 */

/** Whether no pixel lets anything through; looked at once for the same pixels. */
export const isKnownOpaque = rememberedFor(isOpaque);

const sumsOfLight = fromSecondTime(({ width, height, data }): Float64Array => {
  const sums = new Float64Array(3 * (width + 1) * height);
  let at = 0;
  let from = 0;
  for (let y = 0; y < height; y++) {
    let r = 0;
    let g = 0;
    let b = 0;
    at += 3;
    for (let x = 0; x < width; x++, at += 3, from += 4) {
      sums[at] = r += srgbToLinear[data[from]];
      sums[at + 1] = g += srgbToLinear[data[from + 1]];
      sums[at + 2] = b += srgbToLinear[data[from + 2]];
    }
  }
  return sums;
});

/** Row sums of linear red, green and blue of an opaque picture, where they are worth having. */
export const lightSums = (picture: Picture): Float64Array | undefined =>
  picture.width <= mostExactPx && isKnownOpaque(picture.data) ? sumsOfLight(picture) : undefined;
