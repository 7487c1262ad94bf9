import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import { languages } from '../../src/words/pages/languages.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';

// On a phone the steps and undo lie at the lower edge of the screen, wherever the sheet has been pushed to: large
// enough for a thumb (WCAG 2.2, 2.5.5: 44 px), off the panel, and covering nothing that has the keyboard (2.4.11).

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

interface Reach {
  /** Buttons that a finger does not reach where they stand. */
  readonly hidden: string[];
  /** The least side of a button. */
  readonly leastPx: number;
  /** From the lower edge of the panel to the buttons. */
  readonly freePx: number;
  /** From the buttons to the lower edge of the screen. */
  readonly belowPx: number;
}

const reach = (page: Page): Promise<Reach> =>
  page.evaluate(() => {
    const bar = document.querySelector('.reach')!;
    const buttons = Array.from(bar.querySelectorAll<HTMLElement>('button'));
    const boxes = buttons.map((one) => one.getBoundingClientRect());
    const hidden = buttons.filter((one, n) => {
      const { left, top, width, height } = boxes[n];
      const hit = document.elementFromPoint(left + width / 2, top + height / 2);
      return !one.contains(hit);
    });
    const ground = document.querySelector('.panel .ground')!.getBoundingClientRect();
    return {
      hidden: hidden.map((one) => one.innerText),
      leastPx: Math.min(...boxes.flatMap(({ width, height }) => [width, height])),
      freePx: Math.min(...boxes.map(({ top }) => top)) - ground.bottom,
      belowPx: innerHeight - Math.max(...boxes.map(({ bottom }) => bottom)),
    };
  });

test.each([
  [390, 844],
  [360, 640],
])('undo and the steps stay under the thumb, %i × %i', async (width, height) => {
  const { page } = await built.open(width, height, undefined, { hasTouch: true });
  await settled(page);
  const steps = await page
    .locator('[data-step]')
    .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.step!));
  expect(steps.length).toBe(7);
  for (const step of steps) {
    for (const share of [0, 0.5, 1]) {
      await page.locator(`[data-step="${step}"]`).tap();
      await page.evaluate((to) => scrollTo(0, to * document.documentElement.scrollHeight), share);
      const { hidden, leastPx, freePx, belowPx } = await reach(page);
      const where = `${step}, pushed to ${share}`;
      expect(hidden, where).toEqual([]);
      expect(leastPx, where).toBeGreaterThanOrEqual(44);
      // In Work the card comes first, and the panel below it.
      if (step !== 'work') expect(freePx, where).toBeGreaterThan(height / 4);
      expect(belowPx, where).toBeLessThan(12);
    }
  }
});

test.each([
  [390, 844],
  [360, 640],
])(
  'steps, undo and redo stand in two rows without a cut in every language, %i × %i',
  async (width, height) => {
    const { page } = await built.open(width, height, undefined, { hasTouch: true });
    await settled(page);
    for (const language of languages) {
      await page.locator('.tongue').selectOption(language);
      await page.locator(`html[lang="${language}"]`).waitFor();
      const found = await page.evaluate(() => {
        const boxes = Array.from(document.querySelectorAll('.reach button')).map((one) => {
          const range = document.createRange();
          range.selectNodeContents(one.querySelector('span')!);
          const { left, right } = range.getBoundingClientRect();
          return { name: one.textContent, word: [left, right], box: one.getBoundingClientRect() };
        });
        const steps = boxes.filter(({ name }) => name !== boxes[0].name && name !== boxes[1].name);
        const edge = Math.min(boxes[0].box.left, boxes[1].box.left);
        const way = document.querySelector('.way')!;
        return {
          cut: boxes.flatMap(({ name, word: [left, right], box }) =>
            left < box.left || right > box.right || left < 0 || right > innerWidth ? [name] : [],
          ),
          underUndo: steps.flatMap(({ name, box }) => (box.right > edge + 0.5 ? [name] : [])),
          slidesPx: way.scrollWidth - way.clientWidth,
          rows: new Set(steps.map(({ box }) => Math.round(box.top))).size,
          leastPx: Math.min(...boxes.flatMap(({ box }) => [box.width, box.height])),
        };
      });
      const { leastPx, ...rest } = found;
      expect(rest, language).toEqual({ cut: [], underUndo: [], slidesPx: 0, rows: 2 });
      expect(leastPx, language).toBeGreaterThanOrEqual(44);
    }
  },
  60_000,
);

test.each([720, 820, 1080])(
  'on a tablet all steps are in sight and nothing is pushed aside in any language, %i wide',
  async (width) => {
    const { page } = await built.open(width, 1180, undefined, { hasTouch: true });
    await settled(page);
    for (const language of languages) {
      await page.locator('.tongue').selectOption(language);
      await page.locator(`html[lang="${language}"]`).waitFor();
      const found = await page.evaluate(() => {
        const all = document.querySelectorAll<HTMLElement>('.table > .head button, .tongue');
        const outside = Array.from(all).filter((one) => {
          const { left, right } = one.getBoundingClientRect();
          return left < 0 || right > innerWidth;
        });
        const way = document.querySelector('.way')!;
        return {
          outside: outside.map((one) => one.innerText),
          slidesPx: way.scrollWidth - way.clientWidth,
        };
      });
      expect(found, language).toEqual({ outside: [], slidesPx: 0 });
    }
  },
  60_000,
);

