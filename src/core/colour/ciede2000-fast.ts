/**
 * CIEDE2000 without trigonometry, for the millions of pairs that choosing beads asks for: the same
 * formula as the textbook one, to 1e-5 and better. The numbers come from square roots and a
 * rounded table alone, so every engine gives the same bits.
 *
 * - hue difference: ΔH'² = |p₂ - p₁|² - (C₂' - C₁')², its sign from the cross product;
 * - mean hue: the bisector of the two hue directions, as cosine and sine;
 * - T: by multiple angles;
 * - rotation term: cubic interpolation in a table over tan((mean hue - 275°) / 2).
 */
import { ciede2000 } from './ciede2000-textbook.js';

const twentyFiveToThe7th = 6103515625;
const cos30 = 0.8660254037844386;
const cos6 = 0.9945218953682733;
const sin6 = 0.10452846326765347;
const cos63 = 0.4539904997395468;
const sin63 = 0.8910065241883679;
const cos275 = 0.08715574274765818;
const sin275 = -0.9961946980917455;

/** The table covers tan(±112.6° / 2); farther away the rotation term is below 1e-8. */
const reach = 1.5;
const cells = 512;
const cellsPerUnit = cells / (2 * reach);
/** Four numbers a cell: the cubic in the place inside the cell, constant first; length 4·cells. */
const rotationTable = makeRotationTable();

/**
 * Difference of two Lab colours. Near opposite hues, where the formula jumps, the textbook form
 * decides (rounded to 1e-9).
 */
export function ciede2000Fast(
  L1: number,
  a1: number,
  b1: number,
  L2: number,
  a2: number,
  b2: number,
): number {
  const b1Squared = b1 * b1;
  const b2Squared = b2 * b2;
  const mean = (Math.sqrt(a1 * a1 + b1Squared) + Math.sqrt(a2 * a2 + b2Squared)) * 0.5;
  const mean3 = mean * mean * mean;
  const mean7 = mean3 * mean3 * mean;
  const stretch = 1.5 - 0.5 * Math.sqrt(mean7 / (mean7 + twentyFiveToThe7th));
  const a1s = a1 * stretch;
  const a2s = a2 * stretch;
  const c1 = Math.sqrt(a1s * a1s + b1Squared);
  const c2 = Math.sqrt(a2s * a2s + b2Squared);

  // The bisector: each direction made as long as the product of both chromas, then added.
  let x = a1s * c2 + a2s * c1;
  let y = b1 * c2 + b2 * c1;
  const product = c1 * c2;
  let length = Math.sqrt(x * x + y * y);
  if (product === 0) {
    // A colour without hue: the mean is the other one's hue, or 0.
    x = a1s + a2s;
    y = b1 + b2;
    length = Math.sqrt(x * x + y * y);
    if (length === 0) {
      x = 1;
      length = 1;
    }
  } else if (length < 1e-4 * product) {
    return Math.round(ciede2000(L1, a1, b1, L2, a2, b2) * 1e9) / 1e9;
  }
  const cos = x / length;
  const sin = y / length;

  const cos2 = 2 * cos * cos - 1;
  const sin2 = 2 * sin * cos;
  const cos3 = cos2 * cos - sin2 * sin;
  const sin3 = sin2 * cos + cos2 * sin;
  const cos4 = 2 * cos2 * cos2 - 1;
  const sin4 = 2 * sin2 * cos2;
  const t =
    1 -
    0.17 * (cos * cos30 + sin * 0.5) +
    0.24 * cos2 +
    0.32 * (cos3 * cos6 - sin3 * sin6) -
    0.2 * (cos4 * cos63 + sin4 * sin63);

  const chroma = (c1 + c2) * 0.5;
  const lightness = (L1 + L2) * 0.5 - 50;
  const light = lightness * lightness;
  const l = (L2 - L1) / (1 + (0.015 * light) / Math.sqrt(20 + light));
  const dC = c2 - c1;
  const c = dC / (1 + 0.045 * chroma);
  const da = a2s - a1s;
  const db = b2 - b1;
  const hSquared = product === 0 ? 0 : Math.max(0, da * da + db * db - dC * dC);
  const weight = 1 + 0.015 * chroma * t;
  const sum = l * l + c * c + hSquared / (weight * weight);

  // Not circular: a mean hue of 0° to 90° is 185° or more below 275°, not 85° above it.
  if (hSquared === 0 || (sin >= 0 && cos >= 0)) return Math.sqrt(sum);
  const fromCos = cos * cos275 + sin * sin275;
  const at = ((sin * cos275 - cos * sin275) / (1 + fromCos) + reach) * cellsPerUnit;
  if (!(at >= 0 && at < cells)) return Math.sqrt(sum);
  const cell = Math.trunc(at);
  const u = at - cell;
  const k = cell * 4;
  const rotation =
    rotationTable[k] +
    u * (rotationTable[k + 1] + u * (rotationTable[k + 2] + u * rotationTable[k + 3]));
  const chroma3 = chroma * chroma * chroma;
  const chroma7 = chroma3 * chroma3 * chroma;
  const rc = 2 * Math.sqrt(chroma7 / (chroma7 + twentyFiveToThe7th));
  const h = Math.sqrt(hSquared) / weight;
  const turned = rotation * rc * c * h;
  const cross = a1s * b2 - a2s * b1;
  return Math.sqrt(Math.max(0, cross < 0 ? sum + turned : sum - turned));
}

/** sin(2Δθ) with Δθ = 30°·exp(-((h - 275°)/25°)²), as a Hermite cubic in each cell. */
function makeRotationTable(): Float64Array {
  const degree = Math.PI / 180;
  const at = (index: number): number => {
    const off = (2 * Math.atan(index / cellsPerUnit - reach)) / degree / 25;
    const sine = Math.sin(60 * degree * Math.exp(-off * off));
    return Math.round(sine * 1e12) / 1e12;
  };
  /** By differences of fourth order. */
  const slopeAt = (index: number): number =>
    (8 * (at(index + 1) - at(index - 1)) - (at(index + 2) - at(index - 2))) / 12;
  const table = new Float64Array(4 * cells);
  for (let cell = 0; cell < cells; cell++) {
    const [from, to] = [at(cell), at(cell + 1)];
    const [slope, slopeTo] = [slopeAt(cell), slopeAt(cell + 1)];
    table[4 * cell] = from;
    table[4 * cell + 1] = slope;
    table[4 * cell + 2] = 3 * (to - from) - 2 * slope - slopeTo;
    table[4 * cell + 3] = 2 * (from - to) + slope + slopeTo;
  }
  return table;
}
