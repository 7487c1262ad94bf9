import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { beadCounts, beadsInWorkingOrder } from '../src/core/pattern/stitches.js';
import { patternText } from '../src/core/pattern/serialise.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { inkOf } from './support/ink.js';
import { panelSheet } from './support/panel-sheet.js';
import type { ReadPage } from './support/read-pdf.js';
import { inProcess } from './support/run.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-booklet-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const longTitle = 'A very long title of a panel with 200 letters '.repeat(5).slice(0, 199) + 'W';
const twoPanels = (pattern: Pattern): Pattern => {
  const [front] = pattern.panels;
  const turned = front.rounds.map((marks) => Array.from(marks).reverse().join(''));
  return { ...pattern, panels: [front, { ...front, name: 'back', rounds: turned }] };
};
const withLongNames = (pattern: Pattern): Pattern => ({
  ...pattern,
  title: `${'W'.repeat(120)}\n${'Ы'.repeat(79)}`,
  beads: pattern.beads.map((bead) => ({ ...bead, id: 'Щ'.repeat(200), name: 'Ж'.repeat(200) })),
  panels: pattern.panels.map((panel) => ({ ...panel, name: 'перёд' })),
});
const sizes: [name: string, pattern: Pattern, paper: string][] = [
  ['3 rounds, 2 colours', panelSheet({ wedges: 6, rounds: 3 }, 2).pattern, 'a4'],
  ['20 rounds', twoPanels(panelSheet({ wedges: 7, rounds: 20 }, 8).pattern), 'letter'],
  [
    '60 rounds, 24 colours, a long title',
    panelSheet({ wedges: 6, rounds: 60 }, 24, { title: longTitle }).pattern,
    'a4',
  ],
  ['long names in Cyrillic', withLongNames(panelSheet({ wedges: 5, rounds: 8 }, 24).pattern), 'a4'],
];

async function bookletOf(name: string, pattern: Pattern, ...argv: string[]) {
  const from = join(folder, `${name}.json`);
  const file = join(folder, `${name}.pdf`);
  writeFileSync(from, patternText(pattern));
  const { code, err } = await inProcess('booklet', from, '-o', file, '--force', ...argv);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return readFileSync(file);
}

type Page = Omit<ReadPage, 'paths'>;

/** Sizes and texts of the pages alone; the charts have too many paths to look at them all. */
async function readTexts(bytes: Uint8Array) {
  const doc = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const mm = 25.4 / 72;
  const pages: Page[] = [];
  for (let n = 1; n <= doc.numPages; n++) {
    const page = await doc.getPage(n);
    const [, , right, top] = page.view;
    const texts = (await page.getTextContent()).items.flatMap((item) => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [x, y] = [item.transform[4] * mm, (top - item.transform[5]) * mm];
      return [{ text: item.str, x, y, widthMm: item.width * mm }];
    });
    pages.push({ widthMm: right * mm, heightMm: top * mm, texts });
  }
  const { info } = await doc.getMetadata();
  const { Title, Language } = info as { Title?: string; Language?: string };
  const contents = (await doc.getOutline()).map(({ title }) => title);
  await doc.destroy();
  return { pages, title: Title, language: Language, contents };
}

const footOf = ({ texts, heightMm }: Page) => texts.filter(({ y }) => y > heightMm - 9);
const where = (page: Page) =>
  footOf(page)
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');
const onPage = (page: Page, part: string) => where(page).includes(part);

/** The beads that the lists of one panel stand for, the last length first: as one string. */
function strungIn(pages: readonly Page[], panel: string, panels: number): string {
  const lengths: string[] = [];
  const named = panels === 1 ? 'String and work' : `String and work · ${panel} panel`;
  let stringing = false;
  for (const { text } of pages.filter((one) => onPage(one, named)).flatMap(({ texts }) => texts)) {
    if (/^String (length|the beads)/.test(text)) {
      lengths.push('');
      stringing = true;
    } else if (/^Work round/.test(text)) stringing = false;
    else if (stringing && /^[\dA-Z() x]+$/.test(text) && /\d[A-Z]|[()]/.test(text))
      lengths.push(`${lengths.pop()!} ${text}`);
  }
  const expanded = (text: string): string =>
    text
      .replace(/\(([^()]*)\) x (\d+)/g, (_, runs: string, n) => `${runs} `.repeat(Number(n)))
      .replace(/(\d+)([A-Z])/g, (_, n, letter: string) => letter.repeat(Number(n)))
      .replace(/ /g, '');
  return lengths.reverse().map(expanded).join('');
}

