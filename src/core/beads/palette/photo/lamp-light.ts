import { leastSquares } from './least-squares.js';
import type { LightMap } from './light-map.js';

/** Tiles along the longer side; small enough to lie in the gaps between heaps. */
const tilesAlong = 60;

/** One place of paper: its light, and where it lies from -1 to 1. */
interface Tile {
  readonly x: number;
  readonly y: number;
  readonly rgb: readonly [number, number, number];
}

/**
 * The light that falls on the paper: for each channel a smooth surface (a quadratic in x and y)
 * through the brightest places of the picture, from which beads, table and shadows drop out step by
 * step. Its own colour is the lamp's: what is divided by it comes out as under white light.
 *
 * @returns linear light of white paper at each pixel, laid out as `map.light`
 */
export function lampLight(map: LightMap): Float64Array {
  let tiles = tilesOf(map);
  const brightness = (tile: Tile) => tile.rgb[0] + tile.rgb[1] + tile.rgb[2];
  const sorted = tiles.map(brightness).sort((a, b) => a - b);
  const bright = sorted[Math.floor(0.98 * (sorted.length - 1))];
  const all = tiles;
  tiles = tiles.filter((tile) => brightness(tile) > 0.45 * bright);
  let surface = fit(tiles, 3);
  // Closer and closer to the upper edge; the last steps may bend.
  for (const [low, terms] of [
    [0.85, 3],
    [0.9, 3],
    [0.9, 6],
    [0.93, 6],
    [0.95, 6],
    [0.95, 6],
  ] as const) {
    const kept = (tiles.length > 0 ? all : []).filter(({ x, y, rgb }) =>
      rgb.every((value, c) => {
        const ratio = value / Math.max(1e-4, valueAt(surface[c], x, y));
        return ratio > low && ratio < 2 - low + 0.05;
      }),
    );
    if (kept.length < 12) break;
    tiles = kept;
    surface = fit(tiles, terms);
  }
  return drawn(map, surface);
}

/** The mean of the brighter half of each tile, but for its very brightest pixels. */
function tilesOf({ width, height, light }: LightMap): Tile[] {
  const size = Math.max(2, Math.round(Math.max(width, height) / tilesAlong));
  const tiles: Tile[] = [];
  for (let top = 0; top + size <= height; top += size) {
    for (let left = 0; left + size <= width; left += size) {
      const places: number[] = [];
      for (let y = top; y < top + size; y++) {
        for (let x = left; x < left + size; x++) places.push(3 * (y * width + x));
      }
      const sum = (at: number) => light[at] + light[at + 1] + light[at + 2];
      places.sort((a, b) => sum(a) - sum(b));
      // Even about the median, so that noise does not lift the paper.
      const middle = places.slice(Math.floor(places.length * 0.3), Math.ceil(places.length * 0.7));
      const mean = (c: number) =>
        middle.reduce((all, at) => all + light[at + c], 0) / middle.length;
      const x = (2 * (left + size / 2)) / width - 1;
      const y = (2 * (top + size / 2)) / height - 1;
      tiles.push({ x, y, rgb: [mean(0), mean(1), mean(2)] });
    }
  }
  return tiles;
}

function fit(tiles: readonly Tile[], terms: number): number[][] {
  return [0, 1, 2].map((c) =>
    leastSquares(
      tiles.map(({ x, y, rgb }) => ({ terms: termsAt(x, y).slice(0, terms), value: rgb[c] })),
    ),
  );
}

function termsAt(x: number, y: number): number[] {
  return [1, x, y, x * x, x * y, y * y];
}

function valueAt(coefficients: readonly number[], x: number, y: number): number {
  const terms = termsAt(x, y);
  return coefficients.reduce((sum, coefficient, term) => sum + coefficient * terms[term], 0);
}

function drawn({ width, height }: LightMap, surface: readonly number[][]): Float64Array {
  const light = new Float64Array(3 * width * height);
  for (let row = 0; row < height; row++) {
    const y = (2 * (row + 0.5)) / height - 1;
    for (let column = 0; column < width; column++) {
      const x = (2 * (column + 0.5)) / width - 1;
      const [, , , xx, xy, yy] = termsAt(x, y);
      for (let c = 0; c < 3; c++) {
        const [k0, k1, k2, k3 = 0, k4 = 0, k5 = 0] = surface[c];
        const value = k0 + k1 * x + k2 * y + k3 * xx + k4 * xy + k5 * yy;
        light[3 * (row * width + column) + c] = Math.max(1e-3, value);
      }
    }
  }
  return light;
}
