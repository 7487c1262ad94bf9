import { upperMedian } from '../median.js';
import { ciede2000Fast } from '../colour/ciede2000.js';
import { linearToLab65 } from '../colour/lab.js';
import { linearToSrgb8 } from '../colour/srgb.js';
import type { Picture } from './picture.js';
import { toLinearRaster } from './sampling/linear.js';
import type { LinearRaster } from './sampling/linear.js';

/** What of a picture is its own, not the ground that it stands on; on a small raster of it. */
export interface Subject {
  /** Pixels of the raster, at most 256 a side; it covers the whole picture. */
  readonly width: number;
  /** Height in pixels. */
  readonly height: number;
  /** 1 where the subject is, row by row. */
  readonly mask: Uint8Array;
  /** The mask with lines that are finer than its pixels, where there are any: how far the subject reaches. */
  readonly reach?: Uint8Array;
  /** How it was told: by transparency, by a border of one colour; not at all: all of it counts. */
  readonly ground: 'clear' | 'plain' | 'none';
  /** Linear r, g, b, premultiplied, and alpha of each pixel of the raster; length 4·width·height. */
  readonly colours: Float32Array;
  /** Colour of a plain ground along the border: r, g, b from 0 to 255. */
  readonly plain?: readonly [number, number, number];
}

const sidePx = 256;
/** So many pixels a side are looked at before they are reduced. */
const looked = 1024;
/** Share of the picture that is clear where its ground is. */
const clearShare = 0.02;
/** Share of the border that shows one colour where the ground is plain (judged by eye). */
const borderShare = 0.85;
/** CIEDE2000 within which the border is one colour, and within which the ground goes on. */
const [oneColour, sameGround] = [6, 12];
/** A subject smaller or larger than this share was not told from its ground. */
const subjectShares = { least: 0.005, most: 0.97 };

/** Tells a picture's subject from its ground: what is not clear, or not reached from a plain border. */
export function subjectOf(picture: Picture): Subject {
  const near = thinned(picture);
  const longer = Math.max(near.width, near.height);
  const raster = toLinearRaster(near, Math.max(1, longer / sidePx));
  const { width, height, data } = raster;
  const count = width * height;
  const seen = Uint8Array.from({ length: count }, (_, p) => (data[4 * p + 3] >= 0.5 ? 1 : 0));
  const visible = sum(seen);
  if (visible > 0 && visible < (1 - clearShare) * count) {
    const reach = withHairlines(near, seen, width, height);
    return { width, height, mask: seen, ...(reach && { reach }), ground: 'clear', colours: data };
  }
  const found = offPlainGround(raster);
  const share = found ? sum(found.mask) / count : 0;
  if (found && share >= subjectShares.least && share <= subjectShares.most) {
    return { width, height, ...found, ground: 'plain', colours: data };
  }
  return { width, height, mask: new Uint8Array(count).fill(1), ground: 'none', colours: data };
}

/**
 * A line finer than a pixel of the raster is more than half clear in it: cells away from the mask are
 * added where the picture itself has something opaque. Undefined where there is none.
 */
function withHairlines(
  { width, height, data }: Picture,
  seen: Uint8Array,
  columns: number,
  rows: number,
): Uint8Array | undefined {
  const near = (x: number, y: number): boolean => {
    for (let v = Math.max(0, y - 1); v <= Math.min(rows - 1, y + 1); v++) {
      for (let u = Math.max(0, x - 1); u <= Math.min(columns - 1, x + 1); u++) {
        if (seen[v * columns + u]) return true;
      }
    }
    return false;
  };
  let reach: Uint8Array | undefined;
  for (let y = 0; y < height; y++) {
    const row = Math.min(rows - 1, Math.floor((y * rows) / height));
    for (let x = 0; x < width; x++) {
      if (data[4 * (y * width + x) + 3] < 128) continue;
      const column = Math.min(columns - 1, Math.floor((x * columns) / width));
      if (seen[row * columns + column] || near(column, row)) continue;
      reach ??= seen.slice();
      reach[row * columns + column] = 1;
    }
  }
  return reach;
}

/** What is not reached from the border over one colour; undefined where the border shows several. */
function offPlainGround(
  raster: LinearRaster,
): Required<Pick<Subject, 'mask' | 'plain'>> | undefined {
  const { width, height, data } = raster;
  const count = width * height;
  const lab = new Float64Array(3 * count);
  for (let p = 0; p < count; p++) {
    const [r, g, b, alpha] = data.subarray(4 * p, 4 * p + 4);
    // What little is clear counts as white.
    lab.set(linearToLab65(r + 1 - alpha, g + 1 - alpha, b + 1 - alpha), 3 * p);
  }
  const border = Array.from({ length: count }, (_, p) => p).filter((p) => {
    const [x, y] = [p % width, Math.floor(p / width)];
    return x === 0 || y === 0 || x === width - 1 || y === height - 1;
  });
  const middle = [0, 1, 2].map((c) => upperMedian(border.map((p) => lab[3 * p + c])));
  const away = (p: number) =>
    ciede2000Fast(lab[3 * p], lab[3 * p + 1], lab[3 * p + 2], middle[0], middle[1], middle[2]);
  const queue = border.filter((p) => away(p) < oneColour);
  if (queue.length < borderShare * border.length) return undefined;
  const mask = new Uint8Array(count).fill(1);
  for (const p of queue) mask[p] = 0;
  const like = queue.slice();
  const reach = (q: number) => {
    if (mask[q] === 0 || away(q) >= sameGround) return;
    mask[q] = 0;
    queue.push(q);
  };
  for (let at = 0; at < queue.length; at++) {
    const p = queue[at];
    const x = p % width;
    if (x > 0) reach(p - 1);
    if (x + 1 < width) reach(p + 1);
    if (p >= width) reach(p - width);
    if (p + width < count) reach(p + width);
  }
  const [r, g, b] = [0, 1, 2].map((c) =>
    linearToSrgb8(
      like.reduce((total, p) => total + data[4 * p + c] + 1 - data[4 * p + 3], 0) / like.length,
    ),
  );
  return { mask, plain: [r, g, b] };
}

/** Of a large picture every second, third … pixel: enough to tell what stands where. */
function thinned({ width, height, data }: Picture): Picture {
  const step = Math.floor(Math.max(width, height) / looked);
  if (step < 2) return { width, height, data };
  const [columns, rows] = [Math.ceil(width / step), Math.ceil(height / step)];
  const kept = new Uint8Array(4 * columns * rows);
  for (let y = 0, to = 0; y < rows; y++) {
    for (let x = 0; x < columns; x++, to += 4) {
      const from = 4 * (y * step * width + x * step);
      for (let c = 0; c < 4; c++) kept[to + c] = data[from + c];
    }
  }
  return { width: columns, height: rows, data: kept };
}

const sum = (mask: Uint8Array): number => mask.reduce((total, one) => total + one, 0);
