import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../src/cli/program.js';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { en, languages } from '../../src/words/index.js';
import { clippedWords } from '../support/clipped.js';
import { beads, colouredPhoto, idsOf } from '../support/coloured-photo.js';
import { axeIn } from '../support/axe.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { drop, saved } from '../support/page-acts.js';
import { readPdf } from '../support/read-pdf.js';

// A blank is saved, coloured by program, photographed by a pinhole model, and read back on the page. What it must
// come out as is what it was coloured with; where nothing was doubtful, it is what the command line reads as well.

const rounds = 9;
let built: OpenPage;
let folder: string;
let blank: Pattern;
let photo: Buffer;
/** Place in the palette of each stitch, or -1 where its cell stays white. */
let wanted: readonly number[];
let sloppy: readonly number[];

beforeAll(async () => {
  built = await openBuiltPage();
  folder = mkdtempSync(join(tmpdir(), 'rondure-coloured-'));
  const { page } = await onPanel();
  const svg = await saved(page, 'blank-svg');
  expect(svg.name).toBe('kingfisher-blank.svg');
  const dir = join(folder, 'empty');
  await cli('blank', '--rounds', String(rounds), '--title', 'Kingfisher', '-o', dir);
  // The same bytes as the command line's.
  expect(svg.bytes.equals(readFileSync(join(dir, 'blank.svg')))).toBe(true);
  const pdf = await readPdf((await saved(page, 'blank-chart')).bytes);
  // A4 (ISO 216).
  const [sheet, ...more] = pdf.pages;
  expect([sheet.widthMm, sheet.heightMm]).toEqual([expect.closeTo(210, 3), expect.closeTo(297, 3)]);
  expect(more).toEqual([]);
  await page.context().close();
  blank = parsePattern(readFileSync(join(dir, 'blank.json'), 'utf8'), 'blank.json');
  ({ photo, wanted, sloppy } = await colouredPhoto(blank));
  if (process.env.KEEP_PHOTOS) writeFileSync(join(process.env.KEEP_PHOTOS, 'coloured.png'), photo);
}, 240_000);
afterAll(async () => {
  await built?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** The sample with fewer rounds, and the part of the card that is about colouring open. */
async function onPanel(width?: number, height?: number) {
  const opened = await built.open(width, height);
  const { page } = opened;
  await settled(page);
  await page.locator('[data-step="panel"]').click();
  const field = page.locator('.card input[type="number"]').first();
  await field.fill(String(rounds));
  await field.press('Tab');
  await settled(page);
  await page.locator('[data-step="picture"]').click();
  await page.locator('.by-hand summary').click();
  return opened;
}

async function cli(...argv: string[]): Promise<string> {
  let out = '';
  let err = '';
  const signal = new AbortController().signal;
  const code = await run(argv, en, {
    out: (text) => void (out += text),
    err: (text) => void (err += text),
    progress: undefined,
    signal,
  });
  expect([code, err]).toEqual([0, '']);
  return out;
}

async function give(page: Page, bytes: Buffer, name = 'photo.png'): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.locator('[data-form="choose-photo"]').click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'image/png', buffer: bytes });
}

const state = (page: Page, wished: string) =>
  page.locator(`main.coloured[data-state="${wished}"]`).waitFor({ timeout: 60_000 });

/** Says what the cell that is asked about was coloured with; by its digit where it has one. */
async function answer(page: Page, byKey: boolean): Promise<number> {
  const cell = page.locator('.settle');
  const s = Number(await cell.getAttribute('data-stitch'));
  await page.locator(`.patch[data-shown="${s}"]`).waitFor();
  const id = wanted[s] < 0 ? 'white' : beads[wanted[s]].id;
  const choice = page.locator(`[data-choice="${id}"]`);
  const digit = await choice.getAttribute('aria-keyshortcuts');
  if (digit === null) await page.locator('.others summary').click();
  if (byKey && digit !== null) await page.keyboard.press(digit);
  else await choice.click();
  return s;
}

async function pieceOf(page: Page): Promise<Pattern> {
  await page.locator('[data-action="shelf"]').click();
  const { bytes } = await saved(page, 'save-piece');
  await page.locator('.shelf .head button').click();
  const json = new TextDecoder().decode(unzipSync(bytes)['pattern.json']);
  return parsePattern(json, 'pattern.json');
}

