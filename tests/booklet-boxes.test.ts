import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutBooklet } from '../src/booklet/layout.js';
import type { Layout } from '../src/booklet/layout.js';
import type { Edition } from '../src/booklet/facts.js';
import { contrastRatio } from '../src/core/colour/contrast.js';
import { mmPerPoint } from '../src/core/pages/surface/text.js';
import type { Frame } from '../src/core/purse/frame/measures.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { languages, wordsIn } from '../src/words/index.js';
import type { LanguageChoice } from '../src/words/index.js';
import { PageRecorder } from './support/page-recorder.js';
import type { RecordedText } from './support/page-recorder.js';
import { panelSheet } from './support/panel-sheet.js';

async function laidOut(
  pattern: Pattern,
  edition: Edition = {},
  choice: LanguageChoice = ['en-GB'],
  paper: 'a4' | 'letter' = 'a4',
): Promise<Layout> {
  const { words, each } = await wordsIn(choice);
  const fonts = await fontsForPages(choice[0], []);
  const facts = { pattern, edition, words, each, fonts, languages: choice, version: '1.2.3' };
  return layOutBooklet({ ...facts, author: 'A. Maker', date: '2026-03-14' }, paper);
}

/** The pages as they come; without pictures where only what stands around them counts. */
function drawn(
  { look, flow, foot }: Layout,
  { pictures = true } = {},
): {
  where: string;
  page: PageRecorder;
  running: boolean;
}[] {
  return flow.pages.map((one, n) => {
    const page = new PageRecorder(look.widthMm, look.heightMm);
    for (const { draw, node } of one.drawn) {
      if (pictures || node?.type !== 'Figure') draw(page);
    }
    foot(page, one, n);
    return { where: one.where, page, running: one.ruled };
  });
}

/** A letter or a number on a cell of a chart. */
const onCell = ({ text }: RecordedText) => /^([A-Z]|\d{1,2})$/.test(text.trim());

/** Texts over one another, or too near to the paper's edge. */
function faults({
  page: { texts, widthMm, heightMm },
  running,
}: {
  page: PageRecorder;
  running: boolean;
}): string[] {
  const found: string[] = [];
  // What a window cuts is whole on the next sheet: booklet-charts.test.ts looks for it there.
  const whole = texts.filter(
    ({ box, window }) =>
      box[0] >= window[0] && box[2] <= window[2] && box[1] >= window[1] && box[3] <= window[3],
  );
  // Letters on a chart stand in their cells; on running pages every letter counts.
  const words = whole.filter((one) => running || !onCell(one));
  for (const { text, box } of whole) {
    const [left, top, right, bottom] = box;
    if (left < 5 || right > widthMm - 5 || top < 5 || bottom > heightMm - 5)
      found.push(`near the edge: ${text}`);
  }
  words.forEach((one, n) => {
    for (const other of words.slice(n + 1)) {
      const across = Math.min(one.box[2], other.box[2]) - Math.max(one.box[0], other.box[0]);
      const down = Math.min(one.box[3], other.box[3]) - Math.max(one.box[1], other.box[1]);
      if (across > 0.2 && down > 0.2) found.push(`${one.text} / ${other.text}`);
    }
  });
  return found;
}

const frame: Frame = {
  kind: 'half-round',
  widthMm: 60,
  heightMm: 30,
  fixing: 'sewn',
  ratio: 1.15,
  gatherPercent: 0,
};
const small = panelSheet({ wedges: 6, rounds: 3 }, 2).pattern;
const usual = panelSheet({ wedges: 7, rounds: 14 }, 8).pattern;
const [front] = usual.panels;
const purse: Pattern = {
  ...usual,
  frame,
  title: 'Kingfisher and lighthouse '.repeat(8).trim().slice(0, 200),
  panels: [front, { ...front, name: 'back', startDegrees: -front.startDegrees }],
};
const many = panelSheet({ wedges: 6, rounds: 18 }, 24).pattern;
const patterns: [string, Pattern][] = [
  ['3 rounds, 2 colours', small],
  ['a purse with a frame and a long title', purse],
  ['24 colours', many],
];
const editions: [string, Edition][] = [
  ['usual', {}],
  ['grey, for the left hand', { grey: true, otherHand: 'left' }],
  ['large', { large: true }],
  ['large and grey', { large: true, grey: true }],
];

