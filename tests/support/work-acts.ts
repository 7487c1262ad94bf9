import type { Page } from 'playwright-core';

// What a maker does at the screen beside the bead mat.

/** Opens it from the step Work. */
export async function toWork(page: Page, what: 'string' | 'crochet'): Promise<void> {
  await page.locator('[data-step="work"]').click();
  await page.locator(`.card [data-action="${what}"]`).click();
  await page.locator(`.at-work.${what}`).waitFor();
}

/** The run that is to be strung, as it is written there. */
export async function shownRun(page: Page): Promise<{ letter: string; count: number }> {
  const [count, letter] = await page.locator('.at-work .run b').allInnerTexts();
  return { letter: letter.trim(), count: Number(count.replace(/\D/g, '')) };
}

/** Done: the next one. */
export const tapOn = (page: Page) => page.locator('.at-work button.tap').click();