test('a coloured chart is read, its doubtful cells settled, and it becomes the piece', async () => {
  const { page, strays, said } = await onPanel();
  const before = await page.locator('.mat [data-bead]').count();
  await saved(page, 'blank-chart');
  await page.locator('[data-action="coloured-chart"]').click();
  await state(page, 'photo');
  expect(await page.locator('[name="blank"]:checked + span').innerText()).toContain('Kingfisher');
  await give(page, photo);
  await state(page, 'settling');
  const [, all] = (await page.locator('.coloured .count').innerText()).match(/1 of (\d+)/)!;
  const asked = [await answer(page, false)];
  await page.locator('.coloured .count', { hasText: '2 of' }).waitFor();
  await page.keyboard.press('ArrowLeft');
  await page.locator('.coloured .count', { hasText: '1 of' }).waitFor();
  // What was said shows as pressed.
  expect(await page.locator('.choices [aria-pressed="true"]').count()).toBe(1);
  for (let n = 0; n < Number(all); n++) {
    const s = await answer(page, n % 2 === 0);
    if (n > 0) asked.push(s);
    if (n + 1 < Number(all)) {
      await page.locator('.coloured .count', { hasText: `${n + 2} of` }).waitFor();
    }
  }
  await state(page, 'read');
  expect(asked.length).toBe(Number(all));
  for (const s of sloppy) expect(asked).toContain(s);
  await page.locator('[data-form="lay"]').click();
  await settled(page);
  const pattern = await pieceOf(page);
  const want = wanted.map((bead) => (bead >= 0 ? beads[bead].id : '_'));
  expect(idsOf(pattern)).toEqual(want);
  expect(pattern.shape).toEqual(blank.shape);

  // Undo and redo at once, from the chart to the beads that were chosen for the picture, and on again.
  const heaps = () => page.locator('.mat [data-bead]').count();
  const own = await heaps();
  await page.keyboard.press('Control+z');
  await expect.poll(heaps).toBe(before);
  await settled(page);
  await page.keyboard.press('Control+y');
  await expect.poll(heaps).toBe(own);
  await settled(page);

  const file = join(folder, 'photo.png');
  writeFileSync(file, photo);
  const dir = join(folder, 'read');
  await cli('read', file, '--blank', join(folder, 'empty/blank.json'), '-o', dir, '--quiet');
  const theirs = parsePattern(readFileSync(join(dir, 'pattern.json'), 'utf8'), 'pattern.json');
  const doubted = new Set(asked);
  const sure = (ids: string[]) => ids.filter((_, s) => !doubted.has(s));
  expect(sure(idsOf(pattern))).toEqual(sure(idsOf(theirs)));
  const doubts = readFileSync(join(dir, 'doubtful.csv'), 'utf8').trim().split(/\r?\n/);
  expect(doubts.length - 1).toBe(asked.length);

  // It is kept as any other, and one undo brings back what lay there.
  await page.locator('main[data-kept="kept"]').waitFor();
  await page.reload();
  await settled(page);
  expect(idsOf(await pieceOf(page))).toEqual(want);
  await page.keyboard.press('Control+z');
  await settled(page);
  expect((await pieceOf(page)).beads.length).toBeGreaterThan(5);
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
}, 240_000);

test('half a page that was settled is gone on with after a reload, and may be left as it was read', async () => {
  const { page } = await onPanel();
  await page.locator('[data-action="coloured-chart"]').click();
  await state(page, 'photo');
  // Dropped anywhere.
  await drop(page, 'photo.png', photo, 'image/png');
  await state(page, 'settling');
  await answer(page, true);
  await page.locator('.coloured .count', { hasText: '2 of' }).waitFor();
  const s = await page.locator('.settle').getAttribute('data-stitch');
  await page.waitForTimeout(300);
  await page.reload();
  await settled(page);
  await page.locator('.by-hand summary').click();
  await page.locator('[data-action="coloured-chart"]').click();
  await page.locator('[data-form="go-on"]').click();
  await state(page, 'settling');
  expect(await page.locator('.settle').getAttribute('data-stitch')).toBe(s);
  await page.locator('[data-form="take-rest"]').click();
  await state(page, 'read');
  await page.locator('[data-white="bare"]').click();
  await page.locator('[data-form="lay"]').click();
  await settled(page);
  const ids = idsOf(await pieceOf(page));
  expect(ids).not.toContain('_');
  expect(ids.filter((id) => id === '.').length).toBeGreaterThan(20);
  // The brush lays over them as over any.
  await page.locator('[data-step="brush"]').click();
  const heap = page.locator('.mat [data-bead]').last();
  const bead = (await heap.getAttribute('data-bead'))!;
  await heap.click();
  const box = (await page.locator('.panel canvas').boundingBox())!;
  for (const share of [0.6, 0.64, 0.68]) {
    await page.mouse.click(box.x + box.width * share, box.y + box.height * 0.55);
  }
  await settled(page);
  const brushed = idsOf(await pieceOf(page));
  const changed = brushed.filter((id, s) => id !== ids[s]);
  expect(changed.length).toBeGreaterThan(0);
  expect(changed.length).toBeLessThanOrEqual(3);
  expect(new Set(changed)).toEqual(new Set([bead]));
}, 240_000);

