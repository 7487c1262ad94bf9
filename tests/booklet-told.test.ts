import { describe, expect, test } from 'vitest';
import type { Layout } from '../src/booklet/layout.js';
import { acrossRange } from '../src/core/panel/across.js';
import type { Frame } from '../src/core/purse/frame/measures.js';
import {
  accusative,
  dative,
  from,
  genitive,
  inThe,
  upper,
} from '../src/words/pages/de/panel-name.js';
import { languages, wordsIn } from '../src/words/index.js';
import { laidOut, onePanel, purse } from './support/booklets.js';
import { PageReach } from './support/page-reach.js';

/** All that stands on the pages without its spaces: a paragraph that goes on on another page in one. */
function saidOn({ look, flow }: Layout): string {
  const texts = new Map<unknown, string>();
  for (const { drawn } of flow.pages) {
    for (const { draw, node } of drawn) {
      const page = new PageReach(look.widthMm, look.heightMm);
      draw(page);
      // What belongs to no part is ornament: titles that are said again.
      if (node) texts.set(node, (texts.get(node) ?? '') + page.texts.join(''));
    }
  }
  return packed([...texts.values()].join(''));
}
const packed = (text: string) => text.replace(/\s+/gu, '');
const timesIn = (whole: string, part: string) => whole.split(packed(part)).length - 1;

const frame: Frame = {
  kind: 'half-round',
  widthMm: 80,
  heightMm: 30,
  fixing: 'sewn',
  ratio: 1.15,
  gatherPercent: 0,
};

describe.each(languages)('in %s', (language) => {
  test('what is common practice is said to be so once, and marked nowhere else', async () => {
    const { words } = await wordsIn([language]);
    const names = { front: 'A', back: 'B' };
    const [with_, without] = [true, false].map((marked) =>
      words.sewing.opening({ ...names, marked }),
    );
    // The mark is what the marked sentence has more.
    let begin = 0;
    while (with_[begin] === without[begin]) begin++;
    const mark = with_.slice(begin, begin + with_.length - without.length);
    expect(mark.length).toBeGreaterThan(4);
    for (const pattern of [onePanel, purse]) {
      const said = saidOn(await laidOut(pattern, [language]));
      expect(timesIn(said, words.booklet.last.figuresText)).toBe(1);
      expect(timesIn(said, mark.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, ''))).toBe(0);
    }
  });

  test('the swatch tells its beads: 7 times 1 + 2 + … + 10', async () => {
    const { words } = await wordsIn([language]);
    const { shape } = onePanel;
    const across = (rounds: number) => acrossRange({ ...onePanel, shape: { ...shape, rounds } });
    const text = words.booklet.before.swatchText({
      wedges: 7,
      beads: 385,
      widthMm: shape.stitchWidthMm,
      heightMm: shape.roundHeightMm,
      five: across(5),
      ten: across(10),
    });
    expect(text).toContain('385');
    expect(timesIn(saidOn(await laidOut(onePanel, [language])), text)).toBe(1);
  });

  test('two boxes are explained where both panels have one list, brackets where there are any', async () => {
    const { words } = await wordsIn([language]);
    const { tick, twoBoxes } = words.booklet.work;
    const [one, two] = [
      saidOn(await laidOut(onePanel, [language])),
      saidOn(await laidOut(purse, [language])),
    ];
    expect(timesIn(one, twoBoxes)).toBe(1);
    expect(timesIn(two, twoBoxes)).toBe(0);
    const plainLetters = onePanel.panels[0].rounds.map((marks, n) =>
      // Neighbouring wedges differ in every round: nothing is repeated.
      Array.from(marks, (_, s) => 'AB'[Math.floor(s / (n + 1)) % 2]).join(''),
    );
    const varied = { ...onePanel, panels: [{ ...onePanel.panels[0], rounds: plainLetters }] };
    const alike = {
      ...onePanel,
      panels: [
        {
          ...onePanel.panels[0],
          rounds: plainLetters.map((_, n) =>
            'AB'
              .repeat(n + 1)
              .slice(0, n + 1)
              .repeat(7),
          ),
        },
      ],
    };
    const without = saidOn(await laidOut(varied, [language]));
    const within = saidOn(await laidOut(alike, [language]));
    expect(timesIn(within, tick({ brackets: true }))).toBe(1);
    expect(timesIn(without, tick({ brackets: true }))).toBe(0);
    expect(timesIn(without, tick({ brackets: false }))).toBe(1);
  });

  test('with a frame the one seam gives no share of the rim and no distance from the hinge', async () => {
    const framed = saidOn(await laidOut({ ...onePanel, frame }, [language]));
    const { oneSeam } = (await wordsIn([language])).words.booklet.making;
    expect(timesIn(framed, oneSeam({ framed: true }))).toBe(1);
    expect(oneSeam({ framed: true })).not.toMatch(/5.{1,5}10/u);
    expect(oneSeam({ framed: false })).toMatch(/5.{1,5}10/u);
  });

  test('the lining is told in drawings or in sentences, never in both', async () => {
    const layout = await laidOut(onePanel, [language]);
    const said = saidOn(layout);
    const { words } = layout.facts;
    const sentences = timesIn(said, words.lining.put);
    expect(timesIn(said, words.hands.lining.ask)).toBe(1);
    const shown = timesIn(said, words.booklet.making.liningShown);
    expect([shown, sentences]).toEqual(shown === 1 ? [1, 0] : [0, 1]);
    // The cautions of the sheet go with its sentences: the booklet says them before.
    expect(timesIn(said, words.lining.caution)).toBe(sentences);
    for (const caution of words.shopping.care) expect(timesIn(said, caution)).toBe(1);
  });
});

// Duden, Deklination der Substantive: das Vorderteil, des Vorderteils, dem Vorderteil.
test('German declines its own names of panels and the word before a maker’s', async () => {
  const cases = [accusative, genitive, dative, from, inThe];
  const declined = (name: string) => cases.map((one) => one(name));
  expect(declined('Vorderteil')).toEqual([
    ...['das Vorderteil', 'des Vorderteils', 'dem Vorderteil', 'vom Vorderteil', 'im Vorderteil'],
  ]);
  expect(declined('Möwe')).toEqual([
    ...[
      'das Teil „Möwe“',
      'des Teils „Möwe“',
      'dem Teil „Möwe“',
      'vom Teil „Möwe“',
      'im Teil „Möwe“',
    ],
  ]);
  expect(upper(accusative('Rückteil'))).toBe('Das Rückteil');
  const front = { ...purse.panels[0], name: 'Möwe' };
  const named = { ...purse, panels: [front, purse.panels[1]] };
  const said = saidOn(await laidOut(named, ['de']));
  expect(said).toContain(packed('des Teils „Möwe“'));
  expect(said).toContain(packed('des Rückteils'));
  expect(said).not.toMatch(/(das|dem|des)(Möwe|„Möwe“)/u);
});
