import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import {
  filterOfSheets,
  hiddenPictures,
  image,
  longTexts,
  masksInMasks,
  svg,
} from '../bench/heavy/drawings.js';
import { palettes, swollenThumbnails, tiffOfPages } from '../bench/heavy/files.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import type { RondureError } from '../src/core/errors.js';
import { withoutFurtherFrames } from '../src/core/picture/header/gif-frames.js';
import { judgePictureHeader } from '../src/core/picture/header/judge.js';
import { judgeSvg } from '../src/core/picture/svg/judge.js';
import { pictureFromPng } from '../src/core/picture/thumbnail.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { svgMegabytesLimit } from '../src/node/svg/draw-svg-apart.js';
import { readRoundList } from '../src/core/pages/lists/read-rounds.js';

const top = fileURLToPath(new URL('../', import.meta.url));

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-heavy-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const codeOf = (read: () => unknown): string => {
  try {
    read();
    return 'read';
  } catch (error) {
    return (error as RondureError).code;
  }
};
it.each(hiddenPictures)('a picture of 400 megapixels in an SVG, %s, is refused', (_, drawing) => {
  expect(codeOf(() => judgeSvg(drawing, 'drawing.svg'))).toBe('svg-pictures-too-large');
});

it('pictures inside that are small, and texts that only look alike, pass', () => {
  const small = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg';
  const fine = [
    image(`data:image/png;base64,${small}`),
    svg('<title>data: 3, 4 &amp; 50 % \\ &amp;amp;</title><rect width="9" height="9"/>'),
    svg(`<style>@font-face{font-family:a;src:url(data:font/woff2;base64,d09GMgABAAAAAA)}</style>`),
  ];
  for (const drawing of fine) expect(codeOf(() => judgeSvg(drawing, 'a.svg')), drawing).toBe('read');
}); // prettier-ignore

it.each(longTexts)('an SVG of %s is judged in a time like its length', (_, drawing) => {
  const bytes = new TextEncoder().encode(drawing);
  const start = process.cpuUsage();
  codeOf(() => {
    judgePictureHeader(bytes, 'a.svg');
    judgeSvg(drawing, 'a.svg');
  });
  const { user } = process.cpuUsage(start);
  expect(user / 1e6).toBeLessThan(5);
});

/** Runs the drawing process alone, with memory for nothing but itself. */
it('the drawing process ends itself when it takes too much memory', async () => {
  const sized = masksInMasks.replace('viewBox', 'width="1200" height="1200" viewBox');
  const argv = [join(top, 'bin/draw-svg.js'), '96', '80000000', '60', '250'];
  const child = spawn(process.execPath, argv, { stdio: ['pipe', 'pipe', 'ignore'] });
  let said = '';
  child.stdout.on('data', (part: Buffer) => void (said += part.toString('latin1')));
  child.stdin.end(sized);
  const ended = await new Promise((done) => child.on('close', (_, signal) => done(signal)));
  expect([said, ended]).toEqual(['heavy', 'SIGKILL']);
  expect(svgMegabytesLimit).toBeLessThan(600);
});

it('of a TIFF of 100,000 pages the first is read, and the others are not counted', async () => {
  const file = tiffOfPages(100_000);
  const start = process.cpuUsage();
  const { width, height } = await readPicture(file, 'pages.tif');
  expect([width, height]).toEqual([1, 1]);
  expect(process.cpuUsage(start).user / 1e6).toBeLessThan(1);
});

it('of a GIF the first frame is read, whatever follows', async () => {
  const frames = { raw: { width: 2, height: 4, channels: 3, pageHeight: 2 } } as const;
  const pixels = Buffer.from('ff0000'.repeat(4) + '0000ff'.repeat(4), 'hex');
  const moving = await sharp(pixels, frames).gif({ loop: 3 }).toBuffer();
  const first = withoutFurtherFrames(moving);
  expect(first.length).toBeLessThan(moving.length);
  const { pages } = await sharp(first).metadata();
  expect([(await sharp(moving).metadata()).pages, pages ?? 1]).toEqual([2, 1]);
  const { data } = await readPicture(moving, 'moving.gif');
  expect([...data.subarray(0, 4)]).toEqual([255, 0, 0, 255]);
  // The frames again and again, a hundred thousand times.
  const frame = moving.subarray(first.length - 1, moving.length - 1);
  const many = Buffer.concat([
    first.subarray(0, -1),
    ...Array<Uint8Array>(100_000).fill(frame),
    Buffer.from([0x3b]),
  ]);
  const start = process.cpuUsage();
  expect((await readPicture(many, 'many.gif')).width).toBe(2);
  expect(process.cpuUsage(start).user / 1e6).toBeLessThan(1);
  expect(withoutFurtherFrames(first)).toBe(first);
  for (const length of [3, 12, 20, first.length - 9]) {
    expect(withoutFurtherFrames(first.subarray(0, length))).toHaveLength(length);
  }
});

it.each(palettes())('a palette of %s is refused before it is taken apart', (what, ending, text) => {
  const start = process.cpuUsage();
  const code = codeOf(() => readPalette(text, `beads.${ending}`));
  expect(process.cpuUsage(start).user / 1e6).toBeLessThan(10);
  if (what.startsWith('8 million cells')) expect(code).toBe('read');
  else
    expect(code).toMatch(/^(file-too-big|palette-(too-long|not-json|bad-row|no-beads-in-json))$/);
});

it('lists and patterns that are far too long or deep are refused before they are taken apart', () => {
  const million = '['.repeat(1e6);
  expect(codeOf(() => parsePattern(million, 'pattern.json'))).toBe('pattern-not-json');
  expect(() => parsePattern(million, 'pattern.json')).toThrow(/nested too deeply/);
  expect(() => parsePattern(`[${'[],'.repeat(1e6)}0]`, 'pattern.json')).toThrow(/too many values/);
  expect(codeOf(() => readRoundList('\n'.repeat(5e6), 'rounds.txt'))).toBe('file-too-big');
});

it('a palette among 200,000 lines is read, among more it is refused', () => {
  const among = (lines: number) => () => readPalette(`hex\n#fff${'\n'.repeat(lines - 2)}`, 'a.csv');
  expect(codeOf(among(200_000))).toBe('read');
  expect(among(200_001)).toThrow(/^a\.csv holds more than 200000 lines: keep/);
});

it.each(swollenThumbnails())(
  'a thumbnail with %s is left out or read, and nothing is unpacked',
  (what, png) => {
    const before = process.resourceUsage().maxRSS;
    const picture = pictureFromPng((png as Buffer).toString('base64'));
    const sound = /header of|profile|palette/.test(what as string);
    expect(picture?.width).toBe(sound ? 100 : undefined);
    expect((process.resourceUsage().maxRSS - before) / 1024).toBeLessThan(150);
  },
);

it('a drawing that takes too much memory or time is a sentence', async () => {
  const path = join(folder, 'sheets.svg');
  writeFileSync(path, filterOfSheets);
  await expect(readPicture(readFileSync(path), 'sheets.svg')).rejects.toThrow(
    /^sheets\.svg (takes more than 400 MB of memory to draw|was not drawn within 15 seconds): simplify it, or save it as PNG and give that\.$/,
  );
});
