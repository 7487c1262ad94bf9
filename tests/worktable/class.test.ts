import { afterAll, beforeAll, expect, test } from 'vitest';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { readPdf } from '../support/read-pdf.js';
import { readFileSync } from 'node:fs';

// A teacher's PDF of the shelf: the piece on the table and one that was put away, for two pupils.

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

test('two pieces of the shelf become one PDF for two pupils', async () => {
  const { page, strays, said } = await built.open();
  await settled(page);
  // Two pieces that are kept: each has a step of its own behind it.
  const shaped = async (title: string, rounds: string) => {
    await page.locator('.title').fill(title);
    await page.locator('.title').press('Tab');
    await page.locator('[data-step="panel"]').click();
    const field = page.locator('.card input[type="number"]').first();
    await field.fill(rounds);
    await field.press('Tab');
    await settled(page);
    await page.locator('main[data-kept="kept"]').waitFor();
  };
  await shaped('Lighthouse', '5');
  await page.locator('[data-action="shelf"]').click();
  await page.locator('[data-action="begin-piece"]').click();
  await expect.poll(() => page.locator('.title').inputValue()).toBe('Kingfisher');
  await settled(page);
  await shaped('Harbour', '6');
  await page.locator('[data-action="shelf"]').click();
  await page.locator('.for-class summary').click();
  const shelf = page.locator('.class-sheets');
  await shelf.getByLabel('Lighthouse').check();
  expect(await shelf.getByLabel('Harbour').isChecked()).toBe(true);
  await shelf.locator('textarea').fill('Ines\n\n  Bo \n');
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 120_000 }),
    shelf.locator('[data-form="class"]').click(),
  ]);
  expect(download.suggestedFilename()).toBe('harbour-class.pdf');
  const pdf = await readPdf(readFileSync(await download.path()));
  const pages = pdf.pages.map(({ texts }) => texts.map(({ text }) => text).join(' '));
  const charts = pages.filter((text) => /work this way/.test(text));
  expect(charts.length).toBe(4);
  for (const name of ['Ines', 'Bo']) {
    for (const title of ['Harbour', 'Lighthouse']) {
      expect(charts.filter((text) => text.includes(`${name} · ${title}`)).length).toBe(1);
    }
  }
  // The piece on the table is as it was, and the names are there next time.
  await page.reload();
  await settled(page);
  expect(await page.locator('.title').inputValue()).toBe('Harbour');
  await page.locator('[data-action="shelf"]').click();
  await page.locator('.for-class summary').click();
  await expect.poll(() => shelf.locator('textarea').inputValue()).toBe('Ines\n\n  Bo \n');
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});
