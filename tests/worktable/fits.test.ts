import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import type { Page } from 'playwright-core';
import { languages } from '../../src/words/pages/languages.js';
import { clippedWords } from '../support/clipped.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';

// No word is cut off: in any language, on a phone (WCAG 2.2, 1.4.10), and with letters twice as large as usual
// (1.4.4), set as a reader sets them: in the browser.

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

async function stepsOf(page: Page): Promise<string[]> {
  const steps = await page
    .locator('[data-step]')
    .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.step!));
  expect(steps.length).toBeGreaterThan(3);
  return steps;
}

test('every language fits on a phone', async () => {
  const { page } = await built.open(390, 844);
  await settled(page);
  const steps = await stepsOf(page);
  const found: string[] = [];
  for (const language of languages) {
    await page.locator('.tongue').selectOption(language);
    await page.locator(`html[lang="${language}"]`).waitFor();
    for (const step of steps) {
      await page.locator(`[data-step="${step}"]`).click();
      for (const one of await clippedWords(page)) found.push(`${language} ${step}: ${one}`);
    }
  }
  expect(found).toEqual([]);
}, 400_000);

test.each([
  [1280, 800],
  [820, 1180],
  [390, 844],
])('letters twice as large fit on a window %i wide', async (width, height) => {
  const large = await openBuiltPage({}, ['--blink-settings=defaultFontSize=32']);
  onTestFinished(() => large.close());
  const { page } = await large.open(width, height);
  await settled(page);
  const size = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
  expect(size).toBe('32px');
  const found: string[] = [];
  for (const step of await stepsOf(page)) {
    await page.locator(`[data-step="${step}"]`).click();
    for (const one of await clippedWords(page)) found.push(`${step}: ${one}`);
  }
  expect(found).toEqual([]);
});

// WCAG 2.2, 1.4.10: nothing has to be pushed sideways to be reached; 2.5.5: a target is 44 pixels at least.
test.each([
  [1280, 800],
  [820, 1180],
  [390, 844],
])(
  'all steps are in sight with letters twice as large, %i wide',
  async (width, height) => {
    const large = await openBuiltPage({}, ['--blink-settings=defaultFontSize=32']);
    onTestFinished(() => large.close());
    const { page } = await large.open(width, height);
    await settled(page);
    for (const language of languages) {
      await page.locator('.tongue').selectOption(language);
      await page.locator(`html[lang="${language}"]`).waitFor();
      const boxes = await page.locator('.reach button').evaluateAll((all) =>
        all.map((one) => {
          const { left, right, top, bottom } = one.getBoundingClientRect();
          return { name: one.textContent, left, right, top, bottom };
        }),
      );
      expect(boxes.length).toBeGreaterThan(8);
      for (const { name, left, right, top, bottom } of boxes) {
        const at = `${language}: ${name} ${left} to ${right}, ${top} to ${bottom}`;
        expect(left >= 0 && right <= width && top >= 0 && bottom <= height, at).toBe(true);
        expect(bottom - top, at).toBeGreaterThanOrEqual(44);
      }
    }
  },
  120_000,
);
