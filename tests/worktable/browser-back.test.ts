import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { tapOn, toWork } from '../support/work-acts.js';

// The browser's own way back (History, HTML standard 7.4): on a phone a button that thumbs know. It puts aside what hides the
// table, one layer at a time; only from the table it leads off the page.

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

const act = (page: Page, id: string) => page.locator(`[data-action="${id}"]`).first();
const depth = (page: Page) => page.evaluate(() => history.length);
async function begin() {
  const { page, said } = await built.open(390, 844, undefined, { hasTouch: true });
  await settled(page);
  return { page, said, address: page.url() };
}

test('leads from the work to the table, where the work is found again', async () => {
  const { page, said, address } = await begin();
  await toWork(page, 'string');
  for (let n = 0; n < 3; n++) await tapOn(page);
  const sum = await page.locator('.at-work .sum').innerText();
  await page.goBack();
  await settled(page);
  expect(await page.locator('.at-work').count()).toBe(0);
  expect(page.url()).toBe(address);
  // Forward opens nothing by itself.
  await page.goForward();
  expect(await page.locator('.card').count()).toBe(1);
  await toWork(page, 'string');
  expect(await page.locator('.at-work .sum').innerText()).toBe(sum);
  expect(said).toEqual([]);
});

test('puts aside one layer at a time, also after the page was opened anew', async () => {
  const { page } = await begin();
  await toWork(page, 'crochet');
  await act(page, 'where-am-i').click();
  await page.locator('[data-action="close-help"]').first().waitFor();
  await page.goBack();
  await page.locator('[data-action="close-help"]').first().waitFor({ state: 'detached' });
  expect(await page.locator('.at-work.crochet').count()).toBe(1);
  await expect.poll(() => page.evaluate(() => history.state !== null)).toBe(true);
  await page.reload();
  await page.locator('.at-work.crochet').waitFor();
  await page.goBack();
  await settled(page);
  for (const id of ['shelf', 'help']) {
    await act(page, id).click();
    await page.locator(`.${id}`).waitFor();
    await page.goBack();
    await page.locator(`.${id}`).waitFor({ state: 'detached' });
  }
  await page.locator('[data-step="picture"]').click();
  await page.locator('.by-hand summary').click();
  await act(page, 'coloured-chart').click();
  await page.locator('main.coloured').waitFor();
  await page.goBack();
  await settled(page);
});

test('what is closed by its own button leaves nothing behind to come back to', async () => {
  const { page, address } = await begin();
  await toWork(page, 'crochet');
  const deep = await depth(page);
  for (let n = 0; n < 6; n++) {
    await act(page, 'to-table').click();
    await settled(page);
    await toWork(page, 'crochet');
  }
  expect(await depth(page)).toBe(deep);
  await act(page, 'to-table').click();
  await settled(page);
  await expect.poll(() => page.evaluate(() => history.state)).toBe(null);
  // From the table it leads to where the maker was before.
  await page.goBack();
  expect(page.url()).not.toBe(address);
});
