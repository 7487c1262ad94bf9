/**
 * sRGB in and out of linear light by table (IEC 61966-2-1). Math.pow differs in the last bit
 * between engines, so both tables are rounded as they are made and nothing is raised to a power
 * afterwards.
 */

/**
 * IEC 61966-2-1, from a coded value 0..1 to linear light 0..1, rounded to 2^-40 (about 1e-12): sums
 * of up to 8192 of these are exact.
 */
function decode(coded: number): number {
  const linear = coded <= 0.04045 ? coded / 12.92 : Math.pow((coded + 0.055) / 1.055, 2.4);
  return Math.round(linear * 2 ** 40) / 2 ** 40;
}

/** Linear light 0..1 of each 8-bit sRGB code; length 256. */
export const srgbToLinear: Float64Array = Float64Array.from({ length: 256 }, (_, code) =>
  decode(code / 255),
);

/** Linear light half way (in code) between code k and k + 1; length 255, ascending. */
const upperEdge = Float64Array.from({ length: 255 }, (_, code) => decode((code + 0.5) / 255));

const buckets = 4096;

/** The least code that any linear light in a bucket can have: where the search begins. */
const leastCode = Uint8Array.from({ length: buckets + 1 }, (_, bucket) => {
  let code = 0;
  while (code < 255 && bucket / buckets >= upperEdge[code]) code += 1;
  return code;
});

/** Nearest 8-bit sRGB code, 0..255, for linear light; values outside 0..1 (and NaN) are clamped. */
export function linearToSrgb8(linear: number): number {
  if (!(linear > 0)) return 0;
  if (linear >= 1) return 255;
  let code = leastCode[(linear * buckets) | 0];
  while (linear >= upperEdge[code]) code += 1;
  return code;
}
