import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../src/cli/program.js';
import { blankPattern } from '../src/core/blank/blank-pattern.js';
import { blankPage } from '../src/core/pages/chart/blank-page.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { findPage } from '../src/core/blank/corner-marks.js';
import { homographyOf, seenAt } from '../src/core/homography.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { blankPdf } from '../src/booklet/blank-pdf.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { en, languages, wordsIn } from '../src/words/index.js';
import { readPdf } from './support/read-pdf.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-blank-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function cli(...argv: string[]) {
  let out = '';
  let err = '';
  const code = await run(argv, en, {
    out: (text) => void (out += text),
    err: (text) => void (err += text),
    progress: undefined,
    signal: new AbortController().signal,
  });
  return { code, out, err };
}

test('a blank chart is a sound pattern in which every stitch is open', async () => {
  const dir = join(folder, 'empty');
  const { code, out } = await cli('blank', '--wedges', '6', '--rounds', '12', '--json', '-o', dir);
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({ schema: 'rondure-blank', stitches: 468, paper: 'A4' });
  expect(readdirSync(dir).sort()).toEqual(['blank.json', 'blank.pdf', 'blank.png', 'blank.svg']);
  const pattern = parsePattern(readFileSync(join(dir, 'blank.json'), 'utf8'), 'blank.json');
  // N·R(R+1)/2, the sum of an arithmetic series.
  expect(pattern.panels[0].rounds.join('')).toBe('_'.repeat((6 * 12 * 13) / 2));
  // A4 at 300 dots an inch: 210 and 297 mm over 25.4 mm an inch (ISO 216).
  const { width, height } = await sharp(join(dir, 'blank.png')).metadata();
  expect([width, Math.abs(height - 3508) <= 1]).toEqual([2480, true]);
  expect((await cli('blank', '-o', dir)).code).toBe(5);
  expect((await cli('blank', '--force', '-o', dir)).code).toBe(0);
});

test('the corner marks are found where they were drawn, however the page lies', async () => {
  const dir = join(folder, 'marks');
  await cli('blank', '--rounds', '10', '-o', dir);
  const pattern = parsePattern(readFileSync(join(dir, 'blank.json'), 'utf8'), 'blank.json');
  const { startDegrees } = pattern.panels[0];
  const page = blankPage(panelGeometry(pattern.shape, { startDegrees }));
  for (const turn of [0, 90, 180, 270]) {
    const turned = await sharp(join(dir, 'blank.png')).rotate(turn).png().toBuffer();
    const picture = await readPicture(turned, 'turned');
    const found = findPage(picture, page);
    if (!('view' in found)) throw new Error(`no marks after a turn of ${turn}`);
    const dots = 2480 / 210;
    for (const [x, y] of [
      [0, 0],
      [105, 148.5],
      [210, 297],
      [30, 250],
    ]) {
      const want = {
        0: [x * dots, y * dots],
        90: [picture.width - y * dots, x * dots],
        180: [picture.width - x * dots, picture.height - y * dots],
        270: [y * dots, picture.height - x * dots],
      }[turn]!;
      const got = seenAt(found.view, x, y);
      // A tenth of a millimetre: a cell is three or more.
      expect(Math.hypot(got[0] - want[0], got[1] - want[1])).toBeLessThan(0.1 * dots);
    }
  }
});

test('four points give the perspective: cross-ratios along a line are kept', () => {
  const from = [
    [0, 0],
    [4, 0],
    [4, 3],
    [0, 3],
  ] as const;
  const to = [
    [10, 12],
    [92, 25],
    [80, 70],
    [5, 64],
  ] as const;
  const h = homographyOf(from, to)!;
  from.forEach(([x, y], n) => {
    const seen = seenAt(h, x, y);
    expect(Math.hypot(seen[0] - to[n][0], seen[1] - to[n][1])).toBeLessThan(1e-9);
  });
  // Cross-ratio (c-a)(d-b) / (c-b)(d-a) of four points on a line: perspective does not change it.
  const at = [0, 1, 2, 4].map((t) => seenAt(h, t, 0.75 * t));
  const along = at.map(([x, y]) => Math.hypot(x - at[0][0], y - at[0][1]));
  const [a, b, c, d] = along;
  const ratio = ((c - a) * (d - b)) / ((c - b) * (d - a));
  expect(ratio).toBeCloseTo((2 * 3) / (1 * 4), 9);
  expect(
    homographyOf(
      [
        [0, 0],
        [1, 1],
        [2, 2],
        [5, 0],
      ],
      to,
    ),
  ).toBeUndefined();
});

