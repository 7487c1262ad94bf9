import { solve } from '../equations.js';

/** The light of a piece of the picture that may be paper. */
export interface PaperPiece {
  /** Where it lies, from -1 to 1. */
  readonly x: number;
  readonly y: number;
  /** Linear red, green, blue of its bright part, 0 to 1. */
  readonly light: readonly [number, number, number];
}

/** Linear red, green, blue of bare paper at a point, from -1 to 1 each way. */
export type PaperSurface = (x: number, y: number) => [number, number, number];

/**
 * How bright bare paper is everywhere: a smooth surface for each channel through the upper side of
 * what pieces show, so that pieces full of colour do not pull it down. Its own tint is the lamp's.
 */
export function paperSurface(pieces: readonly PaperPiece[]): PaperSurface {
  // In logarithms the falling off of a lamp adds up.
  const blocks = pieces.map(({ x, y, light }) => ({
    x,
    y,
    light: light.map((one) => Math.log(Math.max(1e-4, one))) as [number, number, number],
  }));
  const weights = new Float64Array(blocks.length).fill(1);
  let fits = fitAll(blocks, weights, 2);
  for (let turn = 0; turn < 25; turn++) {
    // The upper side: what lies below the surface hardly counts.
    blocks.forEach((block, n) => {
      const off = leastOff(block, fits, 2);
      weights[n] = off > -0.02 ? 1 : 0.02;
    });
    fits = fitAll(blocks, weights, 2);
  }
  let degree = 2;
  for (let turn = 0; turn < 4; turn++) {
    let inside = 0;
    blocks.forEach((block, n) => {
      const good = leastOff(block, fits, degree) > (turn === 0 ? -0.12 : -0.07);
      weights[n] = good ? 1 : 0;
      inside += weights[n];
    });
    if (inside < 0.35 * blocks.length) break;
    degree = inside > 0.6 * blocks.length ? 4 : 3;
    fits = fitAll(blocks, weights, degree);
  }
  return (x, y) => {
    const terms = termsAt(x, y, degree);
    return [0, 1, 2].map((c) => Math.exp(valueOf(fits[c], terms))) as [number, number, number];
  };
}

/** By how much a block lies below the surface in its worst channel (negative: below). */
function leastOff(block: PaperPiece, fits: readonly Float64Array[], degree: number): number {
  const terms = termsAt(block.x, block.y, degree);
  return Math.min(...fits.map((fit, c) => block.light[c] - valueOf(fit, terms)));
}

function termsAt(x: number, y: number, degree: number): number[] {
  const terms: number[] = [];
  for (let total = 0; total <= degree; total++) {
    for (let py = 0; py <= total; py++) {
      let term = 1;
      for (let k = 0; k < total - py; k++) term *= x;
      for (let k = 0; k < py; k++) term *= y;
      terms.push(term);
    }
  }
  return terms;
}

function valueOf(fit: Float64Array, terms: readonly number[]): number {
  let sum = 0;
  for (let n = 0; n < terms.length; n++) sum += fit[n] * terms[n];
  return sum;
}

function fitAll(
  blocks: readonly PaperPiece[],
  weights: Float64Array,
  degree: number,
): Float64Array[] {
  return [0, 1, 2].map((c) => fitOne(blocks, weights, degree, c));
}

/** Weighted least squares with a slight pull to 0 of everything but the mean. */
function fitOne(
  blocks: readonly PaperPiece[],
  weights: Float64Array,
  degree: number,
  c: number,
): Float64Array {
  const n = termsAt(0, 0, degree).length;
  const rows = Array.from({ length: n }, (_, r) =>
    Array.from({ length: n + 1 }, (__, k) => (k === r ? (r === 0 ? 1e-6 : 0.02) : 0)),
  );
  blocks.forEach((block, b) => {
    const terms = termsAt(block.x, block.y, degree);
    for (let r = 0; r < n; r++) {
      for (let k = 0; k < n; k++) rows[r][k] += weights[b] * terms[r] * terms[k];
      rows[r][n] += weights[b] * terms[r] * block.light[c];
    }
  });
  return solve(rows) ?? new Float64Array(n);
}
