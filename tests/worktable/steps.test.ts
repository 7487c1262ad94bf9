import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';

// What is done in each step, as a maker does it; nothing of it asks anybody outside the page's own address.

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

async function at(step: string): Promise<{ page: Page; quiet: () => void }> {
  const { page, strays, said } = await built.open();
  await settled(page);
  await page.locator(`[data-step="${step}"]`).click();
  return {
    page,
    quiet() {
      expect(strays).toEqual([]);
      expect(said).toEqual([]);
    },
  };
}

const counts = (page: Page) => page.locator('.mat .count').allInnerTexts();
const sum = (numbers: string[]) =>
  numbers.reduce((all, one) => all + Number(one.replace(/\D/g, '')), 0);

test('a swatch is worked out from the form, and the panel fits it', async () => {
  const { page, quiet } = await at('panel');
  const before = await page.locator('.panel .size').innerText();
  await page.locator('[data-form="stitch"]').click();
  // Ten rounds over 52 mm: a round of 2.6 mm instead of about 2.2.
  await page.getByLabel('How wide is it, over the beads?').fill('52');
  await page.locator('[data-form="work-out"]').click();
  await page.getByText('Your stitch was worked out').waitFor();
  await settled(page);
  expect(await page.locator('.panel .size').innerText()).not.toBe(before);
  expect(await page.locator('.stitch-form').innerText()).toMatch(/round \d[.\d]* mm high/);
  await page.keyboard.press('Control+z');
  await settled(page);
  expect(await page.locator('.panel .size').innerText()).toBe(before);
  quiet();
});

test('a name that is being typed stays while beads are chosen', async () => {
  const { page, quiet } = await at('panel');
  const field = page.locator('.card input[type="number"]').first();
  await field.fill('24');
  await field.press('Tab');
  await page.locator('.title').fill('Harbour bird');
  await page.locator('main:not([data-state="settled"])').waitFor();
  await settled(page);
  expect(await page.locator('.title').inputValue()).toBe('Harbour bird');
  await page.locator('.title').press('Tab');
  await page.locator('[data-action="undo"]').click();
  await expect.poll(() => page.locator('.title').inputValue()).toBe('Kingfisher');
  quiet();
});

test('what runs together in few colours is shown on the panel', async () => {
  const { page, quiet } = await at('beads');
  await page.getByLabel('Bead colours').first().fill('3');
  await settled(page);
  const place = page.locator('[data-lost]').first();
  await place.waitFor();
  const drawn = () =>
    page.locator('.panel canvas').evaluate((it: HTMLCanvasElement) => it.toDataURL());
  const before = await drawn();
  await place.click();
  expect(await place.getAttribute('aria-pressed')).toBe('true');
  await expect.poll(drawn).not.toBe(before);
  await place.click();
  await expect.poll(drawn).toBe(before);
  quiet();
});

