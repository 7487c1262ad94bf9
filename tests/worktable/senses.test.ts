import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { Page } from 'playwright-core';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { putSenses } from '../support/senses.js';
import type { Senses, SensesWish } from '../support/senses.js';
import { shownRun, tapOn, toWork } from '../support/work-acts.js';

// The screen stays awake, steps are read aloud and words are listened to: against stand-ins that follow the Screen
// Wake Lock API (W3C), the Web Speech API (W3C) and Page Visibility (HTML, 6.2).

vi.setConfig({ testTimeout: 120_000 });

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

const senses = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { senses: Senses }).senses);
const hide = (page: Page, now: boolean) =>
  page.evaluate(
    (hidden) => (globalThis as unknown as { hide(now: boolean): void }).hide(hidden),
    now,
  );
const say = (page: Page, words: string) =>
  page.evaluate((one) => (globalThis as unknown as { say(words: string): void }).say(one), words);
const act = (page: Page, id: string) => page.locator(`[data-action="${id}"]`).first();
const held = async (page: Page) =>
  (await senses(page)).locks.map(({ released }) => (released ? 'released' : 'held'));

async function open(wish: SensesWish, language?: string) {
  const opened = await built.open(390, 844, (context) => context.addInitScript(putSenses, wish));
  const { page } = opened;
  await settled(page);
  if (language) {
    await page.locator('.tongue').selectOption(language);
    await page.locator(`html[lang="${language}"]`).waitFor();
  }
  return opened;
}

const voices = [
  { lang: 'en-US', name: 'far', localService: false },
  { lang: 'en-US', name: 'over the sea', localService: true },
  { lang: 'en-GB', name: 'at home', localService: true },
  { lang: 'de_DE', name: 'zu Hause', localService: true },
  { lang: 'zh-HK', name: 'harbour', localService: true },
  { lang: 'zh-CN', name: 'mainland', localService: true },
];

test('the screen is kept awake at the work alone, and asked for anew after the page was hidden', async () => {
  const { page, said } = await open({ voices });
  expect(await held(page)).toEqual([]);
  await toWork(page, 'string');
  await expect.poll(() => held(page)).toEqual(['held']);
  // The browser lets go of it when the page is hidden; nothing is asked while it is.
  await hide(page, true);
  await expect.poll(() => held(page)).toEqual(['released']);
  await hide(page, false);
  await expect.poll(() => held(page)).toEqual(['released', 'held']);
  // Being seen again while it is held asks for no second one.
  await hide(page, false);
  await page.waitForTimeout(200);
  expect(await held(page)).toEqual(['released', 'held']);
  await act(page, 'to-table').click();
  await settled(page);
  await expect.poll(() => held(page)).toEqual(['released', 'released']);
  await hide(page, true);
  await hide(page, false);
  await page.waitForTimeout(200);
  const { locks, refused } = await senses(page);
  expect([locks.length, refused]).toEqual([2, 0]);
  expect(said).toEqual([]);
});

test('somebody who leaves the work at once and comes back holds one lock, not two', async () => {
  const { page } = await open({ voices, lockMs: 400 });
  await toWork(page, 'string');
  await page.evaluate(async () => {
    document.querySelector<HTMLElement>('[data-action="to-table"]')!.click();
    await new Promise((done) => setTimeout(done));
    document.querySelector<HTMLElement>('[data-action="string"]')?.click();
  });
  await page.waitForTimeout(1200);
  expect((await held(page)).filter((one) => one === 'held').length).toBe(1);
});

test('a screen that may not be kept awake is no trouble, and is asked again', async () => {
  const { page, said } = await open({ voices, refuseLock: true });
  await toWork(page, 'string');
  await expect.poll(async () => (await senses(page)).refused).toBe(1);
  await tapOn(page);
  await hide(page, true);
  await hide(page, false);
  await expect.poll(async () => (await senses(page)).refused).toBe(2);
  expect(said).toEqual([]);
});

test('what a browser has not is not shown, and the card says why', async () => {
  const { page, said } = await open({ without: ['wakeLock', 'speech', 'recognition'] });
  await page.locator('[data-step="work"]').click();
  const card = await page.locator('.card').innerText();
  expect(card).toContain('cannot keep the screen awake');
  expect(card).toContain('cannot read aloud');
  expect(card).toContain('cannot listen');
  await toWork(page, 'string');
  expect(await page.locator('.senses button').count()).toBe(0);
  await tapOn(page);
  await act(page, 'to-table').click();
  await settled(page);
  expect(said).toEqual([]);
  const all = await open({ voices });
  await all.page.locator('[data-step="work"]').click();
  expect(await all.page.locator('.card').innerText()).not.toContain('cannot');
});

