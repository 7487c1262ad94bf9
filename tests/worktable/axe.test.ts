import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeIn } from '../support/axe.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';

// axe-core (Deque) finds nothing against WCAG 2.2 A and AA, in every step, light and dark.

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

for (const theme of ['light', 'dark'] as const) {
  test.each([1280, 390])(`axe finds nothing, ${theme}, %i px`, async (width) => {
    // A phone's page in full: what lies half under the steps is not judged for its size.
    const { page } = await built.open(width, width < 700 ? 5200 : 844);
    await page.emulateMedia({ colorScheme: theme });
    await settled(page);
    const found = await axeIn(page);
    const steps = await page.locator('[data-step]').all();
    expect(steps.length).toBeGreaterThan(1);
    for (const step of steps) {
      await step.click();
      expect(await found()).toEqual([]);
    }
  });
}
