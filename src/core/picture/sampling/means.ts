import { srgbToLinear } from '../../colour/srgb.js';
import type { Picture } from '../picture.js';
import type { Coverage } from './coverage.js';

/** Share of light that each 8-bit alpha lets through; exactly 1 at 255. */
export const visibleShare = Float64Array.from({ length: 256 }, (_, alpha) => alpha / 255);

/**
 * Mean colour under a coverage in linear light, weighted by area and alpha, into `mean` (r, g, b).
 * Summed as differences from the first pixel, so that one colour in is exactly that colour out;
 * wholly covered pixels of a row are added up first, which row sums do at once to the same bit.
 *
 * @param sums of light of the same picture, where it has them
 * @returns area that is visible, pixels; 0 leaves `mean` alone
 */
export function meanUnder(
  { count, pixel, length, area }: Coverage,
  { width, data }: Pick<Picture, 'width' | 'data'>,
  mean: Float64Array,
  sums?: Float64Array,
): number {
  const first = firstVisible(pixel, length, count, data);
  if (first < 0) return 0;
  const r0 = srgbToLinear[data[4 * first]];
  const g0 = srgbToLinear[data[4 * first + 1]];
  const b0 = srgbToLinear[data[4 * first + 2]];
  let visible = 0;
  let r = 0;
  let g = 0;
  let b = 0;
  for (let n = 0; n < count; n++) {
    const pixels = length[n];
    if (pixels === 1) {
      const at = 4 * pixel[n];
      // Only opaque pictures have sums.
      const weight = sums ? area[n] : area[n] * visibleShare[data[at + 3]];
      visible += weight;
      r += weight * (srgbToLinear[data[at]] - r0);
      g += weight * (srgbToLinear[data[at + 1]] - g0);
      b += weight * (srgbToLinear[data[at + 2]] - b0);
      continue;
    }
    if (sums) {
      const from = 3 * (pixel[n] + Math.floor(pixel[n] / width));
      const to = from + 3 * pixels;
      visible += pixels;
      r += sums[to] - sums[from] - pixels * r0;
      g += sums[to + 1] - sums[from + 1] - pixels * g0;
      b += sums[to + 2] - sums[from + 2] - pixels * b0;
      continue;
    }
    let share = 0;
    let red = 0;
    let green = 0;
    let blue = 0;
    const stop = 4 * (pixel[n] + pixels);
    for (let at = 4 * pixel[n]; at < stop; at += 4) {
      const weight = visibleShare[data[at + 3]];
      share += weight;
      red += weight * (srgbToLinear[data[at]] - r0);
      green += weight * (srgbToLinear[data[at + 1]] - g0);
      blue += weight * (srgbToLinear[data[at + 2]] - b0);
    }
    visible += share;
    r += red;
    g += green;
    b += blue;
  }
  mean[0] = r0 + r / visible;
  mean[1] = g0 + g / visible;
  mean[2] = b0 + b / visible;
  return visible;
}

/** How much of a coverage lets something be seen, pixels. */
export function visibleUnder(
  { count, pixel, length, area }: Coverage,
  data: Picture['data'],
): number {
  let visible = 0;
  for (let n = 0; n < count; n++) {
    let at = 4 * pixel[n] + 3;
    if (length[n] === 1) {
      visible += area[n] * visibleShare[data[at]];
      continue;
    }
    let alpha = 0;
    for (const stop = at + 4 * length[n]; at < stop; at += 4) alpha += data[at];
    visible += alpha / 255;
  }
  return visible;
}

/** The first pixel under a coverage that lets something be seen; -1 when none does. */
function firstVisible(
  pixel: Int32Array,
  length: Int32Array,
  count: number,
  data: Picture['data'],
): number {
  for (let n = 0; n < count; n++) {
    for (let p = pixel[n]; p < pixel[n] + length[n]; p++) if (data[4 * p + 3] > 0) return p;
  }
  return -1;
}
