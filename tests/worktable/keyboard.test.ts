import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { stringPlans } from '../../src/core/work/stringing-steps.js';
import { lighthousePng } from '../support/pictures.js';
import { KeysAlone } from '../support/by-keys.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { picturesOf } from '../support/scene.js';
import { keptWork } from '../support/kept-piece.js';
import { shownRun } from '../support/work-acts.js';

// A whole job without mouse and finger (WCAG 2.2, 2.1.1): from a picture to the beads that are worked, with the
// page closed in between. KEEP_SCREENS=FOLDER keeps pictures of it.

let built: OpenPage;
let png: Buffer;
beforeAll(async () => {
  built = await openBuiltPage();
  png = await lighthousePng(400);
});
afterAll(() => built?.close());

const title = (page: Page) => page.locator('.title').inputValue();
const heaps = (page: Page) => page.locator('.mat [data-bead]').count();

/** The pattern among the files that a key saves. */
async function savedBy(keys: KeysAlone, key: string): Promise<Pattern> {
  const [download] = await Promise.all([
    keys.page.waitForEvent('download', { timeout: 90_000 }),
    keys.press(key),
  ]);
  const files = unzipSync(readFileSync(await download.path()));
  return parsePattern(Buffer.from(files['pattern.json']).toString(), 'pattern.json');
}

/** Where the cell cursor is, as it is said. */
async function spoken(page: Page) {
  const said = await page.locator('.panel .lit').innerText();
  const [, round, stitch, letter] = said.match(/Round (\d+), stitch (\d+), wedge \d+: (\S)/)!;
  return { said, round: Number(round), stitch: Number(stitch), letter };
}

