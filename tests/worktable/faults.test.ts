import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { RondureError } from '../../src/core/errors.js';
import { languages } from '../../src/words/pages/languages.js';
import { english } from '../../src/words/worktable/faults/english.js';
import { loadFaults } from '../../src/words/worktable/faults/load.js';
import { faultSentence } from '../../src/worktable/fault-sentences.js';
import { openBuiltPage, settled } from '../support/open-page.js';
import type { OpenPage } from '../support/open-page.js';
import { drop } from '../support/page-acts.js';

// What is wrong is said in the language of the page. That each code has a sentence, and each sentence a language, the
// compiler sees to.

/** Facts that stand out in a sentence. */
const facts = new Proxy({}, { get: (_, key) => `<${String(key)}>` });
const spoken = (one: unknown): string =>
  typeof one === 'string' ? one : (one as (facts: object) => string)(facts);
const held = (sentence: string) => (sentence.match(/<\w+>/g) ?? []).sort();

test.each(languages)(
  'the sentences in %s hold the same facts as the English ones',
  async (language) => {
    const say = await loadFaults[language]();
    expect(Object.keys(say)).toEqual(Object.keys(english));
    for (const key of Object.keys(english) as (keyof typeof english)[]) {
      const own = spoken(say[key]);
      const usual = spoken(english[key]);
      expect([key, ...held(own)]).toEqual([key, ...held(usual)]);
      if (!language.startsWith('en')) expect(own, key).not.toBe(usual);
    }
  },
);

test('ends of a range are rounded inward', async () => {
  const error = new RondureError('across-out-of-reach', {
    gotMm: 5,
    leastMm: 7.61,
    mostMm: 380.49,
  });
  const sentence = faultSentence(await loadFaults.fr(), error)!;
  expect(sentence).toContain('7.7');
  expect(sentence).toContain('380.4');
});

let built: OpenPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built?.close());

const trouble = (page: Page) => page.locator('.told .trouble > span');
const icon = readFileSync(new URL('../../src/worktable/offline/icon-512.png', import.meta.url));

/** What the page cannot take, and the word of each language by which its sentence is known. */
const scenes: readonly [string, Buffer, string, Record<'de' | 'ja', string>][] = [
  ['cut.png', icon.subarray(0, 2000), 'image/png', { de: 'abgeschnitten', ja: '途中で' }],
  [
    'old.bmp',
    Buffer.from(`BM${'\0'.repeat(60)}`),
    'image/bmp',
    { de: 'kein Bild', ja: '読める絵' },
  ],
  ['nothing.png', Buffer.alloc(0), 'image/png', { de: 'leer', ja: '空です' }],
  [
    'pattern.json',
    Buffer.from('{"format":"else"}'),
    'application/json',
    { de: 'Muster', ja: '図案' },
  ],
];

test.each(['de', 'ja'] as const)(
  'a page in %s says what is wrong with a file',
  async (language) => {
    const { page } = await built.open(1280, 800, undefined, { locale: language });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await settled(page);
    expect(asked.filter((url) => url.includes('fault-sentences'))).toEqual([]);
    for (const [name, bytes, type, word] of scenes) {
      await drop(page, name, bytes, type);
      await trouble(page).filter({ hasText: name }).waitFor();
      expect(await trouble(page).innerText()).toContain(word[language]);
      await page.locator('.told .button').click();
    }
  },
);

test('a frame without room is said in the language of the page', async () => {
  const { page } = await built.open(1280, 800, undefined, { locale: 'it' });
  await settled(page);
  await page.locator('[data-step="purse"]').click();
  await page.locator('[data-action="frame-squared"]').first().click();
  await settled(page);
  await page.locator('.numbers input[type="number"]').first().fill('125');
  await trouble(page).waitFor();
  expect(await trouble(page).innerText()).toMatch(/La cerniera|pannello/);
});
