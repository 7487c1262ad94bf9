import { expect, test } from 'vitest';
import { drawFoot } from '../src/booklet/foot.js';
import { linesOf, lookOf } from '../src/booklet/look.js';
import { whereOf } from '../src/booklet/facts.js';
import type { BookletFacts } from '../src/booklet/facts.js';
import { planLining } from '../src/core/purse/lining/plan.js';
import { drawLiningPiece } from '../src/core/pages/lining/lining-piece.js';
import { wrapped } from '../src/core/pages/surface/text.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { languages, wordsIn } from '../src/words/index.js';
import type { Language } from '../src/words/index.js';
import { PageRecorder } from './support/page-recorder.js';
import { panelSheet } from './support/panel-sheet.js';

const { pattern: plain } = panelSheet({ wedges: 7, rounds: 20 }, 4);
const pattern = {
  ...plain,
  title: 'Kingfisher and lighthouse',
  panels: [
    { ...plain.panels[0], name: 'front' },
    { ...plain.panels[0], name: 'back' },
  ],
};

async function factsIn(language: Language): Promise<BookletFacts> {
  const { words } = await wordsIn([language]);
  const fonts = await fontsForPages(language, []);
  const edition = { large: true };
  return { pattern, words, each: [words], languages: [language], fonts, edition, version: '1.2.3' };
}

test.each(languages)(
  'the foot of large print says which length a sheet strings: %s',
  async (to) => {
    const facts = await factsIn(to);
    const { booklet } = facts.words;
    const length = { length: 2, lengths: 13 };
    for (const name of ['front', 'a name as long as names in feet are']) {
      const named = { ...facts, pattern: { ...pattern, panels: [{ ...pattern.panels[0], name }] } };
      const where = whereOf(named, booklet.parts.stringing, 0, length);
      const page = { where, ruled: true, bookmarks: [], drawn: [], reachMm: 0, topMm: 0 };
      for (const paper of ['a4', 'letter'] as const) {
        const surface = new PageRecorder(paper === 'a4' ? 210 : 215.9, 279.4);
        const number = booklet.pageOf({ page: 40, pages: 123 });
        drawFoot(surface, named, lookOf(paper, facts.fonts, { large: true }), page, number);
        const [foot, pageNumber] = surface.texts;
        expect(foot.text).toContain(booklet.length(length));
        expect(foot.box[2]).toBeLessThan(pageNumber.box[0]);
      }
    }
  },
);

test.each(languages)('both hinges of a lining are named, or neither: %s', async (to) => {
  const { words, fonts } = await factsIn(to);
  const count = (rounds: number, wish: Parameters<typeof planLining>[1]) => {
    const of = panelSheet({ wedges: 7, rounds }, 4).pattern;
    const surface = new PageRecorder(400, 400);
    const sheet = { lining: planLining(of, wish), title: 'Purse', words, fonts };
    drawLiningPiece(surface, sheet, 200, 200);
    return surface.texts.filter(({ text }) => text === words.lining.marks.hinge).length;
  };
  expect(count(20, {}), 'the usual purse').toBe(2);
  for (const rounds of [6, 9, 12, 15, 25, 30])
    for (const openingShare of [0.2, 0.45, 0.7])
      expect([0, 2], `${rounds} rounds, ${openingShare}`).toContain(
        count(rounds, { openingShare }),
      );
});

/** One-letter words: ČSN 01 6910 for Czech; in Polish, Russian, Ukrainian from memory. */
test.each(['cs', 'pl', 'ru', 'uk'] as const)(
  'no line ends with a word of one letter: %s',
  async (to) => {
    const { words, fonts } = await factsIn(to);
    const { body } = lookOf('a4', fonts);
    const paragraphs = JSON.stringify([words.booklet, words.stringing, words.rounds]);
    const said = [...paragraphs.matchAll(/"([^"]{60,})"/g)].map(([, text]) => text);
    expect(said.length).toBeGreaterThan(3);
    let short = 0;
    for (const text of said) {
      short += text.match(/ [aikosuvwzAIOUWZVаивкосуяій] /g)?.length ?? 0;
      for (const widthMm of [40, 60, 80, 110, 170])
        for (const lines of [linesOf(text, body, widthMm), wrapped(text, body, widthMm)])
          for (const line of lines.slice(0, -1))
            expect(line).not.toMatch(/(^| )[aikosuvwzаивкосуяій]$/u);
    }
    expect(short).toBeGreaterThan(3);
  },
);
