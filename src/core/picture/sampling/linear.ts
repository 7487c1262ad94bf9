import { srgbToLinear } from '../../colour/srgb.js';
import { drain } from '../../steps.js';
import type { Steps } from '../../steps.js';
import type { Picture } from '../picture.js';
import { visibleShare } from './means.js';

/** A picture in linear light: 4 numbers a pixel (red, green, blue, alpha), 0 to 1, rows from the top. */
export interface LinearRaster {
  readonly width: number;
  readonly height: number;
  /** Premultiplied by alpha; length 4·width·height. */
  readonly data: Float32Array;
}

/** Rows of the result that are made in one step. */
const rowsAStep = 32;

/**
 * Reduces a picture in linear light: every pixel of the result is the exact mean over the part of
 * the picture that it covers, weighted by alpha.
 *
 * @param reduceBy how many pixels become one each way, 1 or more; need not be whole: the sides of
 *   the result are the nearest whole numbers, at least 1
 */
export function toLinearRaster(picture: Picture, reduceBy: number): LinearRaster {
  return drain(reducing(picture, reduceBy));
}

/** The same in steps. */
export function* reducing(picture: Picture, reduceBy: number): Steps<LinearRaster> {
  const width = Math.max(1, Math.round(picture.width / reduceBy));
  const height = Math.max(1, Math.round(picture.height / reduceBy));
  const data = new Float32Array(4 * width * height);
  const columns = shares(picture.width, width);
  const rows = shares(picture.height, height);
  const sums = new Float64Array(4 * width);
  // One kind of array, whatever kind it is given as, makes the innermost loop quicker.
  const { buffer, byteOffset, length } = picture.data;
  const pixels = new Uint8Array(buffer, byteOffset, length);
  let y = 0;
  for (let to = 0; to < height; to++) {
    sums.fill(0);
    for (let more = true; more; y++) {
      const last = y === rows.last[to];
      const weight = y === rows.first[to] ? rows.firstShare[to] : last ? rows.lastShare[to] : 1;
      if (weight > 0) addRow(pixels, picture.width, y, weight, columns, sums);
      more = !last;
    }
    const cell = (picture.width / width) * (picture.height / height);
    const at = 4 * width * to;
    for (let p = 0; p < sums.length; p++) data[at + p] = sums[p] / cell;
    if (to % rowsAStep === 0) yield { stage: 'colours' };
    // The last row of this strip may be the first of the next as well.
    if (to + 1 < height) y = rows.first[to + 1];
  }
  return { width, height, data };
}

interface Shares {
  /** First and last pixel of each part, and how much of them belongs to it. */
  readonly first: Int32Array;
  readonly last: Int32Array;
  readonly firstShare: Float64Array;
  readonly lastShare: Float64Array;
}

/** Cuts a row of `from` pixels into `to` equal parts. */
function shares(from: number, to: number): Shares {
  const first = new Int32Array(to);
  const last = new Int32Array(to);
  const firstShare = new Float64Array(to);
  const lastShare = new Float64Array(to);
  for (let part = 0; part < to; part++) {
    const begin = (part * from) / to;
    const end = ((part + 1) * from) / to;
    first[part] = Math.min(from - 1, Math.floor(begin));
    last[part] = Math.max(first[part], Math.ceil(end) - 1);
    firstShare[part] = Math.min(first[part] + 1, end) - begin;
    lastShare[part] = end - Math.max(last[part], begin);
  }
  return { first, last, firstShare, lastShare };
}

function addRow(
  data: Uint8Array,
  width: number,
  y: number,
  rowShare: number,
  { first, last, firstShare, lastShare }: Shares,
  sums: Float64Array,
): void {
  const start = 4 * width * y;
  const light = srgbToLinear;
  const visible = visibleShare;
  for (let part = 0; part < first.length; part++) {
    const from = start + 4 * first[part];
    const to = start + 4 * last[part];
    let weight = firstShare[part] * visible[data[from + 3]];
    let a = weight;
    let r = weight * light[data[from]];
    let g = weight * light[data[from + 1]];
    let b = weight * light[data[from + 2]];
    for (let at = from + 4; at < to; at += 4) {
      const alpha = data[at + 3];
      if (alpha === 255) {
        a += 1;
        r += light[data[at]];
        g += light[data[at + 1]];
        b += light[data[at + 2]];
        continue;
      }
      weight = visible[alpha];
      a += weight;
      r += weight * light[data[at]];
      g += weight * light[data[at + 1]];
      b += weight * light[data[at + 2]];
    }
    if (to > from) {
      weight = lastShare[part] * visible[data[to + 3]];
      a += weight;
      r += weight * light[data[to]];
      g += weight * light[data[to + 1]];
      b += weight * light[data[to + 2]];
    }
    sums[4 * part] += rowShare * r;
    sums[4 * part + 1] += rowShare * g;
    sums[4 * part + 2] += rowShare * b;
    sums[4 * part + 3] += rowShare * a;
  }
}
