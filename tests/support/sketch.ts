import sharp from 'sharp';
import { linearToSrgb8, srgbToLinear } from '../../src/core/colour/srgb.js';
import type { Picture } from '../../src/core/picture/picture.js';
import { sequence } from './paint.js';

/** A pencil line: x, y pairs in stitches from the panel's centre. */
export interface Line {
  readonly points: readonly (readonly [number, number])[];
  readonly widthStitches: number;
  readonly colour: readonly [number, number, number];
}

/** An ellipse filled with crayon. */
export interface Patch {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly colour: readonly [number, number, number];
}

/** What was drawn, and the light it was photographed in; lengths in stitches. */
export interface Sketch {
  readonly lines: readonly Line[];
  readonly patches: readonly Patch[];
  readonly light: {
    /** Linear red, green, blue of the paper in full light. */
    readonly paper: readonly [number, number, number];
    /** Share of light left at the far side, and in the corners. */
    readonly far: number;
    readonly corner: number;
    readonly towards: readonly [number, number];
    /** Share of light in the shadow of a hand, 1 for none. */
    readonly shadow: number;
    /** Standard deviation of grain and of the camera's noise, shares of the light. */
    readonly grain: number;
    readonly noise: number;
    readonly jpegQuality: number;
  };
  readonly seed: number;
  /** Ruled or squared paper. */
  readonly ruling?: Ruling;
}

/** Lines printed on the paper. */
export interface Ruling {
  readonly kind: 'squared' | 'ruled';
  /** Distance and width of the lines, stitches. */
  readonly apartStitches: number;
  readonly widthStitches: number;
  readonly colour: readonly [number, number, number];
  /** How far the page is turned, radians, and how much smaller it is at the far side, a share. */
  readonly turned: number;
  readonly keystone: number;
}

const pencils = [
  [70, 70, 75],
  [95, 95, 100],
  [130, 130, 135],
  [60, 50, 140],
  [200, 70, 120],
  [40, 110, 60],
] as const;
const crayons = [
  [215, 60, 50],
  [45, 90, 190],
  [245, 205, 60],
  [60, 150, 75],
  [240, 140, 50],
  [130, 80, 160],
  [120, 120, 125],
  [90, 60, 45],
  [250, 185, 190],
  [170, 215, 240],
] as const;

/** The sketch of a seed. Even seeds hold one area of colour over a quarter of the page or more. */
export function sketchOf(seed: number): Sketch {
  const below = sequence(7919 * seed + 17);
  for (let k = 0; k < 8; k++) below(2);
  const between = (least: number, most: number): number =>
    least + ((most - least) * below(10000)) / 10000;
  const pick = <T>(from: readonly T[]): T => from[below(from.length)];
  const lines: Line[] = [];
  for (let k = 0; k < 5; k++) {
    const points: [number, number][] = [];
    const [cx, cy] = [between(-11, 11), between(-11, 11)];
    const size = between(2, 7);
    const turns = between(0.35, 1);
    const from = between(0, 6.3);
    const squash = between(0.4, 1);
    for (let t = 0; t <= 80; t++) {
      const angle = from + (turns * 6.2832 * t) / 80;
      const wobble = 1 + 0.08 * Math.sin(3 * angle + k);
      points.push([
        cx + size * wobble * Math.cos(angle),
        cy + size * squash * wobble * Math.sin(angle),
      ]);
    }
    lines.push({ points, widthStitches: between(0.07, 0.3), colour: pick(pencils) });
  }
  const patches: Patch[] = [];
  const big = seed % 2 === 0;
  for (let k = 0; k < 3; k++) {
    const large = big && k === 0;
    patches.push({
      x: between(-10, 10),
      y: large ? 13 : between(-10, 10),
      halfWidth: large ? between(20, 30) : between(2.5, 5),
      halfHeight: large ? between(8, 12) : between(2.5, 4),
      colour: pick(crayons),
    });
  }
  const bright = between(0.35, 0.8);
  const angle = between(0, 6.28);
  return {
    lines,
    patches,
    light: {
      paper: [bright * between(0.97, 1.12), bright, bright * between(0.6, 0.98)],
      far: between(0.5, 0.95),
      corner: between(0.6, 1),
      towards: [Math.cos(angle), Math.sin(angle)],
      shadow: seed % 3 === 0 ? between(0.6, 0.8) : 1,
      grain: between(0.005, 0.02),
      noise: between(0.005, 0.03),
      jpegQuality: 60 + below(36),
    },
    seed,
  };
}

