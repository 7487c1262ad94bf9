import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readBytes } from '../src/node/read/read-bytes.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { fixture, svgStart, text, fails, at, near } from './support/pictures.js';

let dir: string;
beforeAll(() => (dir = mkdtempSync(join(tmpdir(), 'rondure-test-'))));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

describe('SVG', () => {
  const size = async (content: string | Uint8Array) => {
    const bytes = typeof content === 'string' ? text(content) : content;
    const { width, height } = await readPicture(bytes, 'drawing.svg');
    return [width, height];
  };
  const box = '<rect width="5" height="5"/>';

  it('is drawn 1600 pixels long whatever size it declares', async () => {
    expect(await size(fixture('moon.svg'))).toEqual([1600, 1600]);
    expect(await size(fixture('rooster.svg'))).toEqual([1600, 1152]);
    expect(await size(fixture('bad/svg-huge.svg'))).toEqual([1600, 1600]);
    expect(await size(`${svgStart}width="0.5" height="0.25">${box}</svg>`)).toEqual([1600, 800]);
    expect(await size(`${svgStart}viewBox="0 0 30 20">${box}</svg>`)).toEqual([1600, 1067]);
    const a4 = `${svgStart}width="210mm" height="297mm" viewBox="0 0 210 297">${box}</svg>`;
    expect(await size(a4)).toEqual([1131, 1600]);
  });

  it('keeps gradients smooth', async () => {
    const name = 'gradient-blue-button.svg';
    const { width, height, data } = await readPicture(fixture(name), name);
    const down = Array.from({ length: height }, (_, y) => data[4 * (y * width + (width >> 1)) + 2]);
    const blues = new Set(down);
    expect(blues.size).toBeGreaterThan(32);
  });

  it('is not blown up or shrunk by a style sheet', async () => {
    const big = 'width:1000000000px;height:1000000000px';
    const drawing = `${svgStart}viewBox="0 0 9 9"><style>svg{${big}}</style>${box}</svg>`;
    expect(await size(drawing)).toEqual([1600, 1600]);
    const inline = `${svgStart}style="${big}" viewBox="0 0 9 9">${box}</svg>`;
    expect(await size(inline)).toEqual([1600, 1600]);
  });

  it('without any size is what its ink covers', async () => {
    const picture = await readPicture(fixture('bad/svg-no-size.svg'), 'no size');
    expect(Math.abs(picture.width - picture.height)).toBeLessThanOrEqual(8);
    near(at(picture, 0.5, 0.5), [204, 0, 0, 255], 0);
    for (const [x, y] of [
      [0.02, 0.5],
      [0.98, 0.5],
      [0.5, 0.02],
      [0.5, 0.98],
    ])
      near(at(picture, x, y), [204, 0, 0, 255], 0); // the disc reaches all four sides
    for (const corner of [0.05, 0.95]) expect(at(picture, corner, corner)[3]).toBe(0);
  });

  it('measures millimetres 96 to the inch', async () => {
    // CSS Values and Units 3, 6.2: 1in = 25.4mm = 96px, so 10mm cover 37.795 of 100 units
    const drawing = `${svgStart}viewBox="0 0 100 100"><rect width="10mm" height="100"/></svg>`;
    const picture = await readPicture(text(drawing), 'mm');
    let covered = 0;
    for (let x = 0; x < 1600; x++) covered += at(picture, (x + 0.5) / 1600, 0.5)[3] / 255;
    expect(covered / 16).toBeCloseTo(37.795, 1);
  });

  it('is read in other encodings, packed, with a prefix and behind a long preamble', async () => {
    const body = `width="50" height="20"><title>é</title>${box}</svg>`;
    const latin1 = `<?xml version="1.0" encoding="ISO-8859-1"?>${svgStart}${body}`;
    expect(await size(Buffer.from(latin1, 'latin1'))).toEqual([1600, 640]);
    const wide = `\ufeff<?xml version="1.0" encoding="UTF-16"?>${svgStart}${body}`;
    expect(await size(Buffer.from(wide, 'utf16le'))).toEqual([1600, 640]);
    expect(await size(gzipSync(svgStart + body))).toEqual([1600, 640]);
    expect(await size(`<!--${'x'.repeat(5000)}-->${svgStart}${body}`)).toEqual([1600, 640]);
    const prefixed =
      '<s:svg xmlns:s="http://www.w3.org/2000/svg" width="30" height="15"><s:rect width="9" height="9"/></s:svg>';
    expect(await size(prefixed)).toEqual([1600, 800]);
    const named = `<!DOCTYPE svg [<!ENTITY ns "http://www.w3.org/2000/svg">]><svg xmlns="&ns;" ${body}`;
    expect(await size(named)).toEqual([1600, 640]);
  });

  it('reads nothing outside itself: no neighbour, no path, no address', async () => {
    let asked = 0;
    const server = createServer((_, response) => {
      asked++;
      response.end(fixture('bad/canary-magenta.png'));
    });
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    const canary = join(dir, 'canary.png');
    writeFileSync(canary, fixture('bad/canary-magenta.png'));
    const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/canary.png`;
    const images = [
      canary,
      `file://${canary}`,
      'canary.png',
      'fixtures/pictures/bad/canary-magenta.png',
      address,
    ]
      .map((href, place) => `<image href="${href}" x="${place * 20}" width="20" height="100"/>`)
      .join('');
    const style = `<style>@import url("${address}"); rect{fill:#0a0}</style>`;
    const drawing = `${svgStart}viewBox="0 0 100 100">${style}<rect width="100" height="100"/>${images}</svg>`;
    const path = join(dir, 'drawing.svg');
    writeFileSync(path, drawing);
    try {
      for (const bytes of [await readBytes(path), fixture('bad/svg-external.svg')]) {
        const picture = await readPicture(bytes, path);
        for (let place = 0; place < picture.data.length; place += 4)
          if (picture.data[place] !== 0 || picture.data[place + 1] !== 170)
            expect.fail(`a strange pixel at ${place / 4}`);
      }
      expect(asked).toBe(0);
    } finally {
      server.close();
    }
  });

  it('does not let entities or embedded pictures in that would eat the machine', async () => {
    const outside = `<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/hostname">]>${svgStart}viewBox="0 0 9 9"><text>&x;</text></svg>`;
    await expect(size(outside)).rejects.toThrow(fails('svg-entities', { name: 'drawing.svg' }));
    const bomb = Buffer.from(fixture('bad/bomb-valid-20000x20000-1bit.png')).toString('base64');
    const holder = `${svgStart}viewBox="0 0 9 9"><image href="data:image/png;base64,${bomb}" width="9" height="9"/></svg>`;
    const nested = `${svgStart}viewBox="0 0 9 9"><image href="data:image/svg+xml;base64,${Buffer.from(holder).toString('base64')}" width="9" height="9"/></svg>`;
    for (const drawing of [holder, holder.replace('data:', '&#100;ata:'), nested])
      await expect(size(drawing)).rejects.toThrow(
        fails('svg-pictures-too-large', { megapixels: 400 }),
      );
  });

  it('broken or empty is an error', async () => {
    await expect(size(`${svgStart}width="9" hei`)).rejects.toThrow(fails('picture-damaged'));
    await expect(size(`${svgStart}width="9" height="9"><rect `)).rejects.toThrow(
      fails('picture-damaged', { format: 'svg' }),
    );
    await expect(size(`${svgStart}/>`)).rejects.toThrow(fails('picture-invisible'));
    const cut = gzipSync(`${svgStart}width="9" height="9">${box}</svg>`).subarray(0, 60);
    await expect(size(cut)).rejects.toThrow(fails('picture-damaged', { format: 'gzip' }));
  });
});
