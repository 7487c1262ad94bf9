import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { classPdf } from '../src/booklet/class-pdf.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { wordsIn } from '../src/words/index.js';
import { panelSheet } from './support/panel-sheet.js';
import { readPdf } from './support/read-pdf.js';

const languages = ['en-GB'] as const;
const facts = async () => ({
  ...(await wordsIn(languages)),
  languages,
  fonts: await fontsForPages('en-GB', []),
  edition: {},
  version: '1.2.3',
});
const practice = () => panelSheet({ wedges: 6, rounds: 4 }, 3, { title: 'Practice' }).pattern;
const large = () => panelSheet({ wedges: 7, rounds: 16 }, 5).pattern;
const textOf = (page: { texts: readonly { text: string }[] }) =>
  page.texts.map(({ text }) => text).join(' ');

test('every pupil gets the chart and the rounds of each pattern, with the name on every page', async () => {
  const names = ['Ines', 'Ōe Kaito', 'Łucja'];
  const patterns = [practice(), large()];
  const { bytes, pages } = await classPdf(await facts(), { patterns, names }, 'a4');
  if (process.env.KEEP_PAGES) writeFileSync(join(process.env.KEEP_PAGES, 'class.pdf'), bytes);
  const pdf = await readPdf(bytes);
  expect(pdf.pages.length).toBe(pages);
  // Pages of one pupil follow one another; blank ones only end a sheet.
  const whose = pdf.pages.map((page) => names.filter((name) => textOf(page).includes(name)));
  for (const own of whose) expect(own.length).toBeLessThanOrEqual(1);
  const order = whose.flat().filter((name, n, all) => name !== all[n - 1]);
  expect(order).toEqual(names);
  for (const name of names) {
    const own = pdf.pages.filter((_, n) => whose[n][0] === name).map(textOf);
    for (const pattern of patterns) {
      const of = own.filter((text) => text.includes(pattern.title));
      // A chart, and pages that name every round.
      expect(of.length).toBeGreaterThanOrEqual(2);
      const all = of.join(' ');
      for (let r = 1; r <= pattern.shape.rounds; r++) expect(all).toMatch(new RegExp(`R${r}\\b`));
    }
  }
  // Each pattern of each pupil begins on the front of a sheet: an odd page.
  const firsts = pdf.pages.flatMap((page, n) =>
    /work this way/.test(textOf(page)) ? [n + 1] : [],
  );
  expect(firsts.length).toBe(names.length * patterns.length);
  for (const page of firsts) expect(page % 2).toBe(1);
});

test('a pupil works a panel once: one box a round', async () => {
  const { bytes } = await classPdf(await facts(), { patterns: [practice()], names: [] }, 'a4');
  const { pages } = await readPdf(bytes);
  const before = pages.flatMap(({ texts, paths }) =>
    texts
      .filter(({ text }) => /^R\d+\s*$/.test(text))
      .map(
        ({ x, y }) =>
          paths.filter(({ kind, box: [left, top, right, bottom] }) => {
            const square = Math.abs(right - left - (bottom - top)) < 0.1 && right - left < 5;
            return (
              kind === 'stroke' && square && right < x && x - left < 12 && top < y && y < bottom + 1
            );
          }).length,
      ),
  );
  // Rounds that are worked have their box before them, those that are strung have it behind.
  expect(before.filter((boxes) => boxes === 1).length).toBe(4);
  expect(Math.max(...before)).toBe(1);
});

test('without names every pattern comes once; the same class gives the same bytes', async () => {
  const given = await facts();
  const patterns = [practice(), large()];
  const [one, other] = [
    await classPdf(given, { patterns, names: [] }, 'letter'),
    await classPdf(given, { patterns, names: [] }, 'letter'),
  ];
  expect(Buffer.from(one.bytes).equals(Buffer.from(other.bytes))).toBe(true);
  const pdf = await readPdf(one.bytes);
  // Letter is 8.5 × 11 inches.
  expect(pdf.pages[0].widthMm).toBeCloseTo(8.5 * 25.4, 3);
  expect(pdf.title).toBe('Practice, Barley moon');
  expect(pdf.pages.filter((page) => /work this way/.test(textOf(page))).length).toBe(2);
});
