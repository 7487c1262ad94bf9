import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parsePattern } from '../../src/core/pattern/read/parse.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { panelLengths } from '../../src/core/thread/lengths.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { saved, savedPages } from '../support/page-acts.js';
import { readPdf } from '../support/read-pdf.js';
import { keptWork } from '../support/kept-piece.js';
import { tapOn, toWork } from '../support/work-acts.js';

// What stands beside the work: notes on stitches, time and cost, a bead that runs out in one panel of two or in
// both, and a piece to practise on.

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

const act = (page: Page, id: string) => page.locator(`[data-action="${id}"]`).first();
async function zipped(
  page: Page,
): Promise<{ pattern: Pattern; files: Record<string, Uint8Array> }> {
  const { bytes } = await savedPages(page, 'zip');
  const files = unzipSync(bytes);
  return { files, pattern: parsePattern(Buffer.from(files['pattern.json']).toString(), 'p') };
}
const idsOf = ({ beads, panels }: Pattern, panel: number) =>
  [...panels[panel].rounds.join('')].map((mark) => beads.find(({ letter }) => letter === mark)?.id);

test('a note is pinned to a stitch, read where it comes, and is there after the page was opened anew', async () => {
  const { page, said } = await built.open(390, 844);
  await settled(page);
  await toWork(page, 'crochet');
  await act(page, 'pace-stitch').click();
  for (let n = 0; n < 9; n++) {
    await tapOn(page);
    await expect.poll(async () => (await keptWork(page))?.worked).toBe(n + 1);
  }
  await act(page, 'pin-note').click();
  const field = page.locator('[data-note]');
  expect(await field.getAttribute('data-note')).toBe('9');
  await field.fill('  the tide mark begins here ');
  await field.press('Tab');
  await page.locator('[data-noted="9"]').waitFor();
  await page.reload();
  await page.locator('.at-work.crochet').waitFor();
  await act(page, 'to-table').click();
  await settled(page);
  // Round 1 has seven stitches: the tenth is the third of round 2.
  const line = await page.locator('.card [data-noted="9"]').innerText();
  expect(line).toMatch(/round 2\D+3/i);
  expect(line).toContain('the tide mark begins here');
  await page.locator('.card [data-noted="9"] button').click();
  expect(await page.locator('.card [data-noted]').count()).toBe(0);
  expect(said).toEqual([]);
});

test('time is counted while hands work and no longer, and its worth by the hour is in the cost', async () => {
  const { page, said } = await built.open(1280, 900, (context) => context.clock.install());
  await settled(page);
  await page.locator('[data-step="work"]').click();
  await page.locator('.time-cost summary').click();
  await act(page, 'count-time').click();
  await toWork(page, 'crochet');
  await tapOn(page);
  // Twenty stitches, one each half minute; then a pause over lunch.
  for (let n = 0; n < 20; n++) {
    await page.clock.fastForward(30_000);
    await tapOn(page);
  }
  await page.clock.fastForward(3_600_000);
  await tapOn(page);
  await act(page, 'to-table').click();
  const seconds = Number(await page.locator('[data-time]').getAttribute('data-time'));
  expect(seconds).toBeGreaterThanOrEqual(600);
  expect(seconds).toBeLessThan(640);
  await page.locator('.time-cost summary').click();
  await page.locator('.time-cost input').fill('18');
  await page.locator('.time-cost input').press('Tab');
  const cost = async () => Number(await page.locator('[data-cost]').innerText());
  // The sample's beads and thread have no price: ten minutes of 18 an hour are 3.
  await expect.poll(cost).toBeCloseTo((seconds / 3600) * 18, 1);
  expect(said).toEqual([]);
});

