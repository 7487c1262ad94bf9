import { srgbToLinear } from '../colour/srgb.js';
import type { Coverage } from './coverage.js';

/** Share of light that each 8-bit alpha lets through; exactly 1 at 255. */
export const visibleShare = Float64Array.from({ length: 256 }, (_, alpha) => alpha / 255);

/**
 * Mean colour under a coverage in linear light, weighted by area and alpha, into `mean` (r, g, b).
 * Summed as differences from the first pixel, so that one colour in is exactly that colour out.
 *
 * @returns area that is visible, pixels; 0 leaves `mean` alone
 */
export function meanUnder(
  { count, pixel, area }: Coverage,
  data: Uint8Array | Uint8ClampedArray,
  mean: Float64Array,
): number {
  let first = 0;
  while (first < count && data[4 * pixel[first] + 3] === 0) first++;
  if (first === count) return 0;
  const at = 4 * pixel[first];
  const r0 = srgbToLinear[data[at]];
  const g0 = srgbToLinear[data[at + 1]];
  const b0 = srgbToLinear[data[at + 2]];
  let [visible, r, g, b] = [0, 0, 0, 0];
  for (let p = first; p < count; p++) {
    const from = 4 * pixel[p];
    const weight = area[p] * visibleShare[data[from + 3]];
    visible += weight;
    r += weight * (srgbToLinear[data[from]] - r0);
    g += weight * (srgbToLinear[data[from + 1]] - g0);
    b += weight * (srgbToLinear[data[from + 2]] - b0);
  }
  mean[0] = r0 + r / visible;
  mean[1] = g0 + g / visible;
  mean[2] = b0 + b / visible;
  return visible;
}
