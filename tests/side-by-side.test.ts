import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { englishPages } from '../src/words/pages/english/index.js';
import { ukEnglish, usEnglish } from '../src/words/pages/english/spelling.js';
import { flat, isPaired, onSide, paired, sides } from '../src/words/pages/pairs.js';

const uk = englishPages(ukEnglish);
const us = englishPages(usEnglish);
const both = paired(uk, us);

describe('words in two languages', () => {
  test('every text is read back in either language, also when texts are joined', () => {
    const amounts = { panels: 2, rounds: 20, beads: 1470, colours: 6 };
    const joined = `${both.booklet.amounts(amounts)} (${both.chart.marks.five}) ${both.booklet.last.licence}`;
    const as = (words: typeof uk) =>
      `${words.booklet.amounts(amounts)} (${words.chart.marks.five}) ${words.booklet.last.licence}`;
    expect(onSide(joined, 0)).toBe(as(uk));
    expect(onSide(joined, 1)).toBe(as(us));
    expect(flat(joined)).toBe(`${as(uk)} / ${as(us)}`);
  });

  test('facts that are in both languages are given to each in its own', () => {
    const part = both.booklet.last.licence;
    const text = both.booklet.ofPanel({ part, panel: 'front' });
    expect(sides(text)).toEqual(['Licence: front', 'License: front']);
  });

  test('what is the same in both stands once', () => {
    expect(both.booklet.parts.cover).toBe('Cover');
    expect(isPaired(both.booklet.parts.cover)).toBe(false);
  });

  test('pairs within pairs keep their languages apart', () => {
    const text = fc.string({ minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(text, text, text, text, (a, b, c, d) => {
        const inner = paired(a, b);
        const outer = paired(
          (fact: string) => `${c}${fact}`,
          (fact: string) => `${fact}${d}`,
        )(inner);
        expect(onSide(`<${outer}${inner}>`, 0)).toBe(`<${c}${a}${a}>`);
        expect(onSide(`<${outer}${inner}>`, 1)).toBe(`<${b}${d}${b}>`);
      }),
    );
  });
});
