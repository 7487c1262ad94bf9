import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import type { RondureError } from '../src/core/errors.js';
import { judgePictureHeader, refuseTooLarge } from '../src/core/picture/header/judge.js';
import { unpackGzip } from '../src/core/picture/header/unpack.js';

const pictures = join(import.meta.dirname, '../fixtures/pictures');
const code = (bytes: Uint8Array) => {
  try {
    judgePictureHeader(bytes, 'p');
    return 'read';
  } catch (error) {
    return (error as RondureError).code;
  }
};

/** Judged by sharp (libvips), which reads the headers by itself. */
async function agrees(bytes: Uint8Array, format: string): Promise<void> {
  const told = await sharp(bytes, { limitInputPixels: false }).metadata();
  const { width, height } = told;
  expect(judgePictureHeader(bytes, 'p')).toEqual({ format, size: { width, height } });
}

describe('the header of a picture', () => {
  const made = sharp({ create: { width: 321, height: 77, channels: 4, background: '#8642' } });
  const opaque = made.clone().removeAlpha();
  const frames = { raw: { width: 3, height: 10, channels: 3, pageHeight: 5 } } as const;
  const moving = sharp(Buffer.alloc(90, 9), frames);
  const kinds: [what: string, format: string, Sharp][] = [
    ['PNG', 'png', made.clone().png()],
    ['PNG with a palette', 'png', made.clone().png({ palette: true })],
    ['JPEG', 'jpeg', opaque.clone().jpeg()],
    ['progressive JPEG', 'jpeg', opaque.clone().jpeg({ progressive: true })],
    ['JPEG with profile and EXIF', 'jpeg', opaque.clone().withIccProfile('p3').withExif({ IFD0: { Artist: 'a' } }).jpeg()],
    ['GIF', 'gif', made.clone().gif()],
    ['moving GIF', 'gif', moving.clone().gif()],
    ['lossy WebP', 'webp', opaque.clone().webp()],
    ['lossless WebP', 'webp', opaque.clone().webp({ lossless: true })],
    ['WebP with transparency', 'webp', made.clone().webp()],
    ['moving WebP', 'webp', moving.clone().webp()],
    ['TIFF', 'tiff', made.clone().tiff()],
    ['64-bit TIFF', 'tiff', made.clone().tiff({ bigtiff: true })],
    ['tiled TIFF with a pyramid', 'tiff', made.clone().resize(700).tiff({ tile: true, pyramid: true })],
    ['AVIF', 'avif', opaque.clone().avif({ effort: 0 })],
    ['AVIF with transparency', 'avif', made.clone().avif({ effort: 0 })],
  ]; // prettier-ignore

  it.each(kinds)('%s: format and size', async (_, format, pipeline) => {
    await agrees(await pipeline.toBuffer(), format);
  });

  it('tells the size of every picture of ours', async () => {
    const names = readdirSync(pictures).filter((name) => /\.(png|jpg|webp|tif)$/.test(name));
    expect(names.length).toBeGreaterThan(5);
    for (const name of names) {
      const bytes = readFileSync(join(pictures, name));
      await agrees(bytes, judgePictureHeader(bytes, name).format);
    }
  });

  it('is told as unknown where the file ends before it, at any byte', async () => {
    for (const [, format, pipeline] of kinds) {
      const whole = await pipeline.toBuffer();
      const { size } = judgePictureHeader(whole, 'p');
      for (let length = 16; length < Math.min(whole.length, 3000); length += 3) {
        const cut = judgePictureHeader(whole.subarray(0, length), 'p');
        expect([undefined, size]).toContainEqual(cut.size);
        expect(cut.format).toBe(format);
      }
    }
  });

  it('refuses too many pixels, other formats and nothing', () => {
    const bomb = readFileSync(join(pictures, 'bad/bomb-declared-60000x60000.png'));
    expect(code(bomb)).toBe('picture-too-large');
    expect(code(new TextEncoder().encode('hello'))).toBe('picture-format-not-read');
    expect(code(new Uint8Array(0))).toBe('file-empty');
    const svg = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>');
    expect(judgePictureHeader(svg, 'p')).toEqual({ format: 'svg', size: undefined });
  });
});

it('reads fewer pixels of what decoders hold whole: in passes, and AVIF', async () => {
  const plain = (width: number, height: number) =>
    sharp({ create: { width, height, channels: 3, background: '#1f7fa8' } });
  const told = (bytes: Uint8Array) => {
    try {
      return judgePictureHeader(bytes, 'p').size!.width;
    } catch (error) {
      return (error as RondureError<'picture-too-large'>).facts.limitMegapixels;
    }
  };
  const fast = { compressionLevel: 1 };
  const [passes, avif] = [{ progressive: true }, { effort: 0, quality: 20 }];
  for (const [width, height, limit] of [[8000, 6000, 8000], [8001, 6000, 48]]) {
    expect(told(await plain(width, height).png({ ...passes, ...fast }).toBuffer())).toBe(limit);
    expect(told(await plain(width, height).jpeg(passes).toBuffer())).toBe(limit);
    expect(told(await plain(width, height).jpeg().toBuffer())).toBe(width);
  }
  expect(told(await plain(6000, 4000).avif(avif).toBuffer())).toBe(6000);
  expect(told(await plain(6001, 4000).avif(avif).toBuffer())).toBe(24);
}); // prettier-ignore

describe('a packed file', () => {
  const text = Buffer.from('barley moon '.repeat(50_000));

  it('is unpacked as zlib packed it, in one member or several', () => {
    expect(Buffer.from(unpackGzip(gzipSync(text), 1e6)!).equals(text)).toBe(true);
    const two = Buffer.concat([gzipSync('barley '), gzipSync('moon')]);
    expect(Buffer.from(unpackGzip(two, 100)!).toString()).toBe('barley moon');
  });

  it('is given up at the limit, and cut short it is an error', () => {
    const swells = gzipSync(Buffer.alloc(50e6));
    expect(unpackGzip(swells, 49e6)).toBeUndefined();
    const packed = gzipSync(text);
    for (const length of [1, 9, 12, packed.length >> 1, packed.length - 9])
      expect(() => unpackGzip(packed.subarray(0, length), 1e6)).toThrow();
  });
});

it('reads fewer pixels where one side is longer than any photograph is', () => {
  const told = (width: number, height: number) => {
    try {
      return refuseTooLarge({ width, height }, 'p');
    } catch (error) {
      return (error as RondureError<'picture-too-large'>).facts.limitMegapixels;
    }
  };
  expect(told(30_000, 2000)).toBeUndefined();
  expect([told(30_001, 2000), told(1, 64e6), told(64e6, 1)]).toEqual([8, 8, 8]);
  expect([told(30_001, 200), told(8000, 8000), told(8001, 8000)]).toEqual([
    undefined,
    undefined,
    64,
  ]);
});
