import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pieceTexts, wedgeTexts } from '../src/booklet/parts/rounds.js';
import { stretchesOf } from '../src/booklet/parts/work.js';
import { balanced, countable, stringingTokens } from '../src/booklet/parts/stringing.js';
import type { Token } from '../src/booklet/parts/stringing.js';
import { tintOf } from '../src/booklet/tint.js';
import { contrastRatio } from '../src/core/colour/contrast.js';
import { asGrey, greyFills, markStrokes } from '../src/core/pages/panel/grey-fills.js';
import { panelSheet } from './support/panel-sheet.js';
import type { BookletFacts } from '../src/booklet/facts.js';
import { en } from '../src/words/index.js';

const someMarks = fc
  .array(fc.tuple(fc.constantFrom('A', 'B', '.'), fc.integer({ min: 1, max: 70 })), {
    minLength: 1,
  })
  .map((runs) => runs.map(([letter, count]) => letter.repeat(count)).join(''));
const expanded = (texts: readonly string[]) =>
  texts
    .join(' ')
    .replace(/\(([^()]*)\) x (\d+)/g, (_, runs: string, times) => `${runs} `.repeat(Number(times)))
    .replace(/(\d+)([A-Z])/g, (_, count, letter: string) => letter.repeat(Number(count)))
    .replace(/ /g, '');

test('runs over 20 are counted in tens, and stand for the same beads', () => {
  fc.assert(
    fc.property(someMarks, (marks) => {
      const letters = marks.replaceAll('.', '');
      const tokens = countable(letters);
      expect(expanded(tokens.map(({ text }) => text))).toBe(letters);
      for (const { text } of tokens) expect(parseInt(text, 10)).toBeLessThanOrEqual(20);
    }),
  );
  expect(countable('C'.repeat(27)).map(({ text }) => text)).toEqual(['10C', '10C', '7C']);
  expect(countable('C'.repeat(20)).map(({ text }) => text)).toEqual(['20C']);
});

test('a round that repeats is strung once a repeat, last bead first', () => {
  const { tokens, times } = stringingTokens('AAB'.repeat(7), 3);
  expect(times).toBe(7);
  expect(tokens.map(({ text }) => text)).toEqual(['(', '1B', '2A', ') x 7']);
  const worked = Array.from('AAB'.repeat(7)).reverse().join('');
  expect(expanded(tokens.map(({ text }) => text))).toBe(worked);
});

/** All ways to set tokens in lines that none of them is too long for. */
function waysToSet(tokens: readonly Token[], roomMm: number): Token[][][] {
  if (tokens.length === 0) return [[]];
  return tokens.flatMap((_, n) => {
    const line = tokens.slice(0, n + 1);
    const fits = line.reduce((sum, { boxesMm = 0 }) => sum + boxesMm, 0) <= roomMm;
    if (!fits || tokens[n + 1]?.follows) return [];
    return waysToSet(tokens.slice(n + 1), roomMm).map((rest) => [line, ...rest]);
  });
}

test('lines to string are as few as can be, and of those ways the one with most ends at wedges', () => {
  const token = fc.record({
    text: fc.constant(''),
    boxesMm: fc.integer({ min: 2, max: 9 }),
    endsWedge: fc.boolean(),
  });
  const style = { face: panelSheet({ wedges: 3, rounds: 2 }, 1).fonts.regular, sizeMm: 4 };
  const inside = (lines: readonly Token[][]) =>
    lines.slice(0, -1).filter((line) => line.at(-1)!.endsWedge !== true).length;
  fc.assert(
    fc.property(fc.array(token, { minLength: 1, maxLength: 9 }), fc.boolean(), (plain, closed) => {
      const tokens: Token[] = closed && plain.length > 1 ? [...plain] : plain;
      if (closed && tokens.length > 1) tokens[1] = { ...tokens[1], follows: true };
      const lines = balanced(tokens, style, 20);
      expect(lines.flat()).toEqual(tokens);
      const ways = waysToSet(tokens, 20);
      const fewest = Math.min(...ways.map(({ length }) => length));
      expect(lines).toHaveLength(fewest);
      const best = ways.filter(({ length }) => length === fewest).map(inside);
      expect(inside(lines)).toBe(Math.min(...best));
    }),
  );
});