test('a stroke of the brush is one step, in every wedge if wished, and is there after a reload', async () => {
  const { page, quiet } = await at('brush');
  const first = await counts(page);
  const heap = page.locator('.mat [data-bead]').nth(3);
  const bead = await heap.getAttribute('data-bead');
  await heap.click();
  const box = (await page.locator('.panel canvas').boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const stroke = async () => {
    await page.mouse.move(x - 60, y - 90);
    await page.mouse.down();
    await page.mouse.move(x + 60, y - 90, { steps: 12 });
    await page.mouse.up();
    await settled(page);
  };
  const many = async () =>
    Number((await page.locator(`[data-bead="${bead}"] .count`).innerText()).replace(/\D/g, ''));
  const before = await many();
  await stroke();
  const once = (await many()) - before;
  expect(once).toBeGreaterThan(5);
  expect(sum(await counts(page))).toBe(sum(first));
  await page.keyboard.press('Control+z');
  await settled(page);
  expect(await counts(page)).toEqual(first);
  await page.locator('[data-action="every-wedge"]').click();
  await stroke();
  // Stitches that hold that bead already are not counted again.
  expect((await many()) - before).toBeGreaterThan(3 * once);
  const laid = await counts(page);
  await page.locator('main[data-kept="kept"]').waitFor();
  await page.reload();
  await settled(page);
  expect(await counts(page)).toEqual(laid);
  quiet();
});

test('a heap is swapped and merged, and undo lays it back', async () => {
  const { page, quiet } = await at('beads');
  const first = await counts(page);
  await page.locator('.mat [data-bead]').nth(4).click();
  const swap = page.locator('[data-swap]').first();
  const to = (await swap.getAttribute('data-swap'))!;
  await swap.click();
  await page.locator(`.mat [data-bead="${to}"]`).waitFor();
  await settled(page);
  expect(sum(await counts(page))).toBe(sum(first));
  await page.locator('[data-action="undo"]').click();
  await page.locator(`.mat [data-bead="${to}"]`).waitFor({ state: 'detached' });
  await settled(page);
  const [one, other] = await page
    .locator('.mat [data-bead]')
    .evaluateAll((heaps) => heaps.slice(-2).map((heap) => (heap as HTMLElement).dataset.bead!));
  if (!(await page.locator(`[data-card="${other}"]`).count()))
    await page.locator(`.mat [data-bead="${other}"]`).click();
  await page.locator(`[data-merge="${one}"]`).click();
  await page.locator(`.mat [data-bead="${other}"]`).waitFor({ state: 'detached' });
  await settled(page);
  const merged = await counts(page);
  expect(merged.length).toBe(first.length - 1);
  expect(sum(merged)).toBe(sum(first));
  quiet();
});

test('whose eyes look stands below the panel until the maker looks again', async () => {
  const { page, quiet } = await at('beads');
  const label = page.locator('.other-eyes p');
  const hexes = () =>
    page.locator('.panel canvas').evaluate((one) => (one as HTMLCanvasElement).toDataURL());
  const own = await hexes();
  const seen = [
    'As seen without red',
    'As seen without green',
    'As seen without blue',
    'As printed in grey',
  ];
  for (const text of seen) {
    await page.locator('[data-action="eyes"]').click();
    await expect.poll(() => label.innerText()).toBe(text);
  }
  await page.locator('[data-step="purse"]').click();
  await expect.poll(() => label.innerText()).toBe('As printed in grey');
  await page.locator('[data-step="beads"]').click();
  await expect.poll(hexes).not.toBe(own);
  await page.locator('[data-action="own-eyes"]').click();
  await label.waitFor({ state: 'detached' });
  await expect.poll(hexes).toBe(own);
  quiet();
});

test('jars are read from a photo, and the panel is laid in them', async () => {
  const { page, quiet } = await at('beads');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.locator('[data-action="photo-jars"]').click(),
  ]);
  await chooser.setFiles(fileURLToPath(new URL('../../fixtures/jars.jpg', import.meta.url)));
  await page.locator('.jar-photo canvas').waitFor();
  await page.locator('.jars .button.main').click();
  await page.locator('.jars').waitFor({ state: 'detached' });
  await settled(page);
  // Three rows of four heaps lie in the photo.
  const ids = await page
    .locator('.mat [data-bead]')
    .evaluateAll((heaps) => heaps.map((heap) => (heap as HTMLElement).dataset.bead!));
  expect(ids.length).toBeGreaterThan(4);
  for (const id of ids) expect(id).toMatch(/^r[1-3]c[1-4]$/);
  quiet();
});

test('lists are read in Pages, and count what lies on the mat', async () => {
  const { page, quiet } = await at('pages');
  const beads = sum(await counts(page));
  await page.locator('[data-action="read-lists"]').click();
  const lists = page.locator('details.list');
  await lists.nth(2).waitFor();
  const texts = await page
    .locator('details.list pre')
    .evaluateAll((all) => all.map((one) => one.textContent));
  expect(texts.some((text) => text.includes(`total ${beads}`))).toBe(true);
  expect(texts.some((text) => /shopping|buy/i.test(text))).toBe(true);
  quiet();
});
