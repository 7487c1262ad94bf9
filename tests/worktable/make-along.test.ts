import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { chromium } from 'playwright-core';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import { panelLengths } from '../../src/core/thread/lengths.js';
import { lengthIndexAt } from '../../src/core/work/round-at-hand.js';
import { chromiumPath } from '../../tools/test-tools.js';
import { lighthousePng } from '../support/pictures.js';
import { chances, Maker } from '../support/maker.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { drop, saved } from '../support/page-acts.js';
import { toWork } from '../support/work-acts.js';

// A day in flight mode: a whole panel of 7 wedges and 20 rounds is strung and crocheted with the network off, across
// three restarts of the browser, by a maker who makes mistakes and loses the place. The finished panel is the pattern.

vi.setConfig({ testTimeout: 900_000 });

let built: OpenPage;
let folder: string;
beforeAll(async () => {
  built = await openBuiltPage();
  folder = mkdtempSync(join(tmpdir(), 'rondure-device-'));
});
afterAll(async () => {
  await built?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** The maker's phone: what it keeps outlives the browser. */
async function startPhone(): Promise<{ context: BrowserContext; page: Page }> {
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: chromiumPath()!,
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run'],
    viewport: { width: 390, height: 844 },
    locale: 'en-GB',
    hasTouch: true,
  });
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(built.address);
  return { context, page };
}

test('a panel made without a network, with mistakes and three restarts, is the pattern', async () => {
  const tower = await lighthousePng(400);
  let { context, page } = await startPhone();
  await settled(page);
  await drop(page, 'tower.png', tower, 'image/png');
  await expect.poll(() => page.locator('.title').inputValue()).toBe('tower');
  await settled(page);
  await page.locator('[data-action="shelf"]').click();
  const { bytes } = await saved(page, 'save-piece');
  await page.locator('.shelf .head button').click();
  const json = Buffer.from(unzipSync(bytes)['pattern.json']).toString();
  const pattern = parsePattern(json, 'pattern.json');
  expect([pattern.shape.wedges, pattern.shape.rounds]).toEqual([7, 20]);
  const marks = pattern.panels[0].rounds.join('');
  const lengths = panelLengths(pattern, 0);
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await built.goOffline();

  const letters = pattern.beads.map(({ letter }) => letter).join('');
  const maker = new Maker(page, letters, chances(11), 1);
  await toWork(page, 'string');
  for (const [n] of lengths.entries()) {
    // Every other length is read back; slips of the others are met at the hook.
    await maker.string(n % 2 === 1);
    const next = page.locator('[data-next-length]');
    if (n + 1 < lengths.length) await next.click();
  }
  await maker.act('crochet');
  await maker.act('pace-wedge');

  const restarts = [300, 700, 1100];
  let now = await maker.shown();
  while (now.done !== 'panel') {
    const worked = maker.cloth.length;
    if (worked >= (restarts[0] ?? Infinity)) {
      const length = lengthIndexAt(lengths, worked);
      const ahead = marks.slice(worked, Math.min(worked + 23, lengths[length].toStitch));
      const safe =
        now.coming.length >= 10 && maker.threads[length].endsWith([...ahead].reverse().join(''));
      if (safe) {
        restarts.shift();
        // On without the screen, which then goes dark: its place is an old one.
        maker.workStitches(length, ahead.slice(0, 11));
        await context.close();
        ({ context, page } = await startPhone());
        maker.page = page;
        await page.locator('.at-work.crochet').waitFor();
        expect((await maker.shown()).coming).not.toBe('');
        expect(await maker.find(length, worked)).toBe(worked + 11);
      }
    }
    now = await maker.work(lengthIndexAt(lengths, maker.cloth.length));
  }
  expect(restarts).toEqual([]);
  await maker.sewOn();
  expect(maker.cloth.join('')).toBe(marks);
  expect(maker.mistakes).toBeGreaterThan(8);
  expect(maker.found).toBeGreaterThan(8);
  // The piece itself is as it was.
  await maker.page.locator('[data-action="to-table"]').click();
  await settled(maker.page);
  await maker.page.locator('[data-action="shelf"]').click();
  const after = await saved(maker.page, 'save-piece');
  expect(Buffer.from(unzipSync(after.bytes)['pattern.json']).toString()).toBe(json);
  await context.close();
});