test('steps are read aloud as they come, the one at hand first, tens of one run each', async () => {
  const { page, said } = await open({ voices });
  await toWork(page, 'string');
  const spoken = async () => (await senses(page)).spoken;
  await tapOn(page);
  expect(await spoken()).toEqual([]);
  const steps: string[] = [];
  const note = async () => {
    const { count, letter } = await shownRun(page);
    steps.push(`${count} ${letter}`);
  };
  await act(page, 'read-aloud').click();
  await note();
  for (let n = 0; n < 12; n++) {
    await tapOn(page);
    await note();
  }
  // The sample begins with long runs: the same ten beads are told more than once.
  expect(new Set(steps).size).toBeLessThan(steps.length);
  await expect.poll(async () => (await spoken()).length).toBe(steps.length);
  const all = await spoken();
  expect(all.map(({ text }) => text.split('.')[0])).toEqual(steps);
  // In the language of the page, by a voice of its country that speaks without a network.
  expect(new Set(all.map(({ lang, voice }) => `${lang} ${voice}`))).toEqual(
    new Set(['en-GB at home']),
  );
  const { cancelled } = await senses(page);
  await act(page, 'to-table').click();
  await settled(page);
  expect((await senses(page)).cancelled).toBeGreaterThan(cancelled);
  expect(said).toEqual([]);
});

test.each([
  ['de', 'de_DE zu Hause'],
  ['zh', 'zh-CN mainland'],
])('the voice speaks the language of the page: %s', async (language, voice) => {
  const { page } = await open({ voices }, language);
  await toWork(page, 'string');
  await act(page, 'read-aloud').click();
  await expect.poll(async () => (await senses(page)).spoken.length).toBe(1);
  const [one] = (await senses(page)).spoken;
  expect(`${one.lang} ${one.voice}`).toBe(voice);
});

test('without a voice for the language nothing is read in a wrong one, and that is said', async () => {
  const { page } = await open({ voices }, 'ja');
  await toWork(page, 'string');
  await act(page, 'read-aloud').click();
  await expect.poll(() => page.locator('.at-work .note[role="alert"]').innerText()).toContain('声');
  expect((await senses(page)).spoken).toEqual([]);
  // A browser that has no voice at all says so only when it is to speak.
  const none = await open({});
  await toWork(none.page, 'string');
  await act(none.page, 'read-aloud').click();
  const note = none.page.locator('.at-work .note[role="alert"]');
  await expect.poll(() => note.innerText()).toContain('no voice');
  await act(none.page, 'read-aloud').click();
  await note.waitFor({ state: 'detached' });
});

test('a word leads on and another back; what is said to somebody else does not', async () => {
  const { page, said } = await open({ voices });
  await toWork(page, 'string');
  const first = await shownRun(page);
  const at = () => page.locator('.tap .sum').innerText();
  const begin = await at();
  await act(page, 'listen').click();
  await expect.poll(async () => (await senses(page)).ears.length).toBe(1);
  await say(page, ' Next.');
  await expect.poll(at).not.toBe(begin);
  const second = await at();
  // One result after the other is heard, each once.
  await say(page, 'yes');
  await expect.poll(at).not.toBe(second);
  await say(page, 'wrong');
  await expect.poll(at).toBe(second);
  for (const other of ['one', 'we are going on holiday next week', 'somebody backs out', ''])
    await say(page, other);
  await page.waitForTimeout(100);
  expect(await at()).toBe(second);
  await say(page, 'back');
  await expect.poll(at).toBe(begin);
  expect(await shownRun(page)).toEqual(first);
  expect(said).toEqual([]);
});

test('it listens in the language of the page, after a silence again, and not while the page is hidden', async () => {
  const { page } = await open({ voices }, 'de');
  await toWork(page, 'string');
  await act(page, 'listen').click();
  const ears = async () => (await senses(page)).ears.map(({ lang, on }) => `${lang} ${on}`);
  await expect.poll(ears).toEqual(['de true']);
  await page.evaluate(() => (globalThis as unknown as { silence(): void }).silence());
  await expect.poll(ears).toEqual(['de false', 'de true']);
  await hide(page, true);
  await expect.poll(ears).toEqual(['de false', 'de false']);
  await page.waitForTimeout(600);
  expect((await ears()).length).toBe(2);
  await hide(page, false);
  await expect.poll(ears).toEqual(['de false', 'de false', 'de true']);
  const at = () => page.locator('.tap .sum').innerText();
  const begin = await at();
  await say(page, 'weiter');
  await expect.poll(at).not.toBe(begin);
  await act(page, 'listen').click();
  await expect.poll(async () => (await ears()).at(-1)).toBe('de false');
});

test.each([
  ['available', true],
  ['downloadable', false],
  [undefined, false],
])('where the device itself can listen (%s) nothing leaves it', async (locally, on) => {
  const { page } = await open({ voices, ...(locally && { locally }) });
  await toWork(page, 'string');
  await act(page, 'listen').click();
  await expect.poll(async () => (await senses(page)).ears.length).toBe(1);
  expect((await senses(page)).ears[0].processLocally).toBe(on);
});

test.each(['not-allowed', 'network', 'language-not-supported'])(
  'a browser that may not listen says so, and stops: %s',
  async (deafBy) => {
    const { page } = await open({ voices, deafBy });
    await toWork(page, 'string');
    await act(page, 'listen').click();
    await page.locator('.at-work .note[role="alert"]').waitFor();
    expect(await act(page, 'listen').getAttribute('aria-pressed')).toBe('false');
    await page.waitForTimeout(600);
    expect((await senses(page)).ears.length).toBe(1);
  },
);