test('what cannot be read is said in one sentence', async () => {
  const dir = join(folder, 'refused');
  await cli('blank', '--rounds', '10', '-o', dir);
  const blank = join(dir, 'blank.json');
  const out = join(folder, 'out');
  const white = join(folder, 'white.png');
  await sharp({ create: { width: 400, height: 500, channels: 3, background: '#fff' } }).toFile(
    white,
  );
  const none = await cli('read', white, '--blank', blank, '-o', out, '--json');
  expect(none.code).toBe(3);
  expect(JSON.parse(none.err).error.code).toBe('corner-marks-not-found');
  const empty = await cli('read', join(dir, 'blank.png'), '--blank', blank, '-o', out, '--json');
  expect(JSON.parse(empty.err).error.code).toBe('blank-not-coloured');
  // A page of which one corner mark is cut off is refused, not guessed at.
  const cut = join(folder, 'cut.png');
  await sharp(join(dir, 'blank.png'))
    .extract({ left: 160, top: 0, width: 2320, height: 3500 })
    .toFile(cut);
  const cutOff = await cli('read', cut, '--blank', blank, '-o', out, '--json');
  expect(JSON.parse(cutOff.err).error.code).toBe('corner-marks-not-found');
  expect((await cli('read', white, '-o', out)).code).toBe(2);
  expect((await cli('blank', '--rounds', '9', '--across', '9cm', '-o', out)).code).toBe(2);
  writeFileSync(join(folder, 'no.json'), '{}');
  expect((await cli('read', white, '--blank', join(folder, 'no.json'), '-o', out)).code).toBe(3);
});

test('a large panel asks for larger paper, and a wished size gives the rounds', () => {
  const shape = { wedges: 8, beadDiameterMm: 2.1 };
  const large = blankPattern({ title: 'x', shape: { ...shape, rounds: 60 } });
  expect(blankPage(panelGeometry(large.shape)).paper).not.toBe('A4');
  const wished = blankPattern({ title: 'x', shape, acrossMm: 90 });
  const nearest = blankPattern({ title: 'x', shape, acrossMm: 91 });
  expect(Math.abs(wished.shape.rounds - nearest.shape.rounds)).toBeLessThanOrEqual(1);
});

test('the largest page is written with fewer dots, so that it can be opened again', async () => {
  const dir = join(folder, 'largest');
  const { code, out } = await cli('blank', '--wedges', '3', '--rounds', '80', '--json', '-o', dir);
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({ paper: 'A0' });
  const { width, height, density } = await sharp(join(dir, 'blank.png')).metadata();
  // A0 (841 by 1189 mm, ISO 216) at 200 dots an inch.
  expect([width, height, density]).toEqual([6622, 9362, 200]);
});

test('the PDF has the size of its paper, and its corner marks stand where a reader looks for them', async () => {
  const dir = join(folder, 'pdf');
  await cli('blank', '--rounds', '10', '-o', dir);
  const pattern = parsePattern(readFileSync(join(dir, 'blank.json'), 'utf8'), 'blank.json');
  const page = blankPage(panelGeometry(pattern.shape, pattern.panels[0]));
  const [read, ...more] = (await readPdf(readFileSync(join(dir, 'blank.pdf')))).pages;
  expect(more).toEqual([]);
  // A4 is 210 by 297 mm (ISO 216).
  expect([read.widthMm, read.heightMm]).toEqual([expect.closeTo(210, 4), expect.closeTo(297, 4)]);
  for (const [x, y] of page.corners) {
    const box = [x - 5, y - 5, x + 5, y + 5].map((edge) => expect.closeTo(edge, 3) as number);
    expect(read.paths.map((path) => path.box)).toContainEqual(box);
  }
});

test.each(languages)('a blank page can be set in %s', async (language) => {
  const blank = blankPattern({
    title: 'Barley moon',
    shape: { wedges: 7, rounds: 20, beadDiameterMm: 2.1 },
  });
  const geometry = panelGeometry(blank.shape);
  const fonts = await fontsForPages(language, []);
  const { words } = await wordsIn([language]);
  const footprints = panelFootprints(geometry);
  const sheet = { pattern: blank, panel: 0, geometry, footprints, words, fonts };
  const bytes = await blankPdf(sheet, language);
  if (process.env.KEEP_PAGES) writeFileSync(`${process.env.KEEP_PAGES}/${language}.pdf`, bytes);
  const pdf = await readPdf(bytes);
  expect(pdf.language).toBe(language);
  const [page] = pdf.pages;
  expect(page.texts.some(({ text }) => /A4/.test(text))).toBe(true);
  const { view, marks, widthMm } = blankPage(geometry);
  // The word beside the start mark leaves it free.
  const mark = view.centreX + Math.min(...marks.triangle.filter((_, p) => p % 2 === 0));
  const start = page.texts.find(({ text }) => text === words.chart.start)!;
  expect(start.x + start.widthMm).toBeLessThan(mark);
  // Texts stay within the border that printers keep, and out of the panel's square.
  const [first, last] = [view.centreY + marks.box.top, view.centreY + marks.box.bottom];
  const lines = page.texts.filter(({ text, y }) => text.trim() && (y < first || y > last));
  expect(lines.length).toBeGreaterThan(4);
  for (const { x, widthMm: wide } of lines) {
    expect(x).toBeGreaterThan(8);
    expect(x + wide).toBeLessThan(widthMm - 8);
  }
});
