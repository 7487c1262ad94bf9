import { inflateSync } from 'node:zlib';
import { PNG } from 'pngjs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { readPngText, withPngScale, withPngText } from '../src/core/pages/surface/png-text.js';
import { crc32 } from '../src/core/picture/header/png-chunks.js';

const keyword = 'rondure-pattern';
const text = `{"title":"Ячменная луна · barley moon","rounds":["${'AAB'.repeat(2000)}"]}`;
const latin = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1');

/** 16 × 16 of a colour ramp, with a tEXt chunk after the pixels left out: as sharp writes it. */
const plain = async () =>
  new Uint8Array(
    await sharp(Buffer.from(Array.from({ length: 768 }, (_, place) => (place * 7) & 255)), {
      raw: { width: 16, height: 16, channels: 3 },
    })
      .png()
      .toBuffer(),
  );

describe('CRC of a PNG chunk', () => {
  it('has the check value of CRC-32/ISO-HDLC', () => {
    // "123456789" gives CBF43926: the check value in ITU-T V.42 and every catalogue of CRCs.
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  });

  it('gives AE426082 for an empty IEND chunk', () => {
    // the twelve bytes that end every PNG file (PNG specification, 11.2.5)
    expect(crc32(new TextEncoder().encode('IEND'))).toBe(0xae426082);
  });
});

describe('text inside a PNG', () => {
  it('reads back, with letters of every script', async () => {
    expect(readPngText(withPngText(await plain(), keyword, text), keyword)).toBe(text);
  });

  it('leaves the pixels as they were, read by a strict decoder of another make', async () => {
    const png = await plain();
    const [before, after] = [png, withPngText(png, keyword, text)].map((bytes) =>
      PNG.sync.read(Buffer.from(bytes), { checkCRC: true }),
    );
    expect(after.data.equals(before.data)).toBe(true);
  });

  it('is seen by sharp (libpng) as a comment under its keyword', async () => {
    const { comments } = await sharp(withPngText(await plain(), keyword, text)).metadata();
    expect(comments).toEqual([{ keyword, text }]);
  });

  it('is an iTXt chunk laid out as the specification says, before the pixels', async () => {
    const bytes = withPngText(await plain(), keyword, text);
    const start = latin(bytes).indexOf('iTXt');
    expect(start).toBeGreaterThan(0);
    expect(start).toBeLessThan(latin(bytes).indexOf('IDAT'));
    const length = Buffer.from(bytes).readUInt32BE(start - 4);
    const data = bytes.subarray(start + 4, start + 4 + length);
    const head = [...Buffer.from(keyword), 0, 1, 0, 0, 0];
    expect([...data.subarray(0, head.length)]).toEqual(head);
    expect(inflateSync(data.subarray(head.length)).toString('utf8')).toBe(text);
  });

  it('gives the same bytes for the same input', async () => {
    const png = await plain();
    expect(withPngText(png, keyword, text)).toEqual(withPngText(png, keyword, text));
  });

  it('replaces a text under the same keyword and keeps the others', async () => {
    const first = withPngText(withPngText(await plain(), keyword, 'old'), 'Title', 'Kingfisher');
    const second = withPngText(first, keyword, 'new');
    expect(readPngText(second, keyword)).toBe('new');
    expect(readPngText(second, 'Title')).toBe('Kingfisher');
    expect(latin(second).split('iTXt').length - 1).toBe(2);
  });

  it('reads a chunk that is not packed and carries a language', async () => {
    const png = await plain();
    const body = Buffer.from(`iTXt${keyword}\0\0\0en-GB\0Pattern\0barley – moon`, 'utf8');
    const chunk = Buffer.alloc(body.length + 8);
    chunk.writeUInt32BE(body.length - 4, 0);
    body.copy(chunk, 4);
    chunk.writeUInt32BE(crc32(body), body.length + 4);
    const at = latin(png).indexOf('IDAT') - 4;
    const mixed = Buffer.concat([png.subarray(0, at), chunk, png.subarray(at)]);
    expect(readPngText(mixed, keyword)).toBe('barley – moon');
  });

  it('tells "none" from "damaged"', async () => {
    const png = await plain();
    expect(readPngText(png, keyword)).toBeUndefined();
    expect(readPngText(new TextEncoder().encode('not a PNG at all'), keyword)).toBeUndefined();
    const broken = withPngText(png, keyword, text);
    broken[latin(broken).indexOf('iTXt') + 40] ^= 1;
    expect(() => readPngText(broken, keyword)).toThrow(
      expect.objectContaining({ code: 'png-text-damaged', facts: { keyword } }),
    );
  });

  it('refuses keywords that the specification forbids, and files that are no PNG', async () => {
    const png = await plain();
    for (const bad of ['', ' a', 'a ', 'a  b', 'луна', 'x'.repeat(80)])
      expect(() => withPngText(png, bad, text)).toThrow(TypeError);
    expect(() => withPngText(new Uint8Array(20), keyword, text)).toThrow(TypeError);
  });
});

describe('true size inside a PNG', () => {
  it('is what sharp reads as dots an inch, once only', async () => {
    // 300 dots an inch are 11.811 a millimetre (1 in = 25.4 mm, ISO 31-1).
    const twice = withPngScale(withPngScale(await plain(), 5), 300 / 25.4);
    expect((await sharp(twice).metadata()).density).toBe(300);
    expect(latin(twice).split('pHYs').length).toBe(2);
  });
});
