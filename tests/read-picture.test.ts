import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Picture } from '../src/core/picture/picture.js';
import { encodePng, rasteriseSvg } from '../src/node/output/rasterise.js';
import { readBytes } from '../src/node/read/read-bytes.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { fixture, svgStart, text, fails, at, near } from './support/pictures.js';

let dir: string;
beforeAll(() => (dir = mkdtempSync(join(tmpdir(), 'rondure-test-'))));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

/** Largest and mean difference of two pictures of one size over red, green and blue. */
function difference(a: Picture, b: Picture): { largest: number; mean: number } {
  expect([a.width, a.height]).toEqual([b.width, b.height]);
  let [largest, sum] = [0, 0];
  for (let place = 0; place < a.data.length; place++) {
    if (place % 4 === 3) continue;
    const step = Math.abs(a.data[place] - b.data[place]);
    largest = Math.max(largest, step);
    sum += step;
  }
  return { largest, mean: sum / (0.75 * a.data.length) };
}

/** Four quarters: red, green above; blue, white below; 40 × 20. */
const quarters = () =>
  sharp({ create: { width: 40, height: 20, channels: 3, background: '#ff0000' } }).composite([
    {
      input: { create: { width: 20, height: 10, channels: 3, background: '#00ff00' } },
      left: 20,
      top: 0,
    },
    {
      input: { create: { width: 20, height: 10, channels: 3, background: '#0000ff' } },
      left: 0,
      top: 10,
    },
    {
      input: { create: { width: 20, height: 10, channels: 3, background: '#ffffff' } },
      left: 20,
      top: 10,
    },
  ]);
describe('readPicture', () => {
  it('gives the pixels that another decoder gives', async () => {
    for (const name of ['cat-chelsea.png', 'alpha-lotus.png', 'onebit-engraving.png']) {
      const picture = await readPicture(fixture(name), name);
      const other = PNG.sync.read(Buffer.from(fixture(name)));
      expect([picture.width, picture.height]).toEqual([other.width, other.height]);
      expect(Buffer.compare(Buffer.from(picture.data), other.data)).toBe(0);
    }
  });

  it('knows each format by its content and reads it the right way round', async () => {
    const source = await quarters().png().toBuffer();
    const all = {
      png: await sharp(source).png().toBuffer(),
      jpeg: await sharp(source).jpeg({ quality: 100, chromaSubsampling: '4:4:4' }).toBuffer(),
      webp: await sharp(source).webp({ lossless: true }).toBuffer(),
      gif: await sharp(source).gif().toBuffer(),
      tiff: await sharp(source).tiff({ compression: 'lzw' }).toBuffer(),
      avif: await sharp(source).avif({ quality: 100, chromaSubsampling: '4:4:4' }).toBuffer(),
    };
    for (const bytes of Object.values(all)) {
      const picture = await readPicture(bytes, 'wrong-extension.txt');
      expect([picture.width, picture.height]).toEqual([40, 20]);
      near(at(picture, 0.25, 0.25), [255, 0, 0, 255], 4);
      near(at(picture, 0.75, 0.25), [0, 255, 0, 255], 4);
      near(at(picture, 0.25, 0.75), [0, 0, 255, 255], 4);
      near(at(picture, 0.75, 0.75), [255, 255, 255, 255], 4);
    }
  });

  it('turns each of the eight EXIF orientations upright', async () => {
    // EXIF 2.32, tag 0x0112: where the stored row 0 and column 0 belong. Each entry stores the
    // picture in the way that its orientation undoes.
    const quarterTurn: Record<number, number> = { 3: 180, 5: 270, 6: 270, 7: 90, 8: 90 };
    const flip = new Set([4, 5, 7]);
    const upright = await readPicture(await quarters().png().toBuffer(), 'upright');
    for (let orientation = 1; orientation <= 8; orientation++) {
      let stored = await quarters().png().toBuffer();
      stored = await sharp(stored)
        .rotate(quarterTurn[orientation] ?? 0)
        .png()
        .toBuffer();
      if (flip.has(orientation)) stored = await sharp(stored).flip().png().toBuffer();
      if (orientation === 2) stored = await sharp(stored).flop().png().toBuffer();
      const tagged = await sharp(stored).withMetadata({ orientation }).png().toBuffer();
      expect(await readPicture(tagged, `${orientation}`)).toEqual(upright);
    }
  });

  it('honours an embedded profile: Display P3 comes out as the sRGB it was made from', async () => {
    const source = await readPicture(fixture('dahlia.jpg'), 'dahlia.jpg');
    const p3 = await sharp(fixture('dahlia.jpg')).withIccProfile('p3').png().toBuffer();
    const stored = await sharp(p3, { ignoreIcc: true }).ensureAlpha().raw().toBuffer();
    const raw = { width: source.width, height: source.height, data: stored };
    expect(difference(raw, source).mean).toBeGreaterThan(2); // the stored numbers differ …
    expect(difference(await readPicture(p3, 'p3'), source).mean).toBeLessThan(0.5); // … the colours do not
  });

  it('reads CMYK in upright colour, not as a negative', async () => {
    const swatch = (background: string) =>
      sharp({ create: { width: 16, height: 16, channels: 3, background } });
    for (const [colour, dark] of Object.entries({ '#f0f0f0': false, '#202020': true })) {
      const cmyk = await swatch(colour).toColourspace('cmyk').jpeg({ quality: 100 }).toBuffer();
      expect((await sharp(cmyk).metadata()).channels).toBe(4);
      const [red, green, blue] = at(await readPicture(cmyk, 'cmyk'), 0.5, 0.5);
      for (const value of [red, green, blue]) expect(value < 128).toBe(dark);
    }
  });

  it('brings 16 bits down to 8 and grey up to RGBA', async () => {
    // PNG specification 12.4: 16-bit samples as 257 times the 8-bit ones
    const values = Uint16Array.from({ length: 256 }, (_, place) => place * 257);
    const raw = { width: 256, height: 1, channels: 1 } as const;
    const deep = await sharp(values, { raw }).toColourspace('grey16').png().toBuffer();
    expect((await sharp(deep).metadata()).depth).toBe('ushort');
    const picture = await readPicture(deep, 'deep');
    for (let place = 0; place < 256; place++) {
      const got = [...picture.data.subarray(4 * place, 4 * place + 4)];
      near(got, [place, place, place, 255], 1);
    }
  });

  it('takes the first frame of an animation', async () => {
    const frames = Buffer.concat([Buffer.alloc(12, 255), Buffer.alloc(12, 0)]);
    const raw = { width: 2, height: 4, channels: 3, pageHeight: 2 } as const;
    const moving = await sharp(frames, { raw })
      .gif({ delay: [100, 100] })
      .toBuffer();
    expect((await sharp(moving).metadata()).pages).toBe(2);
    const picture = await readPicture(moving, 'moving');
    expect([picture.width, picture.height]).toEqual([2, 2]);
    expect(at(picture, 0, 0)).toEqual([255, 255, 255, 255]);
  });

  it('reads a photograph as WebP much as it does as JPEG', async () => {
    const [webp, jpeg] = await Promise.all(
      ['format-dahlia.webp', 'dahlia.jpg'].map(async (name) => readPicture(fixture(name), name)),
    );
    expect(difference(webp, jpeg).mean).toBeLessThan(4);
  });

  it('keeps colours under partial transparency, not premultiplied', async () => {
    const data = new Uint8Array([200, 100, 50, 128, 10, 20, 30, 0]);
    const png = await encodePng({ width: 2, height: 1, data });
    expect([...(await readPicture(png, 'half')).data]).toEqual([...data]);
  });
});

