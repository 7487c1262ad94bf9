/**
 * The CIEDE2000 colour difference with kL = kC = kH = 1, as written in G. Sharma, W. Wu,
 * E. N. Dalal, "The CIEDE2000 color-difference formula: implementation notes, supplementary test
 * data, and mathematical observations", Color Research & Application 30(1):21-30, 2005.
 * Their numbers in brackets.
 */
const toRadians = Math.PI / 180;
const twentyFiveToThe7th = 6103515625;

/** Difference of two Lab colours, textbook form. Symmetric; 0 when equal, about 1 when just seen. */
export function ciede2000(
  L1: number,
  a1: number,
  b1: number,
  L2: number,
  a2: number,
  b2: number,
): number {
  const chromaMean = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2; // (2, 3)
  const stretch = 1 + 0.5 * (1 - saturation(chromaMean)); // (4)
  const a1s = stretch * a1; // (5)
  const a2s = stretch * a2;
  const c1 = Math.sqrt(a1s * a1s + b1 * b1); // (6)
  const c2 = Math.sqrt(a2s * a2s + b2 * b2);
  const h1 = hueDegrees(a1s, b1); // (7)
  const h2 = hueDegrees(a2s, b2);
  const grey = c1 * c2 === 0;

  const dL = L2 - L1; // (8)
  const dC = c2 - c1; // (9)
  let dh = grey ? 0 : h2 - h1; // (10)
  if (dh > 180) dh -= 360;
  else if (dh < -180) dh += 360;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((dh / 2) * toRadians); // (11)

  const lightness = (L1 + L2) / 2; // (12)
  const chroma = (c1 + c2) / 2; // (13)
  let hue = h1 + h2; // (14)
  if (!grey) {
    if (Math.abs(h1 - h2) <= 180) hue /= 2;
    else hue = (hue < 360 ? hue + 360 : hue - 360) / 2;
  }

  const t =
    1 -
    0.17 * Math.cos((hue - 30) * toRadians) +
    0.24 * Math.cos(2 * hue * toRadians) +
    0.32 * Math.cos((3 * hue + 6) * toRadians) -
    0.2 * Math.cos((4 * hue - 63) * toRadians); // (15)
  const off = (hue - 275) / 25;
  const rotation = 30 * Math.exp(-off * off); // (16)
  const rt = -Math.sin(2 * rotation * toRadians) * 2 * saturation(chroma); // (17, 21)
  const light = (lightness - 50) * (lightness - 50);
  const l = dL / (1 + (0.015 * light) / Math.sqrt(20 + light)); // (18)
  const c = dC / (1 + 0.045 * chroma); // (19)
  const h = dH / (1 + 0.015 * chroma * t); // (20)
  return Math.sqrt(Math.max(0, l * l + c * c + h * h + rt * c * h)); // (22)
}

/** √(C⁷ / (C⁷ + 25⁷)). */
function saturation(chroma: number): number {
  const c3 = chroma * chroma * chroma;
  const c7 = c3 * c3 * chroma;
  return Math.sqrt(c7 / (c7 + twentyFiveToThe7th));
}

/** Hue angle 0 up to 360; 0 for a colour without hue. */
function hueDegrees(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const degrees = Math.atan2(b, a) / toRadians;
  return degrees < 0 ? degrees + 360 : degrees;
}
