import { describe, expect, test } from 'vitest';
import { swatchGuidePdf } from '../src/booklet/swatch-guide-pdf.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';
import { safeArea } from '../src/core/pages/surface/print-sheet.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { languages, wordsIn } from '../src/words/index.js';
import { loadWorktable } from '../src/words/worktable/load.js';
import { readPdf } from './support/read-pdf.js';
import type { ReadPage } from './support/read-pdf.js';

const ways: [string, ShapeWish, 'a4' | 'letter'][] = [
  ['usual', { wedges: 7, rounds: 10, beadDiameterMm: 2.1 }, 'a4'],
  [
    'with the longest sentences',
    {
      wedges: 12,
      rounds: 80,
      beadDiameterMm: 2.1,
      increase: 'middle',
      construction: 'joined',
      hand: 'left',
      beadsFace: 'toward',
    },
    'letter',
  ],
];

async function guideIn(
  language: (typeof languages)[number],
  wish: ShapeWish,
  paper: 'a4' | 'letter',
) {
  const { words } = await wordsIn([language]);
  const shape = completeShape(wish);
  const fonts = await fontsForPages(language, []);
  const marks = { fromRound: 2, toRound: shape.rounds, markedWedge: 2 };
  const { bytes } = await swatchGuidePdf(
    { shape, size: '11/0', ...marks, words, fonts },
    paper,
    language,
  );
  return { words, ...(await readPdf(bytes)) };
}

/** Lines of text set at about 12 points: what ink they can take up, by the ascent and descent of letters. */
function boxes({ texts }: ReadPage) {
  return texts
    .filter(({ text }) => text.trim() !== '')
    .map(({ text, x, y, widthMm }) => ({ text, box: [x, y - 2.6, x + widthMm, y + 0.6] }));
}

/** A word of a command stands in Latin letters after two hyphens, or names the program. */
const command = /--[a-z]|rondure|\.json/i;

describe.each(languages)('the guide in %s', (language) => {
  test.each(ways)(
    'stands within its sheets, nothing over anything else: %s',
    async (_, wish, paper) => {
      const { pages } = await guideIn(language, wish, paper);
      for (const page of pages) {
        const left = (page.widthMm - safeArea.widthMm) / 2 - 0.3;
        const top = (page.heightMm - safeArea.heightMm) / 2 - 0.3;
        const all = boxes(page);
        all.forEach(({ text, box }, n) => {
          expect(box[0], text).toBeGreaterThan(left);
          expect(box[1], text).toBeGreaterThan(top);
          expect(box[2], text).toBeLessThan(page.widthMm - left);
          expect(box[3], text).toBeLessThan(page.heightMm - top);
          for (const other of all.slice(n + 1)) {
            const across = Math.min(box[2], other.box[2]) - Math.max(box[0], other.box[0]);
            const down = Math.min(box[3], other.box[3]) - Math.max(box[1], other.box[1]);
            expect(across > 0.1 && down > 0.1, `${text} | ${other.text}`).toBe(false);
          }
        });
        for (const { box } of page.paths) {
          expect(Math.min(box[0] - left, box[1] - top)).toBeGreaterThan(0);
          expect(box[2]).toBeLessThan(page.widthMm - left);
          expect(box[3]).toBeLessThan(page.heightMm - top);
        }
      }
    },
  );

  test('says everything, in no word of the command line', async () => {
    const { words, pages, title, language: said } = await guideIn(language, ways[0][1], 'a4');
    expect(said).toBe(language);
    expect(title).toBe(words.swatch.guide.title);
    const text = pages.flatMap(({ texts }) => texts.map((one) => one.text)).join(' ');
    expect(text).not.toMatch(command);
    expect(text).not.toContain('…');
    const letters = (one: string) => one.replace(/[\s\u00a0]+/gu, '');
    const { guide } = words.swatch;
    const facts = { wedges: 7, rounds: 10, increase: 'last', construction: 'spiral', hand: 'right', beadsFace: 'away', size: '11/0', fromRound: 2, toRound: 10, markedWedge: 2, rimWedge: 4, beads: 385 } as const; // prettier-ignore
    for (const { head, text: step } of guide.steps(facts)) {
      expect(letters(text)).toContain(letters(head + step));
    }
    for (const blank of guide.blanks(facts)) expect(letters(text)).toContain(letters(blank));
    for (const one of [guide.then, guide.stitchIntro, ...Object.values(guide.ways), guide.read]) {
      expect(letters(text)).toContain(letters(one));
    }
  });

  test('names the place in the program as the program does', async () => {
    const { words } = await wordsIn([language]);
    const { panel } = await loadWorktable[language]();
    for (const name of [panel.step, panel.stitch]) expect(words.swatch.guide.then).toContain(name);
  });
});
