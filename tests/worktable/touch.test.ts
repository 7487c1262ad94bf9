import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import { stringPlans } from '../../src/core/work/stringing-steps.js';
import { lighthousePng } from '../support/pictures.js';
import { FingersAlone } from '../support/by-finger.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { picturesOf } from '../support/scene.js';
import { keptWork } from '../support/kept-piece.js';
import { shownRun } from '../support/work-acts.js';

// A whole job on a phone by touch alone: from a picture to the beads that are worked, with the page closed in between.
// KEEP_SCREENS=FOLDER keeps pictures of it.

let built: OpenPage;
let png: Buffer;
beforeAll(async () => {
  built = await openBuiltPage();
  png = await lighthousePng(400);
});
afterAll(() => built?.close());

const phone = { hasTouch: true, isMobile: true, deviceScaleFactor: 2 };
const step = (name: string) => `[data-step="${name}"]`;
const act = (name: string) => `[data-action="${name}"]`;

const sliderOf = (name: string) => `.card input[type="range"][aria-label="${name}"]`;

/** Pulls a slider's knob by a share of its length. */
async function slide(finger: FingersAlone, name: string, by: number): Promise<void> {
  const { at, size } = await finger.inSight(sliderOf(name));
  const { value, least, most } = await finger.page
    .locator(sliderOf(name))
    .evaluate((one: HTMLInputElement) => ({
      value: one.valueAsNumber,
      least: Number(one.min),
      most: Number(one.max),
    }));
  // The middle of the knob stays its half inside the ends: 12 pixels, more or less.
  const long = size[0] - 24;
  const x = at[0] - long / 2 + (long * (value - least)) / (most - least);
  await finger.push([x, at[1]], by * long, 0);
}

test('a whole job on a phone by touch alone, the page closed in the middle of the work', async () => {
  const picture = picturesOf('touch');
  const { page, strays, said } = await built.open(390, 844, undefined, phone);
  const finger = await FingersAlone.on(page);
  await settled(page);
  await picture(page, 'open');

  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    finger.tap(`.card ${act('open')}`),
  ]);
  await chooser.setFiles({ name: 'tower.png', mimeType: 'image/png', buffer: png });
  await expect.poll(() => page.locator('.title').inputValue()).toBe('tower');
  await settled(page);
  // One finger moves the picture, two make it larger.
  const { at: middle } = await finger.inSight('.panel canvas');
  const [x, y] = middle;
  await finger.push([x, y], 30, 18);
  const across = page.getByRole('spinbutton', { name: 'To the right' });
  await expect.poll(async () => Number(await across.inputValue())).toBeGreaterThan(2);
  const apart = (px: number) => [[x - px, y] as const, [x + px, y] as const];
  await finger.pull(Array.from({ length: 9 }, (_, n) => apart(40 + 3 * n)));
  const size = page.getByRole('spinbutton', { name: 'Size', exact: true });
  await expect.poll(async () => Number(await size.inputValue())).toBeGreaterThan(115);
  await settled(page);
  await picture(page, 'picture');

  await finger.tap(step('panel'));
  const rounds = page.getByRole('spinbutton', { name: 'Rounds' });
  const before = Number(await rounds.inputValue());
  await slide(finger, 'Rounds', -0.15);
  await expect.poll(async () => Number(await rounds.inputValue())).toBeLessThan(before - 3);
  await settled(page);
  await picture(page, 'panel');

  await finger.tap(step('beads'));
  await slide(finger, 'Bead colours', -0.12);
  await expect.poll(() => page.locator('.mat [data-bead]').count()).toBeLessThan(8);
  await settled(page);
  await picture(page, 'beads');

  // A finger that scrolls past a slider leaves it where it was.
  const chosen = page.getByRole('spinbutton', { name: 'Bead colours' });
  const wished = await chosen.inputValue();
  const { at: over, size: long } = await finger.inSight(sliderOf('Bead colours'));
  await finger.push([over[0] + 0.4 * long[0], over[1]], 0, -140);
  await settled(page);
  expect(await chosen.inputValue()).toBe(wished);

  // Brush: a bead is taken up, a stroke, once more in every wedge, and back.
  await finger.tap(step('brush'));
  const heap = page.locator('.mat [data-bead]').nth(3);
  const bead = (await heap.getAttribute('data-bead'))!;
  await finger.tap(`.card [data-take="${bead}"]`);
  const many = async () =>
    Number((await page.locator(`[data-bead="${bead}"] .count`).innerText()).replace(/\D/g, ''));
  const lay = async () => {
    const { at } = await finger.inSight('.panel canvas');
    await finger.push([at[0] - 70, at[1] - 50], 140, 0);
  };
  const first = await many();
  await lay();
  await expect.poll(many).toBeGreaterThan(first + 4);
  await settled(page);
  const once = await many();
  await picture(page, 'brush');
  await finger.tap(act('every-wedge'));
  await lay();
  await expect.poll(many).toBeGreaterThan(once + 8);
  await finger.tap(act('undo'));
  await expect.poll(many).toBe(once);
  await settled(page);

  await finger.tap(step('purse'));
  await finger.tap(act('frame-half-round'));
  await page.locator('.card .facts').waitFor();
  await settled(page);
  await picture(page, 'purse');

  await finger.tap(step('pages'));
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 90_000 }),
    finger.tap(act('zip')),
  ]);
  const files = unzipSync(readFileSync(await download.path()));
  const pattern = parsePattern(Buffer.from(files['pattern.json']).toString(), 'pattern.json');
  expect([pattern.title, pattern.frame?.kind]).toEqual(['tower', 'half-round']);
  expect(pattern.beads.map(({ id }) => id)).toContain(bead);
  await page.locator('.told .note').waitFor();
  await picture(page, 'pages');

  await finger.tap(step('work'));
  await picture(page, 'work');
  await finger.tap(`.card ${act('string')}`);
  await page.locator('.at-work.string').waitFor();
  const plan = stringPlans(pattern, 0)[0].steps;
  const shows = (on: Page, n: number) =>
    expect
      .poll(() => shownRun(on))
      .toEqual({ letter: plan[n].letter, count: plan[n].to - plan[n].from });
  for (let n = 0; n < 4; n++) {
    await shows(page, n);
    await finger.tap('.at-work button.tap');
  }
  await shows(page, 4);
  await finger.tap(act('work-back'));
  await shows(page, 3);
  await picture(page, 'string');
  await finger.tap(`.at-work footer ${act('crochet')}`);
  await page.locator('.at-work.crochet').waitFor();
  const counter = (on: Page) => on.locator('.counter').innerText();
  let worked = 0;
  for (let n = 0; n < 3; n++) {
    const now = await counter(page);
    worked += (await page.locator('.tap.crocheting').getAttribute('data-stitches'))!.length;
    await finger.tap('.at-work button.tap');
    await expect.poll(() => counter(page)).not.toBe(now);
  }
  const stopped = await counter(page);
  await picture(page, 'crochet');
  await expect.poll(async () => (await keptWork(page))?.worked).toBe(worked);

  // Closed, and opened another day.
  const { page: again } = await built.openBeside(page);
  await page.close();
  const other = await FingersAlone.on(again);
  await again.locator('.at-work.crochet').waitFor();
  expect(await counter(again)).toBe(stopped);
  await other.tap('.at-work button.tap');
  await expect.poll(() => counter(again)).not.toBe(stopped);
  await other.tap(act('to-table'));
  await settled(again);
  expect(await again.locator('.title').inputValue()).toBe('tower');
  await other.tap(`.card ${act('string')}`);
  await shows(again, 3);
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});
