import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { lighthousePng } from '../support/pictures.js';
import { KeysAlone } from '../support/by-keys.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { drop } from '../support/page-acts.js';

// What must not be lost is brushed over without mouse and finger (WCAG 2.2, 2.1.1), and every move is said in a
// live region (4.1.3).

let built: OpenPage;
let png: Buffer;
beforeAll(async () => {
  built = await openBuiltPage();
  png = await lighthousePng(400);
});
afterAll(() => built?.close());

const told = (page: Page) => page.locator('.panel .lit[aria-live="polite"]').innerText();
const across = (page: Page) => page.getByRole('spinbutton', { name: 'To the right' }).inputValue();

/** The brush is taken up by keys, over a picture that has been laid on the panel. */
async function withBrush(): Promise<{ page: Page; keys: KeysAlone; strays: string[] }> {
  const { page, strays } = await built.open();
  const keys = new KeysAlone(page);
  await settled(page);
  await drop(page, 'tower.png', png, 'image/png');
  await expect.poll(() => page.locator('.title').inputValue()).toBe('tower');
  await settled(page);
  await keys.press('1');
  await keys.tabTo('.card [data-action="mind"]', 60);
  await keys.press('Space');
  return { page, keys, strays };
}

test('the brush over what must not be lost goes by keys, from stitch to stitch', async () => {
  const { page, keys, strays } = await withBrush();
  await expect.poll(() => page.locator('.card .by-keys').innerText()).toContain('Shift');

  // The arrows are the brush's now: it starts at the first stitch, and the picture stays where it is.
  await keys.press('ArrowRight');
  await expect.poll(() => keys.on('.panel .ground')).toBe(true);
  await expect.poll(() => told(page)).toMatch(/^Round 1, stitch 1, wedge 1: \S /);
  await keys.press('ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowRight');
  await expect.poll(() => told(page)).toMatch(/^Round 4, stitch \d+, wedge \d: /);
  expect(await told(page)).not.toContain('brushed over');
  expect(await across(page)).toBe('0');

  // Its size by keys, said too. The usual one is 10 mm across.
  await keys.press(',', ',', ',', '.');
  await expect.poll(() => told(page)).toBe('Brush: 8 mm');
  expect(
    await page
      .locator('.card input[type="range"]')
      .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value)),
  ).toContain('4');

  await keys.press('Space');
  await expect.poll(() => told(page)).toMatch(/^Round 4, .*; brushed over$/);
  // Farther than the brush reaches: a round is at least a millimetre high.
  await keys.press(...Array<string>(9).fill('ArrowUp'));
  await expect.poll(() => told(page)).toMatch(/^Round 13, /);
  expect(await told(page)).not.toContain('brushed over');
  // With Shift it brushes as it goes, one step each.
  await keys.press('Shift+ArrowUp', 'Shift+ArrowUp');
  await expect.poll(() => told(page)).toMatch(/^Round 15, .*; brushed over$/);
  await keys.press('Control+z', 'Control+z');
  await expect.poll(() => told(page)).not.toContain('brushed over');
  await keys.press('Control+z');
  await expect.poll(() => page.locator('.card [data-action="unmind"]').isDisabled()).toBe(true);
  await keys.press('Control+y');

  // Put away: the keyboard is where the brush was taken up, and the arrows move the picture again.
  await keys.press('Escape');
  await expect.poll(() => keys.on('.card [data-action="mind"]')).toBe(true);
  await keys.press('ArrowLeft');
  await expect.poll(() => across(page)).toBe('-1');
  await settled(page);
  expect(strays).toEqual([]);
});

test('what keys have brushed over is wiped off by keys', async () => {
  const { page, keys } = await withBrush();
  await keys.press('ArrowRight', 'ArrowUp', 'ArrowUp', 'Space');
  await expect.poll(() => told(page)).toContain('brushed over');
  await keys.press('Escape');
  await keys.tabTo('.card [data-action="unmind"]', 3);
  await keys.press('Space', 'ArrowDown', 'ArrowUp', 'Enter');
  await expect.poll(() => told(page)).toMatch(/^Round 3, /);
  expect(await told(page)).not.toContain('brushed over');
});

test('a pull of the mouse puts the brush of the keyboard aside', async () => {
  const { page, keys } = await withBrush();
  await keys.press('ArrowRight', 'ArrowUp');
  await expect.poll(() => told(page)).toMatch(/^Round 2, /);
  const box = (await page.locator('.panel canvas').boundingBox())!;
  await page.mouse.click(box.x + box.width / 2 + 40, box.y + box.height / 2);
  await expect.poll(() => told(page)).toBe('');
  await expect.poll(() => page.locator('.card [data-action="unmind"]').isEnabled()).toBe(true);
});
