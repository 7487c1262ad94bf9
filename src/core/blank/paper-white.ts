import type { BlankPage } from '../pages/chart/blank-page.js';
import { solve } from '../equations.js';

/** Linear red, green, blue at a point of the page; undefined outside the photograph. */
export type PageLight = (xMm: number, yMm: number) => readonly [number, number, number] | undefined;

/** Linear light of white paper at a point of the page. */
export type PageWhite = (xMm: number, yMm: number) => [number, number, number];

const across = 15;
const down = 21;
const perBlock = 11;

interface Block {
  readonly x: number;
  readonly y: number;
  /** Logarithms of the light of its brightest part. */
  readonly light: readonly [number, number, number];
}

/**
 * How bright white paper is at every point of the page: the brightest parts of small blocks, with
 * a smooth surface through their upper side, so that blocks full of colour do not pull it down.
 *
 * @returns linear light of white paper at a point, page millimetres
 */
export function paperWhite(page: BlankPage, light: PageLight): PageWhite {
  const blocks = blocksOf(page, light);
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
  return (xMm, yMm) => {
    const terms = termsAt((2 * xMm) / page.widthMm - 1, (2 * yMm) / page.heightMm - 1, degree);
    return [0, 1, 2].map((c) => Math.exp(valueOf(fits[c], terms))) as [number, number, number];
  };
}

function blocksOf(page: BlankPage, light: PageLight): Block[] {
  const blocks: Block[] = [];
  const [wide, high] = [page.widthMm / across, page.heightMm / down];
  for (let row = 0; row < down; row++) {
    for (let column = 0; column < across; column++) {
      const seen: (readonly [number, number, number])[] = [];
      for (let p = 0; p < perBlock * perBlock; p++) {
        // The outermost tenth of a block at the paper's edge may be table already.
        const x = wide * (column + ((p % perBlock) + 1) / (perBlock + 1));
        const y = high * (row + (Math.floor(p / perBlock) + 1) / (perBlock + 1));
        const nearEdge = Math.min(x, y, page.widthMm - x, page.heightMm - y) < 2.5;
        const one = nearEdge ? undefined : light(x, y);
        if (one) seen.push(one);
      }
      if (seen.length < 30) continue;
      seen.sort((p, q) => p[1] + p[0] + p[2] - q[0] - q[1] - q[2]);
      const bright = seen.slice(Math.floor(0.8 * seen.length), Math.ceil(0.96 * seen.length));
      const mean = [0, 1, 2].map((c) =>
        Math.log(Math.max(1e-4, bright.reduce((sum, one) => sum + one[c], 0) / bright.length)),
      );
      blocks.push({
        x: (2 * (column + 0.5)) / across - 1,
        y: (2 * (row + 0.5)) / down - 1,
        light: mean as [number, number, number],
      });
    }
  }
  return blocks;
}

/** By how much a block lies below the surface in its worst channel (negative: below). */
function leastOff(block: Block, fits: readonly Float64Array[], degree: number): number {
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

function fitAll(blocks: readonly Block[], weights: Float64Array, degree: number): Float64Array[] {
  return [0, 1, 2].map((c) => fitOne(blocks, weights, degree, c));
}

/** Weighted least squares with a slight pull to 0 of everything but the mean. */
function fitOne(
  blocks: readonly Block[],
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
