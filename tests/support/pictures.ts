import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect } from 'vitest';
import type { Picture } from '../../src/core/picture/picture.js';

/** Where the pictures of the tests lie. */
const pictures = join(import.meta.dirname, '..', '..', 'fixtures', 'pictures');
export const fixture = (name: string) => new Uint8Array(readFileSync(join(pictures, name)));
/** The beginning of an SVG, up to its attributes. */
export const svgStart = '<svg xmlns="http://www.w3.org/2000/svg" ';
export const text = (content: string) => new TextEncoder().encode(content);
/** What an error with this code and these facts looks like. */
export const fails = (code: string, facts: object = {}) =>
  expect.objectContaining({ code, facts: expect.objectContaining(facts) });

/** Red, green, blue, alpha at a place given in shares of the picture. */
export function at(picture: Picture, across: number, down: number): number[] {
  const x = Math.min(picture.width - 1, Math.floor(across * picture.width));
  const y = Math.min(picture.height - 1, Math.floor(down * picture.height));
  return [...picture.data.subarray(4 * (y * picture.width + x), 4 * (y * picture.width + x) + 4)];
}

/** Every channel is as wanted, within a tolerance. */
export const near = (got: number[], wanted: number[], tolerance: number) =>
  got.forEach((value, place) =>
    expect(Math.abs(value - wanted[place])).toBeLessThanOrEqual(tolerance),
  );

/** Our drawing of a lighthouse as a PNG of so many pixels across. */
export const lighthousePng = (widthPx: number): Promise<Buffer> =>
  sharp(join(pictures, '..', 'lighthouse.svg'))
    .resize(widthPx)
    .png()
    .toBuffer();