test.each(sizes)('%s: lists read back, pages are whole', async (name, pattern, paper) => {
  const bytes = await bookletOf(name, pattern, '--paper', paper, '--author', 'A. Maker');
  const { pages, title, language } = await readTexts(bytes);
  expect(title).toBe(pattern.title.replace('\n', ' '));
  expect(language).toBe('en-GB');
  // ISO 216 A4; Letter is 8.5 × 11 inches of 25.4 mm.
  const [wide, high] = paper === 'a4' ? [210, 297] : [8.5 * 25.4, 11 * 25.4];
  for (const [n, page] of pages.entries()) {
    expect(page.widthMm).toBeCloseTo(wide, 4);
    expect(page.heightMm).toBeCloseTo(high, 4);
    expect(where(page)).toMatch(new RegExp(` ${n + 1} of ${pages.length}$`));
    // A title that a foot has no room for is left out of it, never cut.
    expect(where(page)).not.toContain('…');
    if (pattern.title.length <= 20) expect(where(page).startsWith(pattern.title)).toBe(true);
    expect(apart(page)).toEqual([]);
  }
  for (const panel of pattern.panels) {
    const beads = Array.from(beadsInWorkingOrder(panel)).reverse().join('');
    expect(strungIn(pages, panel.name, pattern.panels.length)).toBe(beads);
  }
  // Materials stand before the part that follows them; the list of contents names it too.
  const after = pages.findIndex(
    ({ texts }, n) => n > 1 && texts.some(({ text }) => text.trim() === 'Before you start'),
  );
  const table = pages.slice(1, after + 1).flatMap(({ texts }) => texts);
  for (const [letter, count] of beadCounts(pattern)) {
    const at = table.findIndex(({ text, x }) => text === letter && x < 35);
    const row = table.filter(({ y, x }) => x > 100 && Math.abs(y - table[at].y) < 1.5);
    expect(row.map(({ text }) => text.replace(',', ''))).toContain(String(count));
  }
});

/**
 * Texts of a page that lie on one another or over its edge. Letters of a chart stand in their cells,
 * and a template on several sheets goes on beyond each of them.
 */
function apart(page: Page): string[] {
  const tiled = page.texts.some(({ text }) => /column \d of \d/.test(text));
  const chart = /[Cc]hart(, enlarged| as you see it)?( ·|$)/.test(
    where(page).replace(/ \d+ of \d+$/, ''),
  );
  const texts = tiled || chart ? footOf(page) : page.texts;
  const found: string[] = [];
  texts.forEach((one, n) => {
    if (one.x < 9.999 || one.x + one.widthMm > page.widthMm - 9.999) found.push(one.text);
    for (const other of texts.slice(n + 1)) {
      const beside = Math.min(one.x + one.widthMm, other.x + other.widthMm);
      const over = beside - Math.max(one.x, other.x) > 0.1;
      // Lines of the smallest letters, 10 points, stand at least 3 mm apart.
      if (over && Math.abs(one.y - other.y) < 3) found.push(`${one.text} / ${other.text}`);
    }
  });
  return found;
}

test('the same pattern gives the same bytes, with bookmarks and a cover in vectors', async () => {
  const { pattern } = panelSheet({ wedges: 7, rounds: 9 }, 4);
  const argv = ['--date', '2026-03-14', '--licence', 'Sell what you make.'];
  const [one, two] = [
    await bookletOf('one', pattern, ...argv),
    await bookletOf('two', pattern, ...argv),
  ];
  expect(one.equals(two)).toBe(true);
  const { pages, contents } = await readTexts(one);
  expect(contents.filter((name) => name !== 'Your purse')).toEqual([
    'Cover',
    'Contents',
    'Materials and tools',
    'Take care',
    'Before you start',
    'Chart',
    'Chart as you see it',
    'String and work',
    'Making up',
    'About this pattern',
    'Lining template',
  ]);
  expect(one.toString('latin1')).not.toContain('/Subtype /Image');
  const said = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
  expect(said).toContain('2026-03-14');
  expect(said).toContain('Sell what you make.');
  // Text can be extracted from a font without glyphs as well: only ink shows that it is there.
  const ink = await inkOf(one, 2);
  for (const { text, x, y, widthMm } of pages[1].texts.filter((line) => line.x > 35))
    expect(ink(x, y - 3, x + widthMm, y), text).toBeGreaterThan(0.05);
});

const wrong: [why: string, argv: string[], code: number, sentence: RegExp][] = [
  ['no file', [], 2, /add -o and a name that ends in \.pdf/],
  ['another kind of file', ['-o', 'DIR/x.svg'], 2, /--output cannot be .*ends in \.pdf/],
  ['a day that is none', ['-o', 'DIR/x.pdf', '--date', '2026-02-30'], 2, /--date cannot be/],
  ['an unknown paper', ['-o', 'DIR/x.pdf', '--paper', 'a5'], 2, /a4, letter/],
  ['no author', ['-o', 'DIR/x.pdf', '--author', ' '], 2, /--author cannot be/],
  ['letters no font has', ['-o', 'DIR/x.pdf', '--author', '🐟'], 3, /U\+1F41F/],
  ['somebody else’s file', ['-o', 'DIR/theirs.pdf', '--force'], 5, /did not make/],
];

test.each(wrong)('%s: one sentence, and nothing is written', async (_why, argv, code, sentence) => {
  const from = join(folder, 'small.json');
  writeFileSync(from, patternText(sizes[0][1]));
  writeFileSync(join(folder, 'theirs.pdf'), '%PDF-1.4 of somebody else (Rondure)');
  const before = readdirSync(folder);
  const made = await inProcess('booklet', from, ...argv.map((word) => word.replace('DIR', folder)));
  expect(made.err).toMatch(sentence);
  expect(made.err.trim().split('\n')).toHaveLength(1);
  expect({ code: made.code, out: made.out }).toEqual({ code, out: '' });
  expect(readdirSync(folder)).toEqual(before);
});
