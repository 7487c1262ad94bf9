import { layOutBooklet } from '../../src/booklet/layout.js';
import type { Layout } from '../../src/booklet/layout.js';
import type { Edition } from '../../src/booklet/facts.js';
import type { PrintPaper } from '../../src/core/pages/surface/print-sheet.js';
import { bareMark } from '../../src/core/pattern/marks.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { fontsForPages } from '../../src/node/font/fonts.js';
import { wordsIn } from '../../src/words/index.js';
import type { LanguageChoice } from '../../src/words/index.js';
import { panelSheet } from './panel-sheet.js';

/** A picture of twenty rounds in eight colours, worked twice. */
export const onePanel: Pattern = {
  ...panelSheet({ wedges: 7, rounds: 20 }, 8).pattern,
  title: 'Kingfisher',
};
const [front] = onePanel.panels;
const rim = front.rounds.map((marks, n) => (n === 19 ? bareMark + marks.slice(1) : marks));

/** Two of them, with a bare stitch in the rim. */
export const purse: Pattern = {
  ...onePanel,
  title: 'Kingfisher and lighthouse',
  panels: [
    { ...front, rounds: rim },
    { ...front, rounds: rim, name: 'back', startDegrees: -front.startDegrees },
  ],
};

/** A booklet laid out. */
export async function laidOut(
  pattern: Pattern,
  languages: LanguageChoice,
  edition: Edition = {},
  paper: PrintPaper = languages[0] === 'en-US' ? 'letter' : 'a4',
): Promise<Layout> {
  const { words, each } = await wordsIn(languages);
  const fonts = await fontsForPages(languages[0], []);
  const facts = { pattern, edition, words, each, fonts, languages, version: '1.2.3' };
  return layOutBooklet(facts, paper);
}