/** Smooth noise, 0 to 1, with one knot a unit. */
function makeNoise(seed: number): (x: number, y: number) => number {
  const knot = (x: number, y: number): number => {
    let h = Math.imul(x, 374761393) ^ Math.imul(y, 668265263) ^ Math.imul(seed, 974634777);
    h = Math.imul(h ^ (h >>> 13), 1274126177);
    return ((h ^ (h >>> 16)) >>> 0) / 2 ** 32;
  };
  return (x, y) => {
    const [x0, y0] = [Math.floor(x), Math.floor(y)];
    const [u, v] = [x - x0, y - y0];
    const upper = knot(x0, y0) * (1 - u) + knot(x0 + 1, y0) * u;
    const lower = knot(x0, y0 + 1) * (1 - u) + knot(x0 + 1, y0 + 1) * u;
    return upper * (1 - v) + lower * v;
  };
}

/** How much crayon lies on paper at a place, 0 to 1: strokes with gaps. Its mean is `crayonMean`. */
export const crayonMean = 0.84;

/** The ruling of a seed: both kinds in turn, blue or grey, as school paper has it: no source. */
export function rulingOf(seed: number): Ruling {
  const below = sequence(104729 * seed + 3);
  for (let k = 0; k < 8; k++) below(2);
  const between = (least: number, most: number): number =>
    least + ((most - least) * below(10000)) / 10000;
  const kind = seed % 2 === 0 ? 'squared' : 'ruled';
  return {
    kind,
    apartStitches: kind === 'squared' ? between(1.1, 2.2) : between(1.8, 3.5),
    widthStitches: between(0.06, 0.12),
    colour: [
      [150, 180, 220],
      [170, 170, 180],
      [140, 165, 190],
    ][below(3)] as [number, number, number],
    turned: between(-0.08, 0.08),
    keystone: between(-0.12, 0.12),
  };
}

/**
 * Draws a sketch, photographs it and saves it as a JPEG.
 *
 * @param stitchPx pixels a stitch
 */
