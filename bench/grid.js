// The fixed grid of choices: pictures × stitches × palettes × colours.
import { readFileSync } from 'node:fs';
import { cells, drawings, gradients, labs, photos } from './pictures.js';

export const pictures = [...photos, ...drawings, ...gradients];
export const sides = [22, 43, 71];
export const palettes = ['drawers', 40, 120, 300, 600];
/** Which two numbers of colours a case gets goes round with its place in the grid. */
const colours = [4, 6, 8, 12, 20];

/** sRGB bytes of a palette: of our 120 beads, or of so many random ones; length 3·P. */
export function paletteBytes(palette, seed) {
  if (palette === 'drawers') {
    const csv = readFileSync(new URL('../palettes/drawers.csv', import.meta.url), 'utf8');
    return Buffer.concat(csv.match(/#[0-9a-f]{6}/g).map((hex) => Buffer.from(hex.slice(1), 'hex')));
  }
  const next = bytesFrom(seed);
  return Uint8Array.from({ length: 3 * palette }, next);
}

/** sRGB bytes of a range with more shades of our beads: each channel up to 30 off; length 3·P. */
export function shadeBytes(count, seed) {
  const ours = paletteBytes('drawers');
  const next = bytesFrom(seed);
  const bytes = new Uint8ClampedArray(3 * count);
  for (let k = 0; k < bytes.length; k++) {
    const bead = Math.floor(k / 3) % (ours.length / 3);
    bytes[k] = ours[3 * bead + (k % 3)] + (60 * next()) / 255 - 30;
  }
  return bytes;
}

/** Bytes from a linear congruential sequence. */
function bytesFrom(seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state >>> 24;
  };
}

/**
 * Every case, in order: { name, stitches, palette, most }. `only` picks by number.
 * @param {(r: number, g: number, b: number) => [number, number, number]} toLab
 * @param {(number: number) => boolean} only
 */
export async function* gridCases(toLab, only = () => true) {
  let number = 0;
  for (const [p, picture] of pictures.entries()) {
    for (const side of sides) {
      let stitches;
      for (const [k, beads] of palettes.entries()) {
        for (const turn of [0, 2]) {
          const most = colours[(p + k + turn) % colours.length];
          if (!only(number++)) continue;
          stitches ??= labs(await cells(picture, side), toLab);
          yield {
            name: `${picture[0]}, ${side * side} cells, ${beads} beads, ${most} colours`,
            stitches,
            palette: labs(paletteBytes(beads, 1000 + 10 * p + k), toLab),
            most,
          };
        }
      }
    }
  }
}
