import { decode, encode } from 'fast-png';
import { zlibSync } from 'fflate';
import { joined } from '../bytes.js';
import { pngChunk, pngChunks, pngSignature } from './header/png-chunks.js';
import { pixelSize } from './header/pixel-size.js';
import { unpackZlib } from './header/unpack.js';
import { linearToSrgb8 } from '../colour/srgb.js';
import { isOpaque } from './picture.js';
import type { Picture } from './picture.js';
import { toLinearRaster } from './sampling/linear.js';

/**
 * A small copy for the pattern file, reduced in linear light.
 *
 * @param mostPx the longer side at most, pixels; a smaller picture is copied as it is
 */
export function thumbnailOf(picture: Picture, mostPx = 512): Picture {
  const reduceBy = Math.max(picture.width, picture.height) / mostPx;
  if (reduceBy <= 1) return { ...picture, data: new Uint8Array(picture.data) };
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

/** A thumbnail is smaller; one of another program may be larger, and is left out. */
const mostSidePx = 1024;
/** What was packed or unpacked last, of front and back: a chart asks for it several times. */
const lately: { readonly png: string; readonly picture: Picture | undefined }[] = [];
const mostLately = 2;

function keepLately(png: string, picture: Picture | undefined): void {
  lately.unshift({ png, picture });
  lately.length = Math.min(lately.length, mostLately);
}

/** The picture as a PNG in base64: 8-bit RGB where it is opaque, otherwise RGBA. */
export function thumbnailPng(picture: Picture): string {
  const { width, height, data } = picture;
  const channels = isOpaque(data) ? 3 : 4;
  const pixels = new Uint8Array(channels * width * height);
  for (let p = 0; p < width * height; p++) {
    for (let c = 0; c < channels; c++) pixels[channels * p + c] = data[4 * p + c];
  }
  const png = base64(
    encode({ width, height, data: pixels, channels, depth: 8 }, { zlib: { level: 2 } }),
  );
  if (Math.max(width, height) <= mostSidePx) keepLately(png, picture);
  return png;
}

/**
 * Reads a PNG of `thumbnailPng`: 8 bits a channel, RGB or RGBA; undefined when it is damaged. Whoever
 * gets it must not write into it: it may be the very picture that was packed.
 */
export function pictureFromPng(png: string): Picture | undefined {
  const known = lately.find((one) => one.png === png);
  if (known) return known.picture;
  let picture: Picture | undefined;
  try {
    picture = decoded(Uint8Array.from(atob(png), (letter) => letter.charCodeAt(0)));
  } catch {
    // The reader of PNGs has no error of its own.
  }
  keepLately(png, picture);
  return picture;
}

function decoded(bytes: Uint8Array): Picture | undefined {
  const size = pixelSize(bytes, 'png');
  if (size === undefined || Math.max(size.width, size.height) > mostSidePx) return undefined;
  // Each row begins with a byte for its filter; interlaced, nearly twice as many rows.
  const plain = headerAndPixels(bytes, 4 * size.width * size.height + 2 * size.height + 7);
  const { width, height, channels, depth, data: pixels } = decode(plain);
  if (depth !== 8 || channels < 3 || pixels.length !== channels * width * height) return undefined;
  const data = new Uint8Array(4 * width * height).fill(255);
  for (let p = 0; p < width * height; p++) {
    for (let c = 0; c < channels; c++) data[4 * p + c] = pixels[channels * p + c];
  }
  return { width, height, data };
}

/**
 * The same PNG with nothing else inside, since the reader unpacks whatever there is.
 *
 * @param mostBytes how long the pixels may be when they are unpacked
 */
function headerAndPixels(bytes: Uint8Array, mostBytes: number): Uint8Array {
  const chunks = [...pngChunks(bytes)];
  const pixels = joined(chunks.filter(({ type }) => type === 'IDAT').map(({ data }) => data));
  return joined([
    Uint8Array.from(pngSignature),
    pngChunk('IHDR', [chunks[0].data]),
    pngChunk('IDAT', [zlibSync(unpackZlib(pixels, mostBytes), { level: 0 })]),
    pngChunk('IEND', []),
  ]);
}

const digits = Uint8Array.from(
  'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/=',
  (digit) => digit.charCodeAt(0),
);

/** Base64 (RFC 4648, section 4): `btoa` would want a text of as many letters first. */
function base64(bytes: Uint8Array): string {
  const text = new Uint8Array(4 * Math.ceil(bytes.length / 3));
  for (let from = 0, to = 0; from < bytes.length; from += 3, to += 4) {
    const left = bytes.length - from;
    const [second, third] = [left > 1 ? bytes[from + 1] : 0, left > 2 ? bytes[from + 2] : 0];
    const bits = (bytes[from] << 16) | (second << 8) | third;
    text[to] = digits[bits >> 18];
    text[to + 1] = digits[(bits >> 12) & 63];
    text[to + 2] = digits[left > 1 ? (bits >> 6) & 63 : 64];
    text[to + 3] = digits[left > 2 ? bits & 63 : 64];
  }
  return new TextDecoder().decode(text);
}
