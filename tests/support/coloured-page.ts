import sharp from 'sharp';
import { blankPage } from '../../src/core/pages/chart/blank-page.js';
import { blankSvg } from '../../src/core/pages/chart/blank.js';
import { rasteriseSvg } from '../../src/node/output/rasterise.js';
import { insideRing } from '../../src/core/panel/rings.js';
import type { PanelSheet } from '../../src/core/pages/panel/sheet.js';

/** How a page is coloured in by program. */
export interface Crayon {
  /** #rrggbb of the bead of each stitch; undefined stays white. */
  readonly hexOf: (s: number) => string | undefined;
  /** How much paper shows through at most, 0 to 1. */
  readonly grain: number;
  /** How ragged the edge of the colouring is, as a share of the cell. */
  readonly ragged: number;
  /** Cells of which only this side is coloured, and what the other half gets (a second colour). */
  readonly halves?: ReadonlyMap<number, string | undefined>;
  readonly seed: number;
}

export interface Rgb {
  readonly width: number;
  readonly height: number;
  /** 3 linear values a pixel. */
  readonly light: Float32Array;
}

/** IEC 61966-2-1, written out so that the test does not lean on the tables under test. */
export const toLinear = (code: number) =>
  code <= 0.04045 * 255 ? code / 255 / 12.92 : ((code / 255 + 0.055) / 1.055) ** 2.4;
const codes = Float32Array.from({ length: 16385 }, (_, n) => {
  const v = (n / 16384) ** 2;
  return 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);
});
export const toCode = (v: number) => codes[Math.round(16384 * Math.sqrt(Math.min(1, v)))];
const linearOf = Float32Array.from({ length: 256 }, (_, code) => toLinear(code));
const known = new Map<string, number[]>();
function rgbOf(hex: string): number[] {
  const rgb =
    known.get(hex) ?? [1, 3, 5].map((at) => linearOf[Number.parseInt(hex.slice(at, at + 2), 16)]);
  known.set(hex, rgb);
  return rgb;
}

/** Noise 0..1 of a whole place: an integer hash, the same on every run. */
export function noise(x: number, y: number, seed: number): number {
  let h = Math.imul(x, 374761393) ^ Math.imul(y, 668265263) ^ Math.imul(seed, 2246822519);
  h = Math.imul(h ^ (h >>> 13), 1274126177);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

/** Smooth noise 0..1, one lump a unit. */
function lumps(x: number, y: number, seed: number): number {
  const [left, top] = [Math.floor(x), Math.floor(y)];
  const [u, v] = [x - left, y - top];
  const at = (dx: number, dy: number) => noise(left + dx, top + dy, seed);
  return (at(0, 0) * (1 - u) + at(1, 0) * u) * (1 - v) + (at(0, 1) * (1 - u) + at(1, 1) * u) * v;
}

/** Draws a blank page and colours its cells as with crayons: grain, hatching, ragged edges. */
export async function colouredPage(sheet: PanelSheet, crayon: Crayon, dotsPerMm = 5): Promise<Rgb> {
  const { geometry, footprints } = sheet;
  const page = blankPage(geometry);
  const width = Math.round(page.widthMm * dotsPerMm);
  const { data, info } = await sharp(await rasteriseSvg(blankSvg(sheet), width))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { height } = info;
  const light = new Float32Array(data.length);
  for (let n = 0; n < data.length; n++) light[n] = linearOf[data[n]];
  const { scale, centreX, centreY } = page.view;
  for (let s = 0; s < geometry.count; s++) {
    const [ring] = footprints.rings(s);
    const [midX, midY] = geometry.centres.subarray(2 * s, 2 * s + 2);
    const xs = ring.filter((_, p) => p % 2 === 0).map((x) => (centreX + scale * x) * dotsPerMm);
    const ys = ring.filter((_, p) => p % 2 === 1).map((y) => (centreY + scale * y) * dotsPerMm);
    const way = noise(s, 1, crayon.seed) * Math.PI;
    const pressed = 0.85 + 0.15 * noise(s, 2, crayon.seed);
    for (let py = Math.floor(Math.min(...ys)) - 2; py < Math.max(...ys) + 2; py++) {
      for (let px = Math.floor(Math.min(...xs)) - 2; px < Math.max(...xs) + 2; px++) {
        const x = ((px + 0.5) / dotsPerMm - centreX) / scale;
        const y = ((py + 0.5) / dotsPerMm - centreY) / scale;
        const [dx, dy] = [x - midX, y - midY];
        const half = crayon.halves?.has(s) && dx + 0.3 * dy > 0;
        const hex = half ? crayon.halves?.get(s) : crayon.hexOf(s);
        if (!hex) continue;
        const edge = 0.87 + crayon.ragged * (lumps(px / 5, py / 5, crayon.seed) - 0.5);
        if (!insideRing(ring, midX + dx / edge, midY + dy / edge)) continue;
        // Strokes run one way in each cell; the paper's tooth leaves grains white.
        const stroke = 0.5 + 0.5 * Math.sin((x * Math.cos(way) + y * Math.sin(way)) * 9);
        const tooth = lumps(px / 2.2, py / 2.2, crayon.seed + 7);
        const cover = pressed * (1 - crayon.grain * (0.35 * stroke + 0.65 * tooth));
        const rgb = rgbOf(hex);
        const at = 3 * (py * width + px);
        for (let c = 0; c < 3; c++) light[at + c] *= 1 - cover + cover * rgb[c];
      }
    }
  }
  return { width, height, light };
}