test('nearer, farther and whole stay at the panel, however far the sheet has been pushed', async () => {
  const { page } = await built.open(390, 844, undefined, { hasTouch: true });
  await settled(page);
  for (const step of ['picture', 'panel', 'beads', 'brush', 'pages']) {
    await page.locator(`[data-step="${step}"]`).tap();
    for (const share of [0, 0.3, 0.6]) {
      await page.evaluate((to) => scrollTo(0, to * document.documentElement.scrollHeight), share);
      const found = await page.evaluate(() => {
        const ground = document.querySelector('.panel .ground')!.getBoundingClientRect();
        return ['nearer', 'farther', 'whole'].map((id) => {
          const one = document.querySelector<HTMLElement>(`[data-action="${id}"]`)!;
          const { left, right, top, bottom, width, height } = one.getBoundingClientRect();
          const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
          return {
            hit: one.contains(hit),
            onPanel: top >= ground.top && bottom <= ground.bottom && right <= innerWidth,
            large: Math.min(width, height) >= 44,
            named: one.innerText.trim() !== '',
          };
        });
      });
      const well = { hit: true, onPanel: true, large: true, named: true };
      expect(found, `${step}, pushed to ${share}`).toEqual([well, well, well]);
    }
  }
});

test('a step begins where its card does, however far the one before was pushed', async () => {
  const { page } = await built.open(390, 844, undefined, { hasTouch: true });
  await settled(page);
  for (const step of ['panel', 'beads', 'brush', 'purse', 'pages', 'work', 'picture']) {
    await page.evaluate('scrollTo(0, document.documentElement.scrollHeight)');
    await page.locator(`[data-step="${step}"]`).tap();
    await page.locator(`[data-step="${step}"][aria-current]`).waitFor();
    const seen = () =>
      page.evaluate(() => {
        const card = document.querySelector('.card')!.getBoundingClientRect();
        const hit = document.elementFromPoint(195, card.top + 8);
        return hit?.closest('.card') !== null && card.top >= 0;
      });
    await expect.poll(seen, { message: step }).toBe(true);
  }
});

test('what has the keyboard is not hidden under them', async () => {
  const { page } = await built.open(390, 844);
  await settled(page);
  await page.locator('[data-step="beads"]').click();
  await page.locator('.card').focus();
  const covered: string[] = [];
  for (let tabs = 0; tabs < 25; tabs++) {
    await page.keyboard.press('Tab');
    const over = await page.evaluate(() => {
      const at = document.activeElement as HTMLElement;
      if (!at.closest('.card')) return undefined;
      const { left, top, width, height } = at.getBoundingClientRect();
      const hit = document.elementFromPoint(left + width / 2, top + height / 2);
      return at.contains(hit) || hit?.contains(at) ? undefined : at.outerHTML.slice(0, 80);
    });
    if (over) covered.push(over);
  }
  expect(covered).toEqual([]);
});

test('with letters twice as large undo and the open step are still there', async () => {
  const large = await openBuiltPage({}, ['--blink-settings=defaultFontSize=32']);
  onTestFinished(() => large.close());
  const { page } = await large.open(390, 844);
  await settled(page);
  for (const step of ['picture', 'brush', 'purse', 'work']) {
    await page.locator(`[data-step="${step}"]`).click();
    await page.evaluate('scrollTo(0, document.documentElement.scrollHeight / 2)');
    const { hidden, leastPx, freePx, belowPx } = await reach(page);
    for (const one of ['Undo', 'Redo']) expect(hidden).not.toContain(one);
    const open = await page.locator('.way [aria-current]').innerText();
    expect(hidden).not.toContain(open);
    expect(leastPx).toBeGreaterThanOrEqual(44);
    if (step !== 'work') expect(freePx).toBeGreaterThan(844 / 4);
    expect(belowPx).toBeLessThan(16);
    // Nothing has to be pushed sideways (WCAG 2.2, 1.4.10).
    const slides = await page.evaluate(() =>
      Array.from(document.querySelectorAll('.panel .tools, .panel .looks, .way'))
        .filter((one) => one.scrollWidth > one.clientWidth)
        .map((one) => one.className),
    );
    expect(slides, step).toEqual([]);
  }
});

test('they keep clear of what the device keeps for itself at its lower edge', async () => {
  const { page } = await built.open(390, 844);
  await settled(page);
  const before = await reach(page);
  const devtools = await page.context().newCDPSession(page);
  // As on a phone without a home button (CSS Environment Variables Module Level 1, safe-area-inset-*).
  const insets = { top: 47, bottom: 34, left: 0, right: 0 };
  await devtools.send('Emulation.setSafeAreaInsetsOverride' as never, { insets } as never);
  await expect.poll(async () => (await reach(page)).belowPx - before.belowPx).toBe(34);
  await page.evaluate('scrollTo(0, 900)');
  const top = await page
    .locator('.panel .ground')
    .evaluate((one) => one.getBoundingClientRect().top);
  expect(top).toBe(47);
});
