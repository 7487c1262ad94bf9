import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { lighthousePng } from '../support/pictures.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { drop, savedPages as saved } from '../support/page-acts.js';
import { inProcess } from '../support/run.js';

// The newcomer's minute in Chromium: open, drop a picture, save.

let built: OpenPage;
let folder: string;
let png: Buffer;

beforeAll(async () => {
  built = await openBuiltPage();
  folder = mkdtempSync(join(tmpdir(), 'rondure-page-'));
  png = await lighthousePng(500);
  writeFileSync(join(folder, 'tower.png'), png);
});

afterAll(async () => {
  await built?.close();
  rmSync(folder, { recursive: true, force: true });
});

test('opening shows the finished sample, and asks nothing of anybody else', async () => {
  const { page, strays, said } = await built.open();
  await settled(page);
  expect(await page.locator('.mat li').count()).toBe(9);
  expect(await page.locator('[data-action="open"]').isVisible()).toBe(true);
  await page.waitForTimeout(300);
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});

test('a PNG that is dropped gives the pattern of the command line, byte for byte', async () => {
  const { page, strays, said } = await built.open();
  await settled(page);
  await drop(page, 'tower.png', png, 'image/png');
  await page.locator('.title').evaluate((title) => (title as HTMLInputElement).value);
  await expect.poll(() => page.locator('.title').inputValue()).toBe('tower');
  await settled(page);
  const { name, bytes } = await saved(page, 'zip');
  expect(name).toBe('tower.zip');
  const files = unzipSync(bytes);
  const home = process.cwd();
  process.chdir(folder);
  try {
    const { code, err } = await inProcess('chart', 'tower.png', '-o', 'tower');
    expect({ code, err }).toEqual({ code: 0, err: '' });
  } finally {
    process.chdir(home);
  }
  const lists = [
    'pattern.json',
    'rounds.txt',
    'stringing.txt',
    'stringing.csv',
    'materials.csv',
    'shopping.txt',
    'wedges.svg',
    'chart.svg',
    'working-chart.svg',
  ];
  for (const list of lists) {
    const mine = Buffer.from(files[list] ?? []).toString('utf8');
    expect(mine === readFileSync(join(folder, 'tower', list), 'utf8'), list).toBe(true);
  }
  expect(Buffer.from(files['booklet.pdf'].subarray(0, 5)).toString()).toBe('%PDF-');
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});

test('moving the picture is one step a gesture, and undo brings back every byte', async () => {
  const { page } = await built.open();
  await settled(page);
  const before = (await saved(page, 'zip')).bytes;
  await page.locator('[data-step="picture"]').click();
  const box = (await page.locator('.panel canvas').boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let k = 1; k <= 12; k++) await page.mouse.move(x + 5 * k, y - 2 * k);
  await page.mouse.up();
  await settled(page);
  const moved = unzipSync((await saved(page, 'zip')).bytes)['pattern.json'];
  const first = unzipSync(before)['pattern.json'];
  expect(Buffer.compare(moved, first)).not.toBe(0);
  await page.keyboard.press('Control+z');
  expect(await page.locator('[data-action="undo"]').isDisabled()).toBe(true);
  await settled(page);
  const back = unzipSync((await saved(page, 'zip')).bytes)['pattern.json'];
  expect(Buffer.compare(back, first)).toBe(0);
});

test('what is no picture is refused with one sentence, and nothing is lost', async () => {
  const { page } = await built.open();
  await settled(page);
  await drop(page, 'notes.txt', Buffer.from('strung 200 beads'), 'text/plain');
  await page.locator('[role="alert"] p').waitFor();
  expect(await page.locator('[role="alert"] p').innerText()).toContain('notes.txt');
  expect(await page.locator('.title').inputValue()).toBe('Kingfisher');
  expect(await page.locator('.mat li').count()).toBe(9);
});
