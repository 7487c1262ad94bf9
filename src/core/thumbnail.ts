import { decode, encode } from 'fast-png';
import { linearToSrgb8 } from './colour/srgb.js';
import type { Picture } from './picture.js';
import { toLinearRaster } from './sampling/linear.js';

/**
 * A small copy for the pattern file, reduced in linear light.
 *
 * @param mostPx the longer side at most, pixels; a smaller picture is copied as it is
 */
export function thumbnailOf(picture: Picture, mostPx = 512): Picture {
  const reduceBy = Math.max(picture.width, picture.height) / mostPx;
  if (reduceBy <= 1) return { ...picture, data: picture.data.slice() };
  const { width, height, data: linear } = toLinearRaster(picture, reduceBy);
  const data = new Uint8Array(4 * width * height);
  for (let p = 0; p < data.length; p += 4) {
    const alpha = linear[p + 3];
    data[p + 3] = Math.round(255 * alpha);
    if (data[p + 3] === 0) continue;
    for (let c = 0; c < 3; c++) data[p + c] = linearToSrgb8(linear[p + c] / alpha);
  }
  return { width, height, data };
}

/** The picture as a PNG in base64: 8-bit RGB where it is opaque, otherwise RGBA. */
export function thumbnailPng({ width, height, data }: Picture): string {
  const channels = isOpaque(data) ? 3 : 4;
  const pixels = new Uint8Array(channels * width * height);
  for (let p = 0; p < width * height; p++) {
    for (let c = 0; c < channels; c++) pixels[channels * p + c] = data[4 * p + c];
  }
  return base64(
    encode({ width, height, data: pixels, channels, depth: 8 }, { zlib: { level: 2 } }),
  );
}

/** Reads a PNG of `thumbnailPng`: 8 bits a channel, RGB or RGBA. */
export function pictureFromPng(png: string): Picture {
  const text = atob(png);
  const bytes = new Uint8Array(text.length);
  for (let p = 0; p < text.length; p++) bytes[p] = text.charCodeAt(p);
  const { width, height, channels, data: pixels } = decode(bytes);
  const data = new Uint8Array(4 * width * height).fill(255);
  for (let p = 0; p < width * height; p++) {
    for (let c = 0; c < channels; c++) data[4 * p + c] = pixels[channels * p + c];
  }
  return { width, height, data };
}

/** Whether no pixel of RGBA data lets anything through. */
export function isOpaque(data: Picture['data']): boolean {
  for (let p = 3; p < data.length; p += 4) if (data[p] !== 255) return false;
  return true;
}

function base64(bytes: Uint8Array): string {
  let text = '';
  for (let p = 0; p < bytes.length; p += 8192) {
    text += String.fromCharCode(...bytes.subarray(p, p + 8192));
  }
  return btoa(text);
}
