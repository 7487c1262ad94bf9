import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import { panelGeometry } from '../../src/core/panel/geometry.js';
import { planFrame } from '../../src/core/purse/frame/plan.js';
import { lighthousePng } from '../support/pictures.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { savedPages } from '../support/page-acts.js';

// The purse as it hangs in its frame: each side with its own picture, drawn to size, beside a coin and a ruler.

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

const act = (page: Page, id: string) => page.locator(`[data-action="${id}"]`).first();
const canvas = (page: Page) => page.locator('.panel.purse canvas');

/** What is drawn: its size in CSS pixels, and the box of all that is drawn in the same. */
const drawnAt = (page: Page) =>
  canvas(page).evaluate((one: HTMLCanvasElement) => {
    const { width, height } = one;
    const copy = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })!;
    copy.drawImage(one, 0, 0);
    const { data } = copy.getImageData(0, 0, width, height);
    const dots = width / one.clientWidth;
    let right = -1;
    const filled = (x: number, y: number) => data[4 * (y * width + x) + 3] > 127;
    for (let x = width - 1; x >= 0 && right < 0; x--)
      for (let y = 0; y < height; y++) if (filled(x, y)) right = x;
    const rows = Array.from({ length: height }, (_, y) => y).filter((y) => filled(right, y));
    const row = Math.round((rows[0] + rows.at(-1)!) / 2);
    let left = right;
    while (left > 0 && filled(left - 1, row)) left--;
    return { coinPx: (right - left + 1) / dots };
  });
const picture = (page: Page) =>
  canvas(page).evaluate(async (one: HTMLCanvasElement) => {
    const bytes = new TextEncoder().encode(one.toDataURL());
    const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    return Array.from(sum.slice(0, 12), (byte) => byte.toString(16)).join('');
  });

/** The sample in the step Purse. */
async function atPurse() {
  const { page, said } = await built.open();
  await settled(page);
  await page.locator('[data-step="purse"]').click();
  return { page, said };
}

test('a bank card held against the screen makes the purse, the coin and the ruler as large as they are', async () => {
  const { page, said } = await atPurse();
  await act(page, 'frame-half-round').click();
  await settled(page);
  // ISO/IEC 7810:2019, ID-1: 85.60 mm by 53.98 mm.
  const card = page.locator('.bank-card');
  for (const pxPerMm of [3.2, 5.5]) {
    await page.locator('.card-size').fill(String(pxPerMm));
    const box = (await card.boundingBox())!;
    expect(box.width).toBeCloseTo(85.6 * pxPerMm, 0);
    expect(box.height).toBeCloseTo(53.98 * pxPerMm, 0);
    if ((await act(page, 'true-size').getAttribute('aria-pressed')) !== 'true') {
      await act(page, 'true-size').click();
    }
    // Council Regulation (EU) No 729/2014, Annex I: the coin of two euro is 25.75 mm across.
    await expect
      .poll(async () => Math.abs((await drawnAt(page)).coinPx - 25.75 * pxPerMm))
      .toBeLessThan(0.6 * pxPerMm);
  }
  // It is the screen's, and stays when the page is opened anew.
  await page.locator('main[data-kept="kept"]').waitFor();
  await page.reload();
  await settled(page);
  await page.locator('[data-step="purse"]').click();
  expect((await card.boundingBox())!.width).toBeCloseTo(85.6 * 5.5, 0);
  expect(said).toEqual([]);
});

