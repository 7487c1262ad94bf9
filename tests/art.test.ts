import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { decideArt } from '../src/core/picture/sampling/art.js';
import { toLinearRaster } from '../src/core/picture/sampling/linear.js';
import { pictureFromPng, thumbnailOf, thumbnailPng } from '../src/core/picture/thumbnail.js';
import { linearToSrgb8, srgbToLinear } from '../src/core/colour/srgb.js';
import { paint, sequence } from './support/paint.js';
import type { Rgba } from './support/paint.js';

const byte = (value: number) => Math.max(0, Math.min(255, Math.round(value)));

/** A smooth random field: a few waves of random direction; -1 to 1. */
function waves(seed: number, count: number, longest: number) {
  const random = sequence(seed);
  const made = Array.from({ length: count }, () => {
    const angle = random(6283) / 1000;
    const size = (2 * Math.PI * (1 + random(60) / 10)) / longest;
    return [size * Math.cos(angle), size * Math.sin(angle), random(6283) / 1000];
  });
  return (x: number, y: number) =>
    made.reduce((sum, [a, b, c]) => sum + Math.sin(a * x + b * y + c), 0) / Math.sqrt(count) / 1.6;
}

describe('drawings', () => {
  const disc = (x: number, y: number, r: number) => (x - 200) ** 2 + (y - 200) ** 2 < r * r;
  const cases: [string, ReturnType<typeof paint>][] = [
    ['flat colours with an outline', paint(400, 400, (x, y) =>
      disc(x, y, 120) ? [230, 60, 40] : disc(x, y, 130) ? [0, 0, 0] : [250, 230, 180])],
    ['one colour on transparent', paint(400, 400, (x, y) =>
      disc(x, y, 120) ? [20, 90, 60] : [0, 0, 0, 0])],
    ['one colour', paint(100, 80, () => [30, 90, 160])],
    ['line art', paint(500, 400, (x, y) =>
      Math.abs(((x + y) % 40) - 20) < 1.5 || Math.abs(((x - 2 * y) % 90) - 20) < 2 ? [0, 0, 0] : [255, 255, 255])],
    ['5 × 5 pixels', paint(5, 5, (x, y) => [50 * Math.floor(x), 50 * Math.floor(y), 90])],
    ['nothing visible', paint(30, 30, () => [9, 9, 9, 0])],
  ]; // prettier-ignore
  it.each(cases)('%s', (_, picture) => expect(decideArt(picture).art).toBe('drawing'));

  it('pencil on uneven grey paper', () => {
    const random = sequence(8);
    const light = waves(4, 3, 1500);
    const sketch = paint(600, 450, (x, y) => {
      const paper = 212 + 8 * light(x, y) + random(31) - 15;
      const line = Math.abs(Math.hypot(x - 300, y - 220) - 120) < 2 || Math.abs(y - 340) < 2;
      const value = byte(line ? paper - 70 : paper);
      return [value, value, byte(value - 6)];
    });
    expect(decideArt(sketch)).toMatchObject({ art: 'drawing', reason: 'paper' });
  });
});

describe('photos', () => {
  const greys = (f: (x: number, y: number) => number): ((x: number, y: number) => Rgba) =>
    (x, y) => [byte(f(x, y)), byte(f(x, y)), byte(f(x, y))]; // prettier-ignore
  const [red, green, blue] = [waves(1, 9, 300), waves(2, 9, 300), waves(3, 9, 300)];
  const [wide, fine] = [waves(3, 4, 1200), waves(5, 8, 24)];
  const random = sequence(6);
  const cases: [string, ReturnType<typeof paint>][] = [
    ['a scene of many colours with grain', paint(600, 400, (x, y) =>
      [red, green, blue].map((f) => byte(120 + 90 * f(x, y) + random(13) - 6)) as unknown as Rgba)],
    ['the same in black and white', paint(600, 400, greys((x, y) => 110 + 90 * red(x, y) + random(13) - 6))],
    ['a straight gradient', paint(300, 300, greys((_, y) => (y * 255) / 300))],
    ['a round gradient', paint(256, 256, greys((x, y) => Math.hypot(x - 128, y - 128) * 1.4))],
    ['a dark figure before a bright sky, in black and white', paint(512, 512, (x, y) => {
      const grey = byte(
        Math.hypot((x - 200) / 0.7, y - 330) < 190 ? 26 + 20 * wide(x, y) + 6 * fine(x, y) + random(13)
          : y > 360 ? 105 + 50 * fine(x, y) + 20 * wide(x, y) + random(31)
          : 172 + 18 * wide(x, y) + random(13));
      return [grey, grey, grey];
    })],
    ['a sunset', paint(400, 300, (_, y) => [byte(250 - y / 3), byte(200 - y / 2), byte(90 + y / 4)])],
  ]; // prettier-ignore
  it.each(cases)('%s', (_, picture) => expect(decideArt(picture).art).toBe('photo'));
});

