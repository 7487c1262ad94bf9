import { RondureError } from '../errors.js';
import { parseHex } from './hex.js';
import { srgbToLinear } from './srgb.js';

/**
 * Contrast of two colours, 1 to 21, in either order (W3C, WCAG 2.1, "contrast ratio").
 * @throws RondureError `colour-not-hex`
 */
export function contrastRatio(hexA: string, hexB: string): number {
  const one = luminance(hexA);
  const other = luminance(hexB);
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
}

/**
 * The ink, black or white, that reads better on a colour; black when both read alike.
 * @throws RondureError `colour-not-hex`
 */
export function inkOn(hex: string): '#000000' | '#ffffff' {
  return contrastRatio(hex, '#ffffff') > contrastRatio(hex, '#000000') ? '#ffffff' : '#000000';
}

/** W3C, WCAG 2.1, "relative luminance", 0..1; its rounded weights are part of the definition. */
function luminance(hex: string): number {
  const rgb = parseHex(hex);
  if (!rgb) throw new RondureError('colour-not-hex', { got: hex });
  const [r, g, b] = rgb;
  return 0.2126 * srgbToLinear[r] + 0.7152 * srgbToLinear[g] + 0.0722 * srgbToLinear[b];
}
