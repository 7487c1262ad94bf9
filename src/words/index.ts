import { en } from './en/index.js';
import type { Words } from './en/index.js';
import type { PageWords } from './pages/index.js';
import type { Language } from './pages/languages.js';
import { loadPages } from './pages/load.js';
import { paired } from './pages/pairs.js';

/** The typed message catalogue: every word a person reads. One folder a language. */
export { en } from './en/index.js';
export type { Words } from './en/index.js';
export { languageNames, languages } from './pages/languages.js';
export type { Language } from './pages/languages.js';
export type { PageWords } from './pages/index.js';
export type { BeadLook, ColourFamily, ColourTone, ColourWord, FinishKind } from './pages/looks.js';

/** One language, or two side by side: the first leads where only one can stand. */
export type LanguageChoice = readonly [Language] | readonly [Language, Language];

/**
 * The catalogue with the words of its pages in other languages; what only the command line says
 * stays English. Of two languages every text of `words` holds both (`onSide` of pages/pairs.ts reads
 * them), and `each` has them apart.
 */
export async function wordsIn(
  choice: LanguageChoice,
): Promise<{ readonly words: Words; readonly each: readonly Words[] }> {
  const [first, second] = await Promise.all(choice.map((language) => loadPages[language]()));
  if (second === undefined) return { words: withPages(first), each: [withPages(first)] };
  // Numbers and the notation of lists stand once.
  const { number, decimal, round, bare, open } = first.lists;
  const both = paired(first, second);
  const lists = { ...both.lists, number, decimal, round, bare, open };
  return {
    words: withPages({ ...both, lists }),
    each: [withPages(first), withPages(second)],
  };
}

function withPages(pages: PageWords): Words {
  return {
    ...en,
    beadLooks: { ...en.beadLooks, ...pages.beadLooks },
    blank: { ...en.blank, ...pages.blank },
    booklet: { ...en.booklet, ...pages.booklet },
    chart: { ...en.chart, ...pages.chart, count: pages.lists.number },
    frame: { ...en.frame, ...pages.frame },
    hands: pages.hands,
    lining: { ...en.lining, ...pages.lining },
    lists: { ...en.lists, ...pages.lists },
    rounds: { ...en.rounds, ...pages.rounds },
    sewing: { ...en.sewing, ...pages.sewing },
    shopping: { ...en.shopping, ...pages.shopping },
    stringing: { ...en.stringing, ...pages.stringing },
    swatch: { ...en.swatch, ...pages.swatch },
  };
}