describe.each(patterns)('%s', (_, pattern) => {
  describe.each(editions)('%s', (_edition, edition) => {
    test.each(['a4', 'letter'] as const)(
      'no text stands over a text or off the page (%s)',
      async (paper) => {
        for (const one of drawn(await laidOut(pattern, edition, ['en-GB'], paper)))
          expect(faults(one), one.where).toEqual([]);
      },
    );

    // W3C, WCAG 2.1: 1.4.3 for text, 1.4.11 for what carries meaning.
    test('every letter reads at 4.5:1 on what lies under it', async () => {
      for (const { where, page } of drawn(await laidOut(pattern, edition))) {
        for (const { text, ink, grounds } of page.texts) {
          for (const ground of grounds) {
            const said = `${where}: ${text}, ${ink} on ${ground}`;
            expect(contrastRatio(ink, ground), said).toBeGreaterThanOrEqual(4.5);
          }
        }
      }
    });
  });
});

test.each(editions)(
  'boxes to tick and lines that mean something stand out 3:1 (%s)',
  async (_, edition) => {
    let ticks = 0;
    const layout = await laidOut(usual, edition);
    // The thin rules between rows and under heads only please the eye.
    const { rule, accent } = layout.look.tint;
    const ornament = [rule, accent];
    for (const { page, where, running } of drawn(layout, { pictures: false })) {
      if (!running) continue;
      for (const { colour, ground, widthMm } of page.lines) {
        // Patches of beads have an outline under the bead's own colour.
        if (ornament.includes(colour) || widthMm > 1) continue;
        if (colour === '#4a4a4a') ticks++;
        expect(contrastRatio(colour, ground), `${where}: ${colour}`).toBeGreaterThanOrEqual(3);
      }
    }
    expect(ticks).toBeGreaterThan(20);
  },
);

test('the contrast is that of the W3C’s own example: #767676 on white is 4.54', () => {
  expect(contrastRatio('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

const choices: LanguageChoice[] = [
  ...languages.map((language) => [language] as const),
  ['de', 'en-GB'],
  ['ja', 'ru'],
];
test.each(choices.map((choice) => [choice.join(), choice] as const))(
  'no text stands over a text or off the page in %s',
  async (_, choice) => {
    for (const [pattern, edition] of [
      [purse, {}],
      [small, { large: true }],
    ] as const) {
      for (const one of drawn(await laidOut(pattern, edition, choice)))
        expect(faults(one), one.where).toEqual([]);
    }
  },
);

test.each(
  languages.flatMap((one) =>
    languages.flatMap((other) => (other > one ? [[one, other] as const] : [])),
  ),
)('%s and %s stand side by side', async (one, other) => {
  const { flow } = await laidOut(small, {}, [one, other]);
  expect(flow.pages.length).toBeGreaterThan(5);
});

test('large print: body of 18 points, nothing on running pages under 14', async () => {
  const layout = await laidOut(usual, { large: true });
  // Figures in drawings of the hands keep their size.
  for (const [n, { page, where }] of drawn(layout, { pictures: false }).entries()) {
    if (!layout.flow.pages[n].ruled) continue;
    for (const { sizeMm, text } of page.texts)
      expect(sizeMm / mmPerPoint, `${where}: ${text}`).toBeGreaterThan(13.99);
  }
  expect(layout.look.body.sizeMm / mmPerPoint).toBeCloseTo(18, 6);
  expect(layout.look.leastBeadMm).toBe(6);
});

test('no heading is alone at the foot of a page, at any size', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 2, max: 26 }),
      fc.integer({ min: 3, max: 9 }),
      fc.integer({ min: 1, max: 24 }),
      fc.boolean(),
      fc.constantFrom<LanguageChoice>(['en-GB'], ['ru'], ['de', 'en-GB']),
      async (rounds, wedges, colours, large, choice) => {
        const { pattern } = panelSheet({ wedges, rounds }, colours);
        const { flow } = await laidOut(pattern, { large }, choice);
        for (const { drawn: things, where } of flow.pages) {
          const types = things.flatMap(({ node }) => (node ? [node.type] : []));
          const last = types.at(-1);
          expect(['H1', 'H2'].includes(last ?? 'P'), where).toBe(false);
        }
      },
    ),
    { numRuns: 40 },
  );
});
