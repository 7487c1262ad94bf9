import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeIn } from '../support/axe.js';
import { lettersOn } from '../support/letters-on.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { tapOn, toWork } from '../support/work-acts.js';

// The screen beside the bead mat, read at a glance from half a metre, on a phone of 390 CSS pixels.
//
// Size: ISO 9241-303:2011, 5.5.4: letters 20 to 22 minutes of arc high are read well, 16 are the least
// (figures from memory). 390 pixels are about 66 mm of glass on phones of today (common practice, no
// source): at 500 mm, 22 minutes are 3.2 mm, 19 pixels. A capital is about 0.7 of the size of its letters.
// Contrast: WCAG 2.2, 1.4.6 (AAA), 7:1, and 4.5:1 for large letters.
const mmPerPx = 66 / 390;
const capital = 0.7;
const minutesAt = (px: number) => ((px * capital * mmPerPx) / 500) * (180 / Math.PI) * 60;

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

/** What has to be seen without taking the phone up. */
const glanced = {
  string: ['.run b', '.run .letter', '.then', '.name'],
  crochet: ['.parts b', '.parts .letter', '.counter b'],
};

describe.each(['light', 'dark'] as const)('%s', (theme) => {
  let page: Page;
  beforeEach(async () => {
    ({ page } = await built.open(390, 844, undefined, { hasTouch: true, isMobile: true }));
    await page.emulateMedia({ colorScheme: theme });
    await settled(page);
  });

  test.each(['string', 'crochet'] as const)(
    '%s: large enough, dark enough, no fault',
    async (what) => {
      await toWork(page, what);
      const all = await lettersOn(page, '.at-work');
      expect(all.length).toBeGreaterThan(8);
      const poor = all.filter(({ px, contrast }) => px < 16 || contrast < (px >= 24 ? 4.5 : 7));
      expect(poor).toEqual([]);
      for (const selector of glanced[what]) {
        const [one] = await lettersOn(page, `.at-work ${selector}`);
        expect(minutesAt(one.px), `${selector}: ${one.px} px`).toBeGreaterThanOrEqual(20);
        expect(one.contrast, selector).toBeGreaterThanOrEqual(7);
      }
      // One thumb: what is tapped all day is as wide as the glass and reaches below its middle.
      const box = (await page.locator('.at-work .tap').boundingBox())!;
      expect(box.width).toBeGreaterThan(380);
      expect(box.y + box.height).toBeGreaterThan(0.6 * 844);
      expect(await (await axeIn(page))()).toEqual([]);
    },
  );
});

test('the letters stay where they are, at one stitch or two, and where something is told', async () => {
  const { page } = await built.open(390, 844, undefined, { hasTouch: true, isMobile: true });
  await settled(page);
  await toWork(page, 'crochet');
  await page.locator('[data-strung-by-list]').tap();
  const middles = new Set<number>();
  const told: number[] = [];
  const stitches = new Set<number>();
  // Three rounds of seven wedges have 7, 14 and 21 stitches; a run is at most ten of them.
  for (let n = 0; n < 24; n++) {
    const { y, height } = (await page.locator('.at-work .parts').boundingBox())!;
    middles.add(Math.round(y + height / 2));
    const tap = page.locator('.at-work button.tap');
    stitches.add((await tap.getAttribute('data-stitches'))!.length);
    told.push(await page.locator('.at-work .cue').count());
    // What is pushed below the edge has to be looked for.
    const hands = page.locator('.at-work .hands');
    expect(await hands.evaluate((one) => one.scrollHeight - one.clientHeight)).toBeLessThan(2);
    const before = await page.locator('.at-work .counter').innerText();
    await tapOn(page);
    await expect.poll(() => page.locator('.at-work .counter').innerText()).not.toBe(before);
  }
  expect(Math.max(...told)).toBeGreaterThan(1);
  expect(Math.min(...told)).toBe(0);
  expect(stitches.size).toBeGreaterThan(1);
  expect(middles.size, [...middles].join()).toBe(1);
});
