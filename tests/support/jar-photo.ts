import sharp from 'sharp';
import { parseHex } from '../../src/core/colour/hex.js';
import { linearToSrgb8, srgbToLinear } from '../../src/core/colour/srgb.js';
import { beadInk, beadPainter } from '../../src/core/pages/worked/bead-light.js';
import { glossOf } from '../../src/core/pages/worked/gloss.js';

/** Heaps of beads on white paper, photographed by program. */
export interface JarPhoto {
  rows: number;
  columns: number;
  /** Row by row; undefined leaves a place empty. */
  hexes: readonly (string | undefined)[];
  seed: number;
  /** A second colour among the beads of one place, by its number. */
  mixed?: readonly [place: number, hex: string];
  widthPx?: number;
  heightPx?: number;
  /** Which beads are painted: the panel's painter, or matt balls (Lambert's law) with a lamp spot. */
  beads?: 'painter' | 'balls';
  finish?: string;
  /** Turn of the camera, degrees. */
  turnDegrees?: number;
  /** Camera held aslant: how much wider the lower edge is than the middle, as a share. */
  keystone?: number;
  /** Light at the left and the right edge, share of white; red, green and blue of the lamp. */
  light?: readonly [number, number];
  lamp?: readonly [number, number, number];
  noise?: number;
  quality?: number;
  /** Dark table around the paper, share of each side. */
  table?: number;
  /** Radius of a heap, share of the pitch. */
  heap?: number;
  /** Beads in a heap; as many as cover it when left out. */
  count?: number;
  /** Radius of a bead, pixels. */
  beadPx?: number;
}

/** A generator of numbers from 0 to 1 (mulberry32). */
export function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** The photograph as JPEG bytes. */
export async function jarPhoto(wish: JarPhoto): Promise<Buffer> {
  const { rows, columns, hexes, widthPx: width = 1600, heightPx: height = 1200 } = wish;
  const next = random(wish.seed);
  const data = new Uint8ClampedArray(4 * width * height).fill(255);
  const canvas = { width, height, data };
  const turn = ((wish.turnDegrees ?? 0) * Math.PI) / 180;
  const margin = (wish.table ?? 0) + 0.06;
  const pitchX = (width * (1 - 2 * margin)) / columns;
  const pitchY = (height * (1 - 2 * margin)) / rows;
  const heap = Math.min(90, (wish.heap ?? 0.33) * Math.min(pitchX, pitchY));
  const beadPx = wish.beadPx ?? 13;
  const spots: { x: number; y: number; hex: string }[] = [];
  hexes.forEach((hex, place) => {
    if (hex === undefined) return;
    const wide = 1 + 2 * (wish.keystone ?? 0) * ((Math.floor(place / columns) + 0.5) / rows - 0.5);
    const u = ((margin - 0.5) * width + ((place % columns) + 0.5) * pitchX) * wide;
    const v = (margin - 0.5) * height + (Math.floor(place / columns) + 0.5) * pitchY;
    const x = width / 2 + u * Math.cos(turn) - v * Math.sin(turn);
    const y = height / 2 + u * Math.sin(turn) + v * Math.cos(turn);
    const size = heap * (0.75 + 0.25 * next());
    const count = wish.count ?? (3.2 * size * size) / (beadPx * beadPx);
    for (let n = 0; n < count; n++) {
      const far = Math.sqrt(next()) * size;
      const way = next() * 2 * Math.PI;
      const other = wish.mixed?.[0] === place && n % 2 === 0 ? wish.mixed[1] : hex;
      spots.push({ x: x + far * Math.cos(way), y: y + far * Math.sin(way), hex: other });
    }
  });
  for (const spot of spots) castShadow(data, width, height, spot.x + 5, spot.y + 6, beadPx * 1.15);
  for (const { x, y, hex } of spots) {
    const rgb = parseHex(hex)!;
    if (wish.beads === 'balls') {
      ball(data, width, height, x, y, beadPx, rgb);
    } else {
      const way = next() * Math.PI;
      const gloss = glossOf(wish.finish);
      const spot = {
        x,
        y,
        halfAlong: beadPx * 0.8,
        halfAcross: beadPx,
        alongX: Math.cos(way),
        alongY: Math.sin(way),
        dimple: 0.5,
      };
      beadPainter(gloss)([canvas], spot, [beadInk(rgb, gloss)]);
    }
  }
  shade(wish, data, width, height, next);
  return sharp(data, { raw: { width, height, channels: 4 } })
    .removeAlpha()
    .jpeg({ quality: wish.quality ?? 85 })
    .toBuffer();
}

function castShadow(
  data: Uint8ClampedArray,
  w: number,
  h: number,
  x: number,
  y: number,
  r: number,
) {
  eachWithin(w, h, x, y, r, (at, far) => {
    const dim = 0.9 + 0.1 * far;
    for (let c = 0; c < 3; c++) data[at + c] *= dim;
  });
}

/**
 * A matt ball (Lambert's law) under a lamp at the upper left and light from all around, with a small
 * highlight. The paper lies flat in the same light and counts as white.
 */
function ball(
  data: Uint8ClampedArray,
  w: number,
  h: number,
  x: number,
  y: number,
  r: number,
  rgb: readonly number[],
) {
  eachWithin(w, h, x, y, r, (at, far, dx, dy) => {
    const nz = Math.sqrt(1 - far * far);
    const lambert = Math.max(0, -0.45 * dx - 0.5 * dy + 0.74 * nz);
    const light = (0.35 + 0.65 * lambert) / (0.35 + 0.65 * 0.74);
    const highlight = lambert > 0.985 ? 0.8 : 0;
    for (let c = 0; c < 3; c++) {
      data[at + c] = linearToSrgb8(srgbToLinear[rgb[c]] * light + highlight);
    }
  });
}

function eachWithin(
  w: number,
  h: number,
  x: number,
  y: number,
  r: number,
  paint: (at: number, far: number, dx: number, dy: number) => void,
) {
  for (let py = Math.max(0, Math.floor(y - r)); py < Math.min(h, y + r + 1); py++) {
    for (let px = Math.max(0, Math.floor(x - r)); px < Math.min(w, x + r + 1); px++) {
      const dx = (px + 0.5 - x) / r;
      const dy = (py + 0.5 - y) / r;
      const far = Math.sqrt(dx * dx + dy * dy);
      if (far < 1) paint(4 * (py * w + px), far, dx, dy);
    }
  }
}

/** Lamp, uneven light, table and grain, on linear light. */
function shade(
  wish: JarPhoto,
  data: Uint8ClampedArray,
  width: number,
  height: number,
  next: () => number,
) {
  const { light = [1, 1], lamp = [1, 1, 1], noise = 0, table = 0 } = wish;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = 4 * (y * width + x);
      const across = x / width;
      const down = y / height - 0.5;
      const level =
        (light[0] + (light[1] - light[0]) * across) * (1 - 0.25 * down * down - 0.08 * down);
      const edge = Math.min(x / width, 1 - x / width, y / height, 1 - y / height);
      for (let c = 0; c < 3; c++) {
        const own = edge < table ? 0.12 - 0.04 * c : srgbToLinear[data[at + c]];
        const code = linearToSrgb8(own * level * lamp[c]);
        data[at + c] = code + noise * (next() + next() + next() - 1.5) * 2;
      }
    }
  }
}