describe('unusable pictures', () => {
  const refused: [string, string, string, object][] = [
    ['text', 'bad/text.png', 'picture-format-not-read', { format: 'text' }],
    ['zero bytes', 'bad/zero-bytes.png', 'file-empty', {}],
    ['a JPEG cut short', 'bad/truncated.jpg', 'picture-damaged', { format: 'jpeg' }],
    ['a PNG cut short', 'bad/truncated.png', 'picture-damaged', { format: 'png' }],
    [
      'a header of 3,600 megapixels',
      'bad/bomb-declared-60000x60000.png',
      'picture-too-large',
      { width: 60000 },
    ],
    [
      '400 valid megapixels',
      'bad/bomb-valid-20000x20000-1bit.png',
      'picture-too-large',
      { height: 20000 },
    ],
    ['nothing visible', 'fully-transparent.png', 'picture-invisible', {}],
    ['swelling entities', 'bad/svg-entities.svg', 'svg-entities', {}],
  ];
  it.each(refused)('%s: an error that names the file', async (_, name, code, facts) => {
    const before = process.memoryUsage.rss();
    const error: unknown = await readPicture(fixture(name), name).catch(
      (thrown: unknown) => thrown,
    );
    expect(error).toEqual(fails(code, { name, ...facts }));
    expect((error as Error).message).toContain(name);
    expect(process.memoryUsage.rss() - before).toBeLessThan(100e6);
  });

  const foreign: [string, string | number[]][] = [
    ['html', '\n<!-- saved --><!DOCTYPE html><html><body><svg></svg></body></html>'],
    ['pdf', '%PDF-1.7\n%\u00e2\u00e3'],
    ['postscript', '%!PS-Adobe-3.0 EPSF-3.0'],
    ['xml', '<?xml version="1.0"?><rss></rss>'],
    ['heic', [0, 0, 0, 24, ...text('ftypheic'), 0, 0, 0, 0, ...text('mif1heic')]],
    ['video', [0, 0, 0, 20, ...text('ftypisom'), 0, 0, 2, 0, ...text('mp42')]],
    ['photoshop', [...text('8BPS'), 0, 1, 0, 0]],
    ['bmp', [...text('BM'), 70, 0, 0, 0, 0, 0, 0, 0, 54, 0, 0, 0]],
    ['zip', [...text('PK'), 3, 4, 20, 0]],
    ['jpegxl', [0xff, 0x0a, 0xfa, 0x7f]],
    ['text', 'hello\n'],
    ['text', 'привет, это не картинка\n'],
    ['unknown', [0, 1, 2, 3, 250, 251, 9, 9]],
  ];
  it.each(foreign)('%s is told by its name', async (format, content) => {
    const bytes = typeof content === 'string' ? text(content) : Uint8Array.from(content);
    await expect(readPicture(bytes, 'moon.png')).rejects.toThrow(
      fails('picture-format-not-read', { name: 'moon.png', format }),
    );
  });

  it('any format cut at any place is an error, never half a picture', async () => {
    const cat = sharp(fixture('cat-chelsea.png')).resize(120);
    const whole = [
      await cat.clone().png().toBuffer(),
      await cat.clone().jpeg().toBuffer(),
      await cat.clone().jpeg({ progressive: true }).toBuffer(),
      await cat.clone().webp().toBuffer(),
      await cat.clone().gif().toBuffer(),
      await cat.clone().tiff().toBuffer(),
      await cat.clone().avif({ effort: 0 }).toBuffer(),
    ];
    for (const bytes of whole)
      for (const share of [0.05, 0.3, 0.6, 0.9, 0.98]) {
        const cut = bytes.subarray(0, Math.floor(bytes.length * share));
        await expect(readPicture(cut, 'cut')).rejects.toThrow(fails('picture-damaged'));
      }
  });
});

