import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { Page } from 'playwright-core';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import { stringPlans } from '../../src/core/work/stringing-steps.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { drop, saved } from '../support/page-acts.js';
import { keptWork } from '../support/kept-piece.js';
import { shownRun, tapOn, toWork } from '../support/work-acts.js';

// Stringing and crocheting beside the bead mat: what is shown is the list, and it stops where the maker stops.

vi.setConfig({ testTimeout: 300_000 });

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

/** The pattern on the table, out of the file of the piece. */
async function patternOf(page: Page) {
  await page.locator('[data-action="shelf"]').click();
  const { bytes } = await saved(page, 'save-piece');
  await page.locator('.shelf .head button').click();
  return parsePattern(Buffer.from(unzipSync(bytes)['pattern.json']).toString(), 'pattern.json');
}

test('beads are strung as the list says, run by run, and after a reload from the same bead on', async () => {
  const { page, strays, said } = await built.open(390, 844);
  await settled(page);
  const pattern = await patternOf(page);
  const [plan] = stringPlans(pattern, 0);
  await toWork(page, 'string');
  let thread = '';
  const on = async (steps: number) => {
    for (let n = 0; n < steps; n++) {
      const run = await shownRun(page);
      thread += run.letter.repeat(run.count);
      await tapOn(page);
    }
  };
  await on(30);
  await expect.poll(async () => (await keptWork(page))?.strung[0]).toBe(thread.length);
  await page.reload();
  await page.locator('.at-work.string').waitFor();
  await on(10);
  expect(thread).toBe(plan.beads.slice(0, thread.length));
  expect(thread.length).toBeGreaterThan(100);
  // Back takes the last run off again.
  const last = plan.steps.filter(({ to }) => to <= thread.length).at(-1)!;
  await page.locator('[data-action="work-back"]').click();
  const taken = { letter: last.letter, count: last.to - last.from };
  await expect.poll(() => shownRun(page)).toEqual(taken);
  expect(strays).toEqual([]);
  expect(said).toEqual([]);
});

test('what hands did is no step of the undo, and goes with the piece to another machine', async () => {
  const { page } = await built.open(390, 844);
  await settled(page);
  await page.locator('.title').fill('Harbour bird');
  await page.locator('.title').press('Tab');
  await toWork(page, 'crochet');
  for (let n = 0; n < 25; n++) await tapOn(page);
  const worked = (await keptWork(page))!.worked;
  expect(worked).toBeGreaterThan(25);
  await page.locator('[data-action="to-table"]').click();
  await page.locator('[data-action="undo"]').click();
  await expect.poll(() => page.locator('.title').inputValue()).toBe('Kingfisher');
  expect((await keptWork(page))!.worked).toBe(worked);
  await page.locator('[data-action="shelf"]').click();
  const { name, bytes } = await saved(page, 'save-piece');
  const { page: other } = await built.open(820, 1180);
  await settled(other);
  await drop(other, name, bytes, 'application/zip');
  await expect.poll(async () => (await keptWork(other))?.worked).toBe(worked);
  await toWork(other, 'crochet');
  expect(await other.locator('.counter b').innerText()).toMatch(/^Round \d+ of 22$/);
});

test('a colour that runs out is worked in another bead from a round on, and in no other', async () => {
  const { page } = await built.open();
  await settled(page);
  const before = await patternOf(page);
  const [{ id, letter }] = before.beads;
  await page.locator('[data-step="beads"]').click();
  await page.locator(`.mat [data-bead="${id}"]`).click();
  await page.locator('[data-runs-out-soon]').click();
  await page.locator('[data-out-from]').fill('15');
  await page.locator('[data-out-from]').press('Tab');
  const offered = page.locator('[data-take-instead]').first();
  const to = await offered.getAttribute('data-take-instead');
  await offered.click();
  await settled(page);
  const after = await patternOf(page);
  const instead = after.beads.find((bead) => bead.id === to)!.letter;
  const own = after.beads.find((bead) => bead.id === id)!.letter;
  const marks = (rounds: readonly string[]) => [...rounds.join('')];
  const [was, now] = [before, after].map(({ panels }) => panels[0].rounds);
  const idOf = (pattern: typeof before, mark: string) =>
    pattern.beads.find((bead) => bead.letter === mark)?.id;
  expect(marks(now.slice(0, 14)).map((mark) => idOf(after, mark))).toEqual(
    marks(was.slice(0, 14)).map((mark) => idOf(before, mark)),
  );
  expect(marks(was.slice(14))).toContain(letter);
  expect(marks(now.slice(14))).not.toContain(own);
  marks(was.slice(14)).forEach((mark, s) => {
    const wanted = mark === letter ? instead : undefined;
    const lies = marks(now.slice(14))[s];
    if (wanted) expect(lies).toBe(wanted);
    else expect(idOf(after, lies)).toBe(idOf(before, mark));
  });
  await page.locator('[data-action="undo"]').click();
  await settled(page);
  expect((await patternOf(page)).panels[0].rounds).toEqual(was);
});

test('keys do what taps do', async () => {
  const { page } = await built.open();
  await settled(page);
  const pattern = await patternOf(page);
  await toWork(page, 'string');
  const [first, second, third] = stringPlans(pattern, 0)[0].steps.map(({ letter, from, to }) => ({
    letter,
    count: to - from,
  }));
  const press = async (key: string, shows: typeof first) => {
    await page.keyboard.press(key);
    // The screen is drawn anew a moment after the key.
    await expect.poll(() => shownRun(page)).toEqual(shows);
  };
  expect(await shownRun(page)).toEqual(first);
  await press('Space', second);
  await press('Space', third);
  await press('ArrowLeft', second);
  await press('Backspace', first);
  await press('Enter', second);
  await press('ArrowRight', third);
  await page.keyboard.press('Escape');
  expect(await page.locator('.at-work').count()).toBe(0);
});

test('once the front is done, the back is the next tap, and after both nothing is left to go on to', async () => {
  const { page, said } = await built.open(390, 844);
  await settled(page);
  await page.locator('[data-step="panel"]').click();
  const rounds = page.locator('.card input[type="number"]').first();
  await rounds.fill('4');
  await rounds.press('Tab');
  await page.locator('[data-step="purse"]').click();
  await page.locator('[data-action="back-same"]').click();
  await settled(page);
  const header = () => page.locator('.at-work .where').innerText();
  const toTheEnd = async (selector: string) => {
    const more = page.locator(`.at-work button.tap.${selector}`);
    while ((await more.count()) > 0) await more.click();
  };
  await toWork(page, 'string');
  expect(await header()).toBe('Front');
  expect(await page.locator('[data-next-panel]').count()).toBe(0);
  await toTheEnd('stringing');
  await page.locator('.tap.done [data-action="crochet"]').click();
  await page.locator('.at-work.crochet').waitFor();
  await toTheEnd('crocheting');
  const next = page.locator('.tap.done [data-next-panel]');
  expect(await next.innerText()).toBe('String: Back');
  await next.click();
  await page.locator('.at-work.string').waitFor();
  expect(await header()).toBe('Back');
  expect(await page.locator('.tap .sum').innerText()).toContain('0 of');
  await toTheEnd('stringing');
  await page.locator('.tap.done [data-action="crochet"]').click();
  await toTheEnd('crocheting');
  await page.locator('.tap.done').waitFor();
  expect(await page.locator('[data-next-panel]').count()).toBe(0);
  expect(said).toEqual([]);
});
