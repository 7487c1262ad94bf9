import { paperSurface } from '../../../picture/paper-surface.js';
import type { PaperPiece } from '../../../picture/paper-surface.js';
import type { LightMap } from './light-map.js';

/** Tiles along the longer side; small enough to lie in the gaps between heaps. */
const tilesAlong = 60;

/**
 * The light that falls on the paper. Its own colour is the lamp's: what is divided by it comes out
 * as under white light.
 *
 * @returns linear light of white paper at each pixel, laid out as `map.light`
 */
export function lampLight(map: LightMap): Float64Array {
  const { width, height } = map;
  const surface = paperSurface(brightOnes(tilesOf(map)));
  const light = new Float64Array(3 * width * height);
  for (let row = 0, at = 0; row < height; row++) {
    const y = (2 * (row + 0.5)) / height - 1;
    for (let column = 0; column < width; column++, at += 3) {
      light.set(surface((2 * (column + 0.5)) / width - 1, y), at);
    }
  }
  return light;
}

/** Those that may be paper: a dark table would bend the surface. */
function brightOnes(tiles: readonly PaperPiece[]): readonly PaperPiece[] {
  const brightness = ({ light: [r, g, b] }: PaperPiece) => r + g + b;
  const sorted = tiles.map(brightness).sort((a, b) => a - b);
  const bright = sorted[Math.floor(0.98 * (sorted.length - 1))];
  return tiles.filter((tile) => brightness(tile) > 0.45 * bright);
}

/** The mean of the brighter half of each tile, but for its very brightest pixels. */
function tilesOf({ width, height, light }: LightMap): PaperPiece[] {
  const size = Math.max(2, Math.round(Math.max(width, height) / tilesAlong));
  const tiles: PaperPiece[] = [];
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
      tiles.push({ x, y, light: [mean(0), mean(1), mean(2)] });
    }
  }
  return tiles;
}
