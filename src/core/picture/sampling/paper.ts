import { linearToSrgb8 } from '../../colour/srgb.js';
import type { Picture } from '../picture.js';
import { toLinearRaster } from './linear.js';
import type { LinearRaster } from './linear.js';
import { paperLight } from './paper-light.js';
import type { PaperLight } from './paper-light.js';
import { removeRuling } from './paper-unruled.js';

/** Longer side of an evened-out picture at most, pixels. */
export const paperSidePx = 1024;
/** By how much a mark is darker than paper in its darkest channel, of 255: faintly, and surely. */
const [faint, sure] = [15, 30];
/** … and in multiples of the unevenness of the paper itself. */
const [faintNoise, sureNoise] = [4, 7];
/** A mark of fewer pixels is a speck of dust, at 1024 px. */
const speckPixels = 24;

/**
 * Evens out a scan or photograph of a drawing on paper: grey, tinted, shaded paper becomes exactly
 * white, marks keep their colour as seen on white paper; the lines of ruled and squared paper go. Light is divided by the light of bare
 * paper at the same place, in linear light.
 *
 * @returns opaque, at most `paperSidePx` a side; a pixel that is exactly white is paper
 */
export function evenPaper(picture: Picture): Picture {
  const reduceBy = Math.max(1, Math.max(picture.width, picture.height) / paperSidePx);
  const raster = onWhite(toLinearRaster(picture, reduceBy));
  const { width, height } = raster;
  const paper = paperLight(raster);
  const data = divided(raster, paper);
  removeRuling(data, width, height, (own) => soften(inkOf(own), width, height));
  const ink = soften(inkOf(data), width, height);
  const noise = unevenness(ink, paper, width, height);
  const kept = marks(
    ink,
    Math.min(40, Math.max(faint, faintNoise * noise)),
    Math.min(60, Math.max(sure, sureNoise * noise)),
    width,
    height,
  );
  for (let p = 0; p < kept.length; p++) {
    if (kept[p] && inkAt(data, p) > 0) continue;
    data[4 * p] = data[4 * p + 1] = data[4 * p + 2] = 255;
  }
  return { width, height, data };
}

/** How much darker than white paper a pixel is in its darkest channel, 0..255. */
export function inkAt(data: Uint8Array | Uint8ClampedArray, pixel: number): number {
  const p = 4 * pixel;
  return 255 - Math.min(data[p], data[p + 1], data[p + 2]);
}

function inkOf(data: Uint8Array): Float32Array {
  const ink = new Float32Array(data.length / 4);
  for (let p = 0; p < ink.length; p++) ink[p] = inkAt(data, p);
  return ink;
}

function onWhite(raster: LinearRaster): LinearRaster {
  const { data } = raster;
  for (let p = 0; p < data.length; p += 4) {
    const open = 1 - data[p + 3];
    if (open === 0) continue;
    for (let c = 0; c < 3; c++) data[p + c] += open;
    data[p + 3] = 1;
  }
  return raster;
}

/** Codes by linear light, in steps much finer than any code's. */
const steps = 16384;
const codeOf = Uint8Array.from({ length: steps + 1 }, (_, k) => linearToSrgb8((k + 0.5) / steps));

/** Coded colours, every pixel divided by the light of the paper there. */
function divided({ width, height, data }: LinearRaster, paper: PaperLight): Uint8Array {
  const { columns, rows, cellPx, light } = paper;
  const coded = new Uint8Array(4 * width * height).fill(255);
  /** One over the light along this row of pixels, at the middle of each cell. */
  const here = new Float64Array(3 * columns);
  for (let y = 0; y < height; y++) {
    const v = Math.min(rows - 1, Math.max(0, (y + 0.5) / cellPx - 0.5));
    const upper = 3 * columns * Math.floor(v);
    const lower = 3 * columns * Math.ceil(v);
    const down = v - Math.floor(v);
    for (let k = 0; k < here.length; k++) {
      const mixed = light[upper + k] + down * (light[lower + k] - light[upper + k]);
      here[k] = 1 / Math.max(1e-4, mixed);
    }
    for (let x = 0; x < width; x++) {
      const u = Math.min(columns - 1, Math.max(0, (x + 0.5) / cellPx - 0.5));
      const left = 3 * Math.floor(u);
      const right = 3 * Math.ceil(u);
      const across = u - Math.floor(u);
      const p = 4 * (y * width + x);
      for (let c = 0; c < 3; c++) {
        const gain = here[left + c] + across * (here[right + c] - here[left + c]);
        const share = data[p + c] * gain;
        coded[p + c] = codeOf[share < 1 ? Math.floor(share * steps) : steps];
      }
    }
  }
  return coded;
}

/** Means with weights 1 2 1 both ways. */
function soften(values: Float32Array, width: number, height: number): Float32Array {
  const across = new Float32Array(values.length);
  const soft = new Float32Array(values.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const p = y * width + x;
      const left = values[x > 0 ? p - 1 : p];
      across[p] = (left + 2 * values[p] + values[x + 1 < width ? p + 1 : p]) / 4;
    }
  }
  for (let p = 0; p < values.length; p++) {
    const up = across[p >= width ? p - width : p];
    soft[p] = (up + 2 * across[p] + across[p + width < values.length ? p + width : p]) / 4;
  }
  return soft;
}

/** The ink that bare paper seems to have: the median over cells where paper was seen. */
function unevenness(ink: Float32Array, paper: PaperLight, width: number, height: number): number {
  const { columns, cellPx, seen } = paper;
  const counts = new Int32Array(256);
  let total = 0;
  for (let y = 0; y < height; y += 2) {
    for (let x = 0; x < width; x += 2) {
      if (!seen[Math.floor(y / cellPx) * columns + Math.floor(x / cellPx)]) continue;
      counts[Math.floor(ink[y * width + x])]++;
      total++;
    }
  }
  let value = 0;
  for (let sum = counts[0]; sum < total / 2 && value < 255; sum += counts[value]) value++;
  return value;
}

/** 1 in every patch of faint ink that somewhere is surely ink and is larger than a speck. */
function marks(
  ink: Float32Array,
  low: number,
  high: number,
  width: number,
  height: number,
): Uint8Array {
  const kept = new Uint8Array(ink.length);
  const least = speckPixels * (Math.max(width, height) / paperSidePx) ** 2;
  const met = new Uint8Array(ink.length);
  const patch = new Int32Array(ink.length);
  for (let start = 0; start < ink.length; start++) {
    if (met[start] || ink[start] < high) continue;
    let n = 0;
    patch[n++] = start;
    met[start] = 1;
    for (let at = 0; at < n; at++) {
      const p = patch[at];
      const x = p % width;
      const y = (p - x) / width;
      for (let dy = y > 0 ? -1 : 0; dy <= (y + 1 < height ? 1 : 0); dy++) {
        for (let dx = x > 0 ? -1 : 0; dx <= (x + 1 < width ? 1 : 0); dx++) {
          const q = p + dy * width + dx;
          if (met[q] || ink[q] < low) continue;
          met[q] = 1;
          patch[n++] = q;
        }
      }
    }
    if (n >= least) for (let at = 0; at < n; at++) kept[patch[at]] = 1;
  }
  return kept;
}
