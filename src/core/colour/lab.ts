/**
 * CIE L*a*b* under D65, 2° observer. Never D50: mixing the two changes differences by about 1.
 *
 * Matrices as exact fractions and the white from the chromaticities x 0.3127, y 0.3290: W3C, CSS
 * Color Module Level 4, "Sample code for color conversions". Lab: CIE 15:2004, with the
 * exact 216/24389 and 24389/27.
 */
import { RondureError } from '../errors.js';
import { formatHex, parseHex } from './hex.js';
import { linearToSrgb8, srgbToLinear } from './srgb.js';
import { millionth } from '../units.js';

const whiteX = 0.3127 / 0.329;
const whiteZ = (1 - 0.3127 - 0.329) / 0.329;
const epsilon = 216 / 24389;
const kappa = 24389 / 27;

/**
 * L (0..100), a, b of linear sRGB light (0..1 each), rounded to 1e-6: Math.cbrt may differ in its
 * last bit between engines.
 */
export function linearToLab65(r: number, g: number, b: number): [number, number, number] {
  const lab: [number, number, number] = [0, 0, 0];
  putLab65(r, g, b, lab, 0);
  return lab;
}

/** The same, put down in a list from a place on. */
export function putLab65(
  r: number,
  g: number,
  b: number,
  into: Float64Array | number[],
  at: number,
): void {
  const x = (506752 / 1228815) * r + (87881 / 245763) * g + (12673 / 70218) * b;
  const y = (87098 / 409605) * r + (175762 / 245763) * g + (12673 / 175545) * b;
  const z = (7918 / 409605) * r + (87881 / 737289) * g + (1001167 / 1053270) * b;
  const fx = compress(x / whiteX);
  const fy = compress(y);
  const fz = compress(z / whiteZ);
  into[at] = millionth(116 * fy - 16);
  into[at + 1] = millionth(500 * (fx - fy));
  into[at + 2] = millionth(200 * (fy - fz));
}

/** The same from 8-bit sRGB codes (whole numbers 0..255). */
export function srgbToLab65(r8: number, g8: number, b8: number): [number, number, number] {
  return linearToLab65(srgbToLinear[r8], srgbToLinear[g8], srgbToLinear[b8]);
}

/**
 * The same from a colour such as `#d9b36a`.
 * @throws RondureError `colour-not-hex`
 */
export function hexToLab65(hex: string): [number, number, number] {
  const rgb = parseHex(hex);
  if (!rgb) throw new RondureError('colour-not-hex', { got: hex });
  return srgbToLab65(...rgb);
}

/** `#rrggbb` nearest to L, a, b under D65; each channel outside sRGB is clamped by itself. */
export function lab65ToHex(L: number, a: number, b: number): string {
  const [red, green, blue] = lab65ToLinear(L, a, b).map(linearToSrgb8);
  return formatHex(red, green, blue);
}

/** Linear sRGB light of L, a, b under D65; below 0 or above 1 outside sRGB. */
export function lab65ToLinear(L: number, a: number, b: number): [number, number, number] {
  const fy = (L + 16) / 116;
  const x = expand(fy + a / 500) * whiteX;
  const y = expand(fy);
  const z = expand(fy - b / 200) * whiteZ;
  return [
    (12831 / 3959) * x - (329 / 214) * y - (1974 / 3959) * z,
    (-851781 / 878810) * x + (1648619 / 878810) * y + (36519 / 878810) * z,
    (705 / 12673) * x - (2585 / 12673) * y + (705 / 667) * z,
  ];
}

function compress(t: number): number {
  return t > epsilon ? Math.cbrt(t) : (kappa * t + 16) / 116;
}

function expand(f: number): number {
  const cube = f * f * f;
  return cube > epsilon ? cube : (116 * f - 16) / kappa;
}