test('a photo without the page, and an empty page, are told in one sentence and change nothing', async () => {
  const { page, said } = await onPanel();
  const before = idsOf(await pieceOf(page));
  await page.locator('[data-action="coloured-chart"]').click();
  await state(page, 'photo');
  const white = { create: { width: 300, height: 400, channels: 3, background: '#fff' } } as const;
  await give(page, await sharp(white).png().toBuffer());
  const told = page.locator('.coloured .said.trouble');
  await told.waitFor();
  expect(await told.innerText()).toMatch(/corner marks were not found: photograph the whole page/);
  await give(page, Buffer.from('no picture at all'), 'notes.png');
  await page.locator('.coloured .said.trouble', { hasText: 'notes.png' }).waitFor();
  await give(page, readFileSync(join(folder, 'empty/blank.png')), 'blank.png');
  await page.locator('.coloured .said.note', { hasText: 'empty chart itself' }).waitFor();
  // The same without the pattern in it, as a scanner gives it.
  const bare = await sharp(readFileSync(join(folder, 'empty/blank.png')))
    .png()
    .toBuffer();
  await give(page, bare, 'scan.png');
  await page.locator('.coloured .said.trouble', { hasText: 'No coloured cell' }).waitFor();
  await page.keyboard.press('Escape');
  await settled(page);
  expect(idsOf(await pieceOf(page))).toEqual(before);
  expect(said).toEqual([]);
}, 240_000);

test.each([
  [390, 'light'],
  [390, 'dark'],
  [820, 'light'],
  [1280, 'dark'],
] as const)(
  '%i px, %s: axe finds nothing, and every target is large enough',
  async (width, theme) => {
    const { page } = await onPanel(width, 844);
    await page.emulateMedia({ colorScheme: theme });
    const found = await axeIn(page);
    await page.locator('[data-action="coloured-chart"]').click();
    await state(page, 'photo');
    const look = async (name: string) => {
      expect(await found()).toEqual([]);
      // 44 CSS pixels (WCAG 2.2, 2.5.5).
      const small = await page.locator('main button, main summary, main label').evaluateAll((all) =>
        all
          .map((one) => ({ html: one.outerHTML.slice(0, 80), box: one.getBoundingClientRect() }))
          .filter(({ box }) => box.height < 43.9 || box.width < 43.9)
          .map(({ html }) => html),
      );
      expect(small).toEqual([]);
      expect(await clippedWords(page)).toEqual([]);
      const across = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(across).toBeLessThanOrEqual(width);
      if (process.env.KEEP_SCREENS) {
        const path = join(process.env.KEEP_SCREENS, `${name}-${width}-${theme}.png`);
        await page.screenshot({ path, fullPage: true });
      }
    };
    await look('photo');
    await give(page, photo);
    await state(page, 'settling');
    await page.locator('.patch[data-shown]').waitFor();
    await look('settle');
    await page.locator('[data-form="take-rest"]').click();
    await page.locator('.look img').waitFor();
    await look('read');
    await page.locator('[data-form="lay"]').click();
    await settled(page);
    if (process.env.KEEP_SCREENS) {
      const path = join(process.env.KEEP_SCREENS, `laid-${width}-${theme}.png`);
      await page.screenshot({ path });
    }
  },
  240_000,
);

test('every language fits on a phone while a cell is settled', async () => {
  const { page } = await onPanel(390, 844);
  const found: string[] = [];
  await page.locator('[data-action="coloured-chart"]').click();
  await state(page, 'photo');
  await give(page, photo);
  await state(page, 'settling');
  for (const language of languages) {
    // The choice of language lies on the table: half a page waits meanwhile.
    await page.locator('[data-form="leave"]').click();
    await page.locator('.tongue').selectOption(language);
    await page.locator(`html[lang="${language}"]`).waitFor();
    await page.locator('.by-hand summary').click();
    await page.locator('[data-action="coloured-chart"]').click();
    for (const one of await clippedWords(page)) found.push(`${language} photo: ${one}`);
    await page.locator('[data-form="go-on"]').click();
    await state(page, 'settling');
    for (const one of await clippedWords(page)) found.push(`${language} settle: ${one}`);
  }
  expect(found).toEqual([]);
}, 400_000);