describe('readBytes', () => {
  it('tells missing, folder and empty apart, and names the file', async () => {
    const missing = join(dir, 'нет.png');
    const empty = join(dir, 'empty.png');
    writeFileSync(empty, '');
    await expect(readBytes(missing)).rejects.toThrow(fails('file-missing', { name: missing }));
    await expect(readBytes(join(empty, 'x'))).rejects.toThrow(fails('file-missing'));
    await expect(readBytes(dir)).rejects.toThrow(fails('file-is-folder', { name: dir }));
    await expect(readBytes(empty)).rejects.toThrow(fails('file-empty', { name: empty }));
    await expect(readBytes('/proc/self/mem')).rejects.toThrow(/\/proc\/self\/mem/);
  });

  it('reads any name whole', async () => {
    const path = join(dir, 'кошка с пробелом & 100%.png');
    writeFileSync(path, fixture('cat-chelsea.png'));
    expect(Buffer.from(await readBytes(path)).equals(fixture('cat-chelsea.png'))).toBe(true);
  });

  it('does not read without end', async () => {
    await expect(readBytes('/dev/zero')).rejects.toThrow(
      fails('file-too-big', { name: '/dev/zero' }),
    );
  });
});

describe('writing pictures', () => {
  const a4 = `${svgStart}width="210mm" height="297mm" viewBox="0 0 210 297"><rect x="105" width="105" height="297" fill="#123456"/></svg>`;

  it('rasterises to the very width asked for, on white, every time the same', async () => {
    for (const width of [97, 700, 1001]) {
      const bytes = await rasteriseSvg(a4, width);
      const png = PNG.sync.read(Buffer.from(bytes));
      expect([png.width, png.height]).toEqual([width, Math.round((width * 297) / 210)]);
      const picture = { width: png.width, height: png.height, data: png.data };
      expect(at(picture, 0.25, 0.5)).toEqual([255, 255, 255, 255]);
      expect(at(picture, 0.75, 0.5)).toEqual([0x12, 0x34, 0x56, 255]);
      expect(Buffer.from(await rasteriseSvg(a4, width)).equals(Buffer.from(bytes))).toBe(true);
    }
  });

  it('encodes pixels without changing one, opaque or not', async () => {
    for (const name of ['cat-chelsea.png', 'alpha-lotus.png']) {
      const picture = await readPicture(fixture(name), name);
      const png = PNG.sync.read(Buffer.from(await encodePng(picture)));
      expect(png.data.equals(Buffer.from(picture.data))).toBe(true);
    }
  });
});