test('a wedge ends where its last bead ends a run, and a part of a round has no wedges', () => {
  const ends = (marks: string, r: number, wedges: number) =>
    stringingTokens(marks, r, wedges)
      .tokens.filter(({ endsWedge }) => endsWedge)
      .map(({ text }) => text);
  // Strung from the last stitch: CC B | BB. | AAA, and the bare stitch takes no bead.
  expect(ends('AAA.BBBCC', 3, 3)).toEqual(['3B', '3A']);
  expect(ends('AAA.BBBCC', 3, 4)).toEqual([]);
});

test('what is worked in each wedge, put together, is the round', () => {
  const { pattern } = panelSheet({ wedges: 7, rounds: 12 }, 4);
  pattern.panels[0].rounds.forEach((marks, index) => {
    const texts = wedgeTexts(pattern.shape, index + 1, marks, en);
    const flat = texts.map((text) => text.replace(/\[([A-Z]) ([A-Z])\]/g, '1$1 1$2'));
    expect(expanded(flat)).toBe(marks);
  });
});

test('each length is worked to its last bead before the next is strung, rounds parted where it ends', () => {
  fc.assert(
    fc.property(fc.integer({ min: 3, max: 200 }), (lengthBeads) => {
      const { pattern } = panelSheet({ wedges: 7, rounds: 9 }, 4, { thread: { lengthBeads } });
      const { rounds } = pattern.panels[0];
      for (const { length, first, last, pieces } of stretchesOf({ pattern } as BookletFacts, 0)) {
        expect(pieces.map(({ round }) => round)).toEqual(
          Array.from({ length: last - first + 1 }, (_, n) => first + n),
        );
        const worked = pieces.map((piece) => {
          const marks = rounds[piece.round - 1];
          const texts = pieceTexts(pattern.shape, piece, marks, en);
          expect(texts[0].startsWith('… ')).toBe(piece.from > 0);
          expect(texts.at(-1)!.endsWith(' …')).toBe(piece.to < marks.length);
          const flat = texts.map((text) =>
            text.replace(/…/g, '').replace(/(?<![A-Z\d])([A-Z])(?=[\s\]]|$)/g, '1$1'),
          );
          return expanded(flat).replace(/[[\]]/g, '');
        });
        expect(worked.join('')).toBe(length.beads);
      }
    }),
    { numRuns: 60 },
  );
});

// W3C, WCAG 2.1: 1.4.6 for titles on white, 1.4.3 on the tinted ground.
test('colours from the beads read at 7:1 on white and 4.5:1 on their ground; greys stay grey', () => {
  const { pattern } = panelSheet({ wedges: 6, rounds: 5 }, 6);
  const hex = fc
    .integer({ min: 0, max: 0xffffff })
    .map((n) => `#${n.toString(16).padStart(6, '0')}`);
  fc.assert(
    fc.property(fc.array(hex, { minLength: 6, maxLength: 6 }), (hexes) => {
      const beads = pattern.beads.map((bead, n) => ({ ...bead, hex: hexes[n] }));
      const { accent, pale } = tintOf({ ...pattern, beads });
      for (const [one, other] of [
        [accent, pale],
        [asGrey(accent), asGrey(pale)],
      ]) {
        expect(contrastRatio(one, '#ffffff')).toBeGreaterThanOrEqual(6.9);
        expect(contrastRatio(one, other)).toBeGreaterThanOrEqual(4.5);
      }
    }),
  );
  const grey = pattern.beads.map((bead, n) => ({
    ...bead,
    hex: `#${String(20 + 13 * n).repeat(3)}`,
  }));
  const tint = tintOf({ ...pattern, beads: grey });
  for (const one of [tint.accent, tint.pale]) expect(one).toMatch(/^#(..)\1\1$/);
});

test('hatching leaves the letter’s ground bare, and none lies like the bar of an increase', () => {
  for (const strokes of Object.values(markStrokes)) {
    for (const [ax, ay, bx, by] of strokes) {
      for (let share = 0; share <= 1; share += 0.1) {
        const reach = Math.hypot(ax + share * (bx - ax), ay + share * (by - ay));
        expect(reach).toBeGreaterThan(0.35);
        expect(reach).toBeLessThan(0.5);
      }
      // An increase is marked by a bar along the round.
      expect(Math.abs(Math.atan2(by - ay, bx - ax)) % Math.PI).toBeGreaterThan(0.3);
    }
  }
  const fills = [...greyFills(panelSheet({ wedges: 6, rounds: 4 }, 5).pattern.beads).values()];
  expect(new Set(fills.map(({ hex, mark }) => `${hex}${mark}`)).size).toBe(5);
});
