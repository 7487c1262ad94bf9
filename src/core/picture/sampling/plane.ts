/**
 * Cosine and sine of a clockwise rotation, exact at quarter turns and rounded elsewhere: engines
 * differ in the last bits of trigonometric functions, and results must not.
 */
export function rotation(degrees: number): { cos: number; sin: number } {
  const turned = ((degrees % 360) + 360) % 360;
  if (turned % 90 === 0) {
    const quarter = turned / 90;
    return { cos: [1, 0, -1, 0][quarter], sin: [0, 1, 0, -1][quarter] };
  }
  const angle = (turned * Math.PI) / 180;
  return { cos: rounded(Math.cos(angle)), sin: rounded(Math.sin(angle)) };
}

/** A scale cut down to nine digits, so that what lay inside still does. */
export function clippedScale(scale: number): number {
  const near = Number(scale.toPrecision(9));
  if (near <= scale * (1 + 1e-12)) return near;
  return Number((near - scale * 1e-9).toPrecision(9));
}

function rounded(value: number): number {
  return Math.round(value * 1e12) / 1e12;
}
