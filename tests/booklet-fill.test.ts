import { expect, test } from 'vitest';
import { layOutBooklet } from '../src/booklet/layout.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { bareMark } from '../src/core/pattern/marks.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { languages, wordsIn } from '../src/words/index.js';
import { PageRecorder } from './support/page-recorder.js';
import { panelSheet } from './support/panel-sheet.js';

const plain = panelSheet({ wedges: 7, rounds: 20 }, 8).pattern;
const [front] = plain.panels;
const rim = front.rounds.map((marks, n) => (n === 19 ? bareMark + marks.slice(1) : marks));
const purse: Pattern = {
  ...plain,
  title: 'Kingfisher and lighthouse',
  panels: [
    { ...front, rounds: rim },
    { ...front, rounds: rim, name: 'back', startDegrees: -front.startDegrees },
  ],
};

// The charts begin on a page of their own. A row alone fills a third of a page, two come to about half.
test.each(languages)(
  'in %s no row of drawings is left alone on the page before the charts',
  async (language) => {
    const paper = language === 'en-US' ? 'letter' : 'a4';
    const { words, each } = await wordsIn([language]);
    const fonts = await fontsForPages(language, []);
    const facts = { pattern: purse, edition: {}, words, each, fonts, languages: [language], version: '1.2.3' } as const; // prettier-ignore
    const { look, flow } = layOutBooklet(facts, paper);
    const told = flow.pages.filter(({ where }) => where.includes(words.booklet.parts.before));
    expect(told.length).toBeGreaterThan(0);
    for (const { where, drawn } of told) {
      const page = new PageRecorder(look.widthMm, look.heightMm);
      for (const { draw } of drawn) draw(page);
      const lowest = Math.max(...page.texts.map(({ box }) => box[3]));
      expect((lowest - 14) / (look.bottom - 14), where).toBeGreaterThan(0.45);
    }
  },
);