describe('reducing in linear light', () => {
  it('keeps the mean of every part, weighted by alpha', () => {
    const random = sequence(9);
    const picture = paint(10, 6, () => [random(256), random(256), random(256), random(256)]);
    const raster = toLinearRaster(picture, 2.5);
    expect([raster.width, raster.height]).toEqual([4, 2]);
    // Each part is 2.5 × 3 pixels: four times finer pixels make it whole.
    for (let p = 0; p < 8; p++) {
      const sums = [0, 0, 0, 0];
      for (let k = 0; k < 10 * 12; k++) {
        const x = Math.floor(((p % 4) * 10 + (k % 10)) / 4);
        const y = Math.floor((Math.floor(p / 4) * 12 + Math.floor(k / 10)) / 4);
        const at = 4 * (10 * y + x);
        const alpha = picture.data[at + 3] / 255;
        for (let c = 0; c < 3; c++) sums[c] += (alpha * srgbToLinear[picture.data[at + c]]) / 120;
        sums[3] += alpha / 120;
      }
      sums.forEach((sum, c) => expect(raster.data[4 * p + c]).toBeCloseTo(sum, 6));
    }
  });

  it('black and white lines become the grey of half the light, sRGB 188', () => {
    const lines = paint(1024, 1024, (x) => (Math.floor(x) % 2 ? [255, 255, 255] : [0, 0, 0]));
    const small = thumbnailOf(lines);
    expect([small.width, small.height]).toEqual([512, 512]);
    // IEC 61966-2-1: 1.055 · 0.5^(1/2.4) - 0.055 = 0.7354, · 255 = 187.5.
    expect(linearToSrgb8(0.5)).toBe(188);
    expect([...small.data.subarray(0, 4)]).toEqual([188, 188, 188, 255]);
  });
});

describe('thumbnails', () => {
  const random = sequence(2);
  const opaque = paint(33, 21, () => [random(256), random(256), random(256)]);
  const glass = paint(33, 21, () => [random(256), random(256), random(256), random(256)]);

  it('are copied when small, and never longer than asked', () => {
    expect(thumbnailOf(opaque)).toEqual(opaque);
    const long = thumbnailOf(
      paint(999, 10, () => [1, 2, 3]),
      100,
    );
    expect([long.width, long.height]).toEqual([100, 1]);
    expect([...long.data.subarray(0, 4)]).toEqual([1, 2, 3, 255]);
  });

  it('are PNG files that pngjs reads too: RGB when opaque, else RGBA', () => {
    for (const [picture, colorType] of [
      [opaque, 2],
      [glass, 6],
    ] as const) {
      const file = Buffer.from(thumbnailPng(picture), 'base64');
      expect(file[25]).toBe(colorType);
      const read = PNG.sync.read(file);
      expect([read.width, read.height]).toEqual([33, 21]);
      expect([...read.data]).toEqual([...picture.data]);
      const png = thumbnailPng(picture);
      expect(pictureFromPng(png)).toBe(picture);
      // Two others, and it is no longer at hand: now it is unpacked.
      for (const grey of [1, 2]) thumbnailPng(paint(2, 2, () => [grey, grey, grey]));
      const unpacked = pictureFromPng(png);
      expect(unpacked).toEqual(picture);
      expect(unpacked).not.toBe(picture);
    }
  });
});