test('a whole job by keyboard alone, the page closed in the middle of the work', async () => {
  const picture = picturesOf('keyboard');
  const { page, strays, said } = await built.open();
  const keys = new KeysAlone(page);
  await settled(page);

  // Picture: the device's own window for files is opened by a key, even out of a field.
  await keys.press('Tab', 'Tab');
  await expect.poll(() => keys.on('.title')).toBe(true);
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), keys.press('Control+o')]);
  await chooser.setFiles({ name: 'tower.png', mimeType: 'image/png', buffer: png });
  await expect.poll(() => title(page)).toBe('tower');
  await settled(page);
  await keys.press('Tab', '1');
  await expect.poll(() => keys.on('.card')).toBe(true);
  await keys.press('ArrowLeft', 'ArrowLeft');
  const across = page.getByRole('spinbutton', { name: 'To the right' });
  await expect.poll(() => across.inputValue()).toBe('-2');
  // A slider keeps the arrows for itself, and moves nothing else.
  await keys.tabTo('.card input[type="range"]');
  const size = page.getByRole('spinbutton', { name: 'Size', exact: true });
  expect(await size.inputValue()).toBe('100');
  await keys.press('ArrowRight', 'ArrowRight', 'ArrowRight');
  await expect.poll(() => size.inputValue()).toBe('103');
  expect(await across.inputValue()).toBe('-2');
  await settled(page);
  await picture(page, 'picture');

  await keys.press('2');
  await keys.tabTo('.card input[type="number"]');
  await keys.typeOver('12');
  await keys.press('Enter');
  await expect.poll(() => page.locator('.panel .size').innerText()).toContain('12 rounds');
  await settled(page);
  await picture(page, 'panel');

  await keys.press('Tab', '3');
  await keys.tabTo('.card input[type="number"]');
  await keys.typeOver('5');
  await keys.press('Enter');
  await expect.poll(() => heaps(page)).toBe(5);
  await settled(page);
  await picture(page, 'beads');

  // Brush: the arrows take the keyboard to the panel, where Space lays a bead and presses no button again.
  await keys.press('Tab', '4', '.', '.');
  const held = await page.locator('.in-hand b').innerText();
  await keys.press('ArrowRight', ...Array<string>(8).fill('ArrowUp'), 'Space');
  await expect.poll(() => keys.on('.panel .ground')).toBe(true);
  await expect.poll(async () => (await spoken(page)).said).toMatch(/by hand$/);
  const first = await spoken(page);
  expect(held.startsWith(first.letter)).toBe(true);
  await keys.press(...Array<string>(6).fill('Shift+ArrowRight'));
  await expect.poll(() => page.locator('.laid p').first().innerText()).toBe('Stitches: 6.');
  await keys.press('Control+z');
  await expect.poll(() => page.locator('.laid p').first().innerText()).toBe('Stitches: 5.');
  await keys.press('Control+y');
  await expect.poll(() => page.locator('.laid p').first().innerText()).toBe('Stitches: 6.');
  await settled(page);
  expect(await keys.ring()).toEqual({ width: 3, style: 'solid', inSight: true });
  await picture(page, 'brush');

  await keys.press('5');
  await keys.tabTo('[data-action="frame-half-round"]');
  await keys.press('Space');
  await page.locator('.card .facts').waitFor();
  await settled(page);
  await picture(page, 'purse');

  await keys.press('6');
  await keys.tabTo('[data-action="zip"]', 10);
  const pattern = await savedBy(keys, 'Enter');
  expect(pattern.title).toBe('tower');
  expect(pattern.shape.rounds).toBe(12);
  expect(pattern.frame?.kind).toBe('half-round');
  const row = pattern.panels[0].rounds[first.round - 1];
  const six = row.slice(first.stitch - 1, first.stitch + 5);
  const name = held.slice(2);
  const mark = pattern.beads.find((bead) => bead.name === name)!.letter;
  expect(six).toBe(mark.repeat(6));
  // The button that was busy has not lost the keyboard.
  await page.locator('.told .note').waitFor();
  await expect.poll(() => keys.on('[data-action="zip"]')).toBe(true);
  await picture(page, 'pages');

  // Work.
  await keys.press('7');
  await expect.poll(() => keys.on('.card')).toBe(true);
  await keys.tabTo('[data-action="string"]', 10);
  await keys.press('Enter');
  await page.locator('.at-work.string').waitFor();
  const plan = stringPlans(pattern, 0)[0].steps;
  const shows = (n: number) =>
    expect
      .poll(() => shownRun(keys.page))
      .toEqual({ letter: plan[n].letter, count: plan[n].to - plan[n].from });
  await shows(0);
  for (let n = 1; n <= 4; n++) {
    await keys.press('Space');
    await shows(n);
  }
  await keys.press('Backspace');
  await shows(3);
  // Keys of the table do nothing behind this screen.
  await keys.press('Control+z', 'v', '1');
  await picture(page, 'string');
  await expect.poll(async () => (await keptWork(page))?.strung[0]).toBe(plan[3].from);

  // Closed, and opened another day.
  const { page: again } = await built.openBeside(page);
  await page.close();
  keys.page = again;
  await again.locator('.at-work.string').waitFor();
  await shows(3);
  await keys.press('Space');
  await shows(4);
  await keys.press('Escape');
  await settled(again);
  await expect.poll(() => keys.on('.card [data-action="string"]')).toBe(true);
  await keys.press('Tab');
  await expect.poll(() => keys.on('.card [data-action="crochet"]')).toBe(true);
  await keys.press('Enter');
  await again.locator('.at-work.crochet').waitFor();
  const counter = () => again.locator('.counter span').innerText();
  const begin = await counter();
  await keys.press('Space', 'Space');
  await expect.poll(counter).not.toBe(begin);
  await picture(again, 'crochet');
  // A sheet over the work takes the keyboard and gives it back.
  await keys.tabTo('[data-action="where-am-i"]', 12);
  await keys.press('Enter');
  await again.locator('.help-sheet').waitFor();
  await expect.poll(() => keys.on('.help-sheet')).toBe(true);
  await keys.press('Escape');
  await again.locator('.help-sheet').waitFor({ state: 'detached' });
  await expect.poll(() => keys.on('.at-work button.tap')).toBe(true);
  await keys.press('Escape');
  await settled(again);
  await expect.poll(() => keys.on('.card [data-action="crochet"]')).toBe(true);
  const rounds = again.locator('.panel .size');
  expect(await rounds.innerText()).toContain('12 rounds');

  // The shelf, and the list of keys, lie over the table and go again.
  for (const [key, over] of [
    ['s', '.shelf'],
    ['?', '.help'],
  ]) {
    await keys.press(key);
    await again.locator(over).waitFor();
    await picture(again, over.slice(1));
    await keys.press('Escape');
    await again.locator(over).waitFor({ state: 'detached' });
    await expect.poll(() => keys.on('.card [data-action="crochet"]')).toBe(true);
  }
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});

test('no key of a step is taken by the whole table', async () => {
  const { page } = await built.open();
  await settled(page);
  await page.keyboard.press('?');
  const groups = await page.locator('.help dl').evaluateAll((all) =>
    all.map((one) => ({
      name: one.querySelector('.group')!.textContent,
      keys: Array.from(one.querySelectorAll('dd kbd'), (key) => key.textContent),
    })),
  );
  const [table, ...steps] = groups;
  expect(table.keys.length).toBeGreaterThan(15);
  expect(steps.map(({ name }) => name)).toContain('Brush');
  for (const { name, keys } of steps)
    for (const key of keys) expect(table.keys, `${name}: ${key}`).not.toContain(key);
});