export async function photograph(
  sketch: Sketch,
  width: number,
  height: number,
  stitchPx: number,
): Promise<Picture> {
  const { light, seed } = sketch;
  const grain = makeNoise(seed);
  const tooth = makeNoise(seed + 101);
  const through = new Float32Array(3 * width * height).fill(1);
  const lay = (p: number, share: number, colour: readonly number[]): void => {
    for (let c = 0; c < 3; c++) through[3 * p + c] *= 1 - share * (1 - srgbToLinear[colour[c]]);
  };
  if (sketch.ruling) {
    const { kind, apartStitches, widthStitches, colour, turned, keystone } = sketch.ruling;
    const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
    const apart = apartStitches * stitchPx;
    const half = (widthStitches * stitchPx) / 2;
    for (let p = 0; p < width * height; p++) {
      const px = (p % width) + 0.5 - width / 2;
      const py = Math.floor(p / width) + 0.5 - height / 2;
      const scale = 1 + (keystone * py) / height;
      const [u, v] = [(cos * px + sin * py) / scale, (cos * py - sin * px) / scale];
      const away = (at: number): number => Math.abs(at - apart * Math.round(at / apart));
      const near = kind === 'squared' ? Math.min(away(u), away(v)) : away(v);
      const cover = Math.max(0, Math.min(1, half - near + 0.5));
      if (cover > 0) lay(p, cover, colour);
    }
  }
  for (const { x, y, halfWidth, halfHeight, colour } of sketch.patches) {
    for (let p = 0; p < width * height; p++) {
      const px = p % width;
      const py = (p - px) / width;
      const u = (px + 0.5 - width / 2) / stitchPx - x;
      const v = (py + 0.5 - height / 2) / stitchPx - y;
      if ((u / halfWidth) ** 2 + (v / halfHeight) ** 2 > 1) continue;
      const n = tooth((px + 0.6 * py) / 2.2, (py - 0.6 * px) / 9);
      lay(p, Math.min(1, 0.55 + 0.6 * n), colour);
    }
  }
  for (const { points, widthStitches, colour } of sketch.lines) {
    const half = (widthStitches * stitchPx) / 2;
    const share = new Float32Array(width * height);
    for (let k = 1; k < points.length; k++) {
      const [ax, ay] = [points[k - 1][0] * stitchPx + width / 2, points[k - 1][1] * stitchPx + height / 2]; // prettier-ignore
      const [bx, by] = [points[k][0] * stitchPx + width / 2, points[k][1] * stitchPx + height / 2];
      const length2 = (bx - ax) ** 2 + (by - ay) ** 2 || 1;
      const reach = half + 1.5;
      for (let y = Math.max(0, Math.floor(Math.min(ay, by) - reach)); y < Math.min(height, Math.max(ay, by) + reach); y++) {
        for (let x = Math.max(0, Math.floor(Math.min(ax, bx) - reach)); x < Math.min(width, Math.max(ax, bx) + reach); x++) {
          const t = ((x + 0.5 - ax) * (bx - ax) + (y + 0.5 - ay) * (by - ay)) / length2;
          const s = Math.max(0, Math.min(1, t));
          const apart = Math.hypot(x + 0.5 - ax - s * (bx - ax), y + 0.5 - ay - s * (by - ay));
          const cover = Math.max(0, Math.min(1, half - apart + 0.5));
          if (cover > share[y * width + x]) share[y * width + x] = cover;
        }
      }
    } // prettier-ignore
    for (let p = 0; p < share.length; p++) {
      if (share[p] === 0) continue;
      const n = tooth((p % width) / 1.7, Math.floor(p / width) / 1.7);
      lay(p, share[p] * Math.min(1, 0.45 + 0.8 * n), colour);
    }
  }
  const rgb = Buffer.alloc(3 * width * height);
  const below = sequence(seed + 5);
  const bell = (): number => (below(1024) + below(1024) + below(1024) + below(1024)) / 1024 - 2;
  for (let p = 0; p < width * height; p++) {
    const u = ((p % width) / width) * 2 - 1;
    const v = (Math.floor(p / width) / height) * 2 - 1;
    const along = (u * light.towards[0] + v * light.towards[1]) / 2.83 + 0.5;
    let here = 1 + along * (light.far - 1);
    here *= 1 + ((u * u + v * v) / 2) * (light.corner - 1);
    const edge = Math.max(0, Math.min(1, (u + 0.5 * v + 0.2) / 0.12));
    here *= 1 + edge * edge * (3 - 2 * edge) * (light.shadow - 1);
    here *= 1 + light.grain * 3.4 * (grain((p % width) / 3, Math.floor(p / width) / 3) - 0.5) * 2;
    for (let c = 0; c < 3; c++) {
      const seen = light.paper[c] * here * through[3 * p + c] * (1 + light.noise * 1.7 * bell());
      rgb[3 * p + c] = linearToSrgb8(seen);
    }
  }
  const raw = { width, height, channels: 3 } as const;
  const jpeg = await sharp(rgb, { raw }).jpeg({ quality: light.jpegQuality }).toBuffer();
  const { data } = await sharp(jpeg).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { width, height, data: new Uint8Array(data) };
}