test('front, back and inside are each another picture, and the frame follows its measures as they are typed', async () => {
  const { page, said } = await atPurse();
  await expect.poll(() => act(page, 'purse-back').isDisabled()).toBe(true);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    act(page, 'back-own').click(),
  ]);
  await chooser.setFiles({
    name: 'tower.png',
    mimeType: 'image/png',
    buffer: await lighthousePng(300),
  });
  await expect.poll(() => act(page, 'purse-back').isDisabled()).toBe(false);
  await act(page, 'frame-squared').click();
  await settled(page);
  const seen = new Set<string>();
  for (const look of ['purse-both', 'purse-front', 'purse-back', 'purse-inside']) {
    await act(page, look).click();
    await expect.poll(async () => seen.has(await picture(page))).toBe(false);
    seen.add(await picture(page));
  }
  expect(seen.size).toBe(4);

  await act(page, 'purse-front').click();
  const width = page.getByRole('spinbutton', { name: /^Width/ });
  const before = await picture(page);
  await width.fill('70');
  // Drawn while it is typed, before the field is left.
  await expect.poll(() => picture(page)).not.toBe(before);
  await page.keyboard.press('Enter');
  await settled(page);

  // What the card says of stitches and seam is what the pattern's own plan says.
  const facts = await page.locator('.card .facts').innerText();
  const { bytes } = await savedPages(page, 'zip');
  const files = unzipSync(bytes);
  const pattern = parsePattern(Buffer.from(files['pattern.json']).toString(), 'pattern.json');
  expect(pattern.frame?.widthMm).toBe(70);
  expect(pattern.panels).toHaveLength(2);
  const plan = planFrame(pattern.frame!, panelGeometry(pattern.shape));
  for (const figure of [plan.stitches, plan.bareRounds, plan.seam.stitches]) {
    expect(facts).toMatch(new RegExp(`(^|\\D)${figure}(\\D|$)`));
  }
  // What is typed is one step, and taken back with it; on the way to 82 nothing is 8 mm wide.
  await page.locator('[data-step="purse"]').click();
  await width.fill('');
  await width.pressSequentially('82', { delay: 30 });
  await expect.poll(() => width.inputValue()).toBe('82');
  await page.keyboard.press('Enter');
  await settled(page);
  await page.locator('.card h2').first().click();
  await page.keyboard.press('Control+z');
  await expect.poll(() => width.inputValue()).toBe('70');
  expect(said).toEqual([]);
});

test('fitting the panel says how many rounds it has now, or that it fits already', async () => {
  const { page } = await built.open();
  await settled(page);
  await page.locator('[data-step="purse"]').click();
  await act(page, 'frame-half-round').click();
  const wide = page.locator('.numbers input[type="number"]').first();
  await wide.fill('70');
  await wide.press('Tab');
  await settled(page);
  const rounds = async () => {
    await settled(page);
    const inFrame = await page.locator('.facts li').nth(1).innerText();
    return inFrame.match(/of round (\d+)/)![1];
  };
  const before = await rounds();
  await act(page, 'fit-frame').click();
  const note = page.locator('.told');
  await expect.poll(() => note.innerText()).toContain(`Rounds: ${before} →`);
  const after = await rounds();
  expect(Number(after)).toBeLessThan(Number(before));
  expect(await note.innerText()).toContain(`Rounds: ${before} → ${after}.`);
  await act(page, 'fit-frame').click();
  await expect.poll(() => note.innerText()).toContain(`It fits already: ${after} rounds`);
});

test('the back is placed for itself: what moves it leaves the front as it was', async () => {
  const { page, said } = await atPurse();
  await act(page, 'back-same').click();
  await settled(page);
  await page.locator('[data-step="picture"]').click();
  await act(page, 'purse-back').click();
  for (let n = 0; n < 6; n++) await page.keyboard.press('ArrowRight');
  await settled(page);
  const { bytes } = await savedPages(page, 'zip');
  const text = Buffer.from(unzipSync(bytes)['pattern.json']).toString();
  const [front, back] = parsePattern(text, 'pattern.json').panels;
  expect(back.rounds).not.toEqual(front.rounds);
  expect(said).toEqual([]);
});

test('a frame that no panel of so many rounds has room for is said, until another one is wished', async () => {
  const { page, said } = await atPurse();
  await act(page, 'frame-squared').click();
  await settled(page);
  const trouble = page.locator('.told .trouble');
  const width = page.getByRole('spinbutton', { name: /^Width/ });
  await width.fill('125');
  await trouble.waitFor();
  // The sentence and the button to put it away stand within the note.
  const note = (await trouble.boundingBox())!;
  for (const part of await trouble.locator('> *').all()) {
    const box = (await part.boundingBox())!;
    expect(box.x + box.width).toBeLessThanOrEqual(note.x + note.width);
  }
  await width.fill('90');
  await trouble.waitFor({ state: 'detached' });
  await page.keyboard.press('Enter');
  await settled(page);
  expect(said).toEqual([]);
});