test.each([
  ['one panel', '1', [false, true]],
  ['both panels', '', [true, true]],
] as const)(
  'a bead that runs out gives way in %s, and the lists follow',
  async (_, where, gone) => {
    const { page, said } = await built.open();
    await settled(page);
    await page.locator('[data-step="purse"]').click();
    await act(page, 'back-same').click();
    await settled(page);
    const { pattern: before } = await zipped(page);
    const [{ id }] = before.beads;
    await page.locator('[data-step="work"]').click();
    await page.locator('.out-of-bead summary').click();
    await page.locator(`[data-runs-out="${before.beads[0].letter}"]`).click();
    await page.locator('[data-out-from]').fill('15');
    await page.locator('[data-out-from]').press('Tab');
    await page.locator('[data-out-panel]').selectOption(where);
    const offered = page.locator('[data-take-instead]').first();
    const to = await offered.getAttribute('data-take-instead');
    await offered.click();
    await settled(page);
    const { pattern: after, files } = await zipped(page);
    const first = 7 * ((14 * 15) / 2);
    for (const panel of [0, 1]) {
      const [was, now] = [idsOf(before, panel), idsOf(after, panel)];
      const wanted = was.map((one, s) => (gone[panel] && s >= first && one === id ? to : one));
      expect(now).toEqual(wanted);
    }
    // The list to string: as many of it as the panels have.
    const letter = after.beads.find((bead) => bead.id === to)!.letter;
    const count = [0, 1].map((panel) => idsOf(after, panel).filter((one) => one === to).length);
    const lists = ['stringing.csv', 'back-stringing.csv'].map((name) =>
      Buffer.from(files[name]).toString(),
    );
    lists.forEach((list, panel) => {
      const [head, ...lines] = list
        .trim()
        .split(/\r?\n/)
        .map((line) => line.split(','));
      const [at, many] = ['letter', 'count'].map((name) => head.indexOf(name));
      const strung = lines
        .filter((line) => line[at] === letter)
        .reduce((sum, line) => sum + Number(line[many]), 0);
      expect(strung).toBe(count[panel]);
    });
    expect(said).toEqual([]);
  },
);

test('beads that are strung or worked already stay, whatever runs out', async () => {
  const { page, said } = await built.open();
  await settled(page);
  const { pattern: before } = await zipped(page);
  await toWork(page, 'string');
  for (let n = 0; n < 4; n++) {
    const run = await page.locator('.at-work .run').innerText();
    await tapOn(page);
    await expect.poll(() => page.locator('.at-work .run').innerText()).not.toBe(run);
  }
  const [strung] = (await keptWork(page))!.strung;
  await act(page, 'crochet').click();
  // Crocheting says that the length is not on the thread; by a printed list it may be all the same.
  await page.locator('.not-strung').waitFor();
  await act(page, 'to-table').click();
  await page.locator('.out-of-bead summary').click();
  const [{ id, letter }] = before.beads;
  await page.locator(`[data-runs-out="${letter}"]`).click();
  expect(await page.locator('[data-out-from]').inputValue()).toBe('1');
  const offered = page.locator('[data-take-instead]').first();
  const to = await offered.getAttribute('data-take-instead');
  await offered.click();
  await settled(page);
  const { pattern: after } = await zipped(page);
  const [{ toStitch }] = panelLengths(before, 0);
  const [was, now] = [idsOf(before, 0), idsOf(after, 0)];
  const wanted = was.map((one, s) =>
    one === id && (s < toStitch - strung || s >= toStitch) ? to : one,
  );
  expect(now).toEqual(wanted);
  await toWork(page, 'crochet');
  await page.locator('[data-strung-by-list]').click();
  await page.locator('.not-strung').waitFor({ state: 'detached' });
  expect(said).toEqual([]);
});

test('a piece to practise on has four rounds in the maker’s own stitch, its own work and its own pages', async () => {
  const { page, said } = await built.open(390, 844);
  await settled(page);
  await page.locator('.title').fill('Halcyon');
  await page.locator('.title').press('Tab');
  await page.locator('main[data-kept="kept"]').waitFor();
  await page.locator('[data-step="work"]').click();
  await act(page, 'practice-piece').click();
  await settled(page);
  await toWork(page, 'string');
  await act(page, 'to-table').click();
  const { pattern } = await zipped(page);
  expect([pattern.shape.wedges, pattern.shape.rounds, pattern.beads.length]).toEqual([7, 4, 3]);
  const { bytes } = await saved(page, 'booklet');
  const pdf = await readPdf(bytes);
  expect(pdf.pages.length).toBeGreaterThan(2);
  const words = pdf.pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
  expect(words).toContain(pattern.title);
  // The piece before it is on the shelf.
  await act(page, 'shelf').click();
  await expect.poll(() => page.locator('.shelf').innerText()).toContain('Halcyon');
  expect(said).toEqual([]);
});
