import { decode as decodePng } from 'fast-png';
import type { Picture } from '../../core/picture/picture.js';

/** Alpha is exact this way; a canvas multiplies it in and out. */
export function exactPng(bytes: Uint8Array): Picture {
  const { width, height, channels, depth, data, palette } = decodePng(bytes);
  const out = new Uint8Array(4 * width * height).fill(255);
  const code = (value: number) => (depth === 16 ? Math.round(value / 257) : value);
  for (let p = 0; p < width * height; p++) {
    const at = 4 * p;
    if (palette) {
      const colour = palette[paletteIndex(data, p, width, depth)];
      for (let c = 0; c < colour.length; c++) out[at + c] = colour[c];
      continue;
    }
    const from = channels * p;
    const grey = channels < 3;
    for (let c = 0; c < 3; c++) out[at + c] = code(data[from + (grey ? 0 : c)]);
    if (channels === 2 || channels === 4) out[at + 3] = code(data[from + channels - 1]);
  }
  return { width, height, data: out };
}

/** Pixels of fewer than eight bits stand packed, row by row. */
function paletteIndex(data: ArrayLike<number>, p: number, width: number, depth: number): number {
  if (depth === 8) return data[p];
  const perByte = 8 / depth;
  const x = p % width;
  const row = Math.floor(p / width) * Math.ceil(width / perByte);
  const shift = 8 - depth * ((x % perByte) + 1);
  return (data[row + Math.floor(x / perByte)] >> shift) & (2 ** depth - 1);
}

/** Whether a PNG's colours are plain sRGB and whole bytes (or a palette): chunks before the pixels tell. */
export function hasNoProfile(png: Uint8Array): boolean {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  for (let at = 8; at + 12 <= png.length; at += 12 + view.getUint32(at)) {
    const type = String.fromCharCode(...png.subarray(at + 4, at + 8));
    if (type === 'IHDR' && png[at + 16] < 8) return false;
    if (type === 'iCCP' || type === 'cICP' || type === 'tRNS' || type === 'eXIf') return false;
    if (type === 'IDAT') return true;
  }
  return true;
}
