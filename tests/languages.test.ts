import { describe, expect, test } from 'vitest';
import { bookletPdf } from '../src/booklet/booklet-pdf.js';
import { Flow } from '../src/booklet/flow.js';
import { lookOf } from '../src/booklet/look.js';
import { beadColumns } from '../src/booklet/parts/bead-table.js';
import { roundColumns } from '../src/booklet/parts/rounds.js';
import { stringingColumns } from '../src/booklet/parts/stringing.js';
import { roomIn } from '../src/booklet/table.js';
import { handSaidOf } from '../src/core/pages/hand/of-pattern.js';
import { runPieces } from '../src/core/pages/lists/lines.js';
import { swatchGuideSvg } from '../src/core/pages/swatch/swatch-guide-svg.js';
import { textWidth, unparted } from '../src/core/pages/surface/text.js';
import type { Edition } from '../src/booklet/facts.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { Frame } from '../src/core/purse/frame/measures.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { bareMark, undecidedMark } from '../src/core/pattern/marks.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { languageNames, languages, wordsIn } from '../src/words/index.js';
import type { Language, PageWords, Words } from '../src/words/index.js';
import { inInches } from '../src/words/pages/inches-first.js';
import { englishPages } from '../src/words/pages/english/index.js';
import { ukEnglish } from '../src/words/pages/english/spelling.js';
import { numbersIn } from '../src/words/pages/numbers.js';
import { loadPages } from '../src/words/pages/load.js';
import { panelSheet } from './support/panel-sheet.js';

const english = englishPages(ukEnglish);

/** Every text of a catalogue by its path; functions are left out. */
function texts(value: unknown, path = ''): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  if (Array.isArray(value)) return value.flatMap((one, n) => texts(one, `${path}.${n}`));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => texts(one, `${path}.${key}`));
}

/** One call of a function of the catalogue. */
interface Call {
  readonly path: readonly string[];
  readonly facts: readonly unknown[];
}

/** A catalogue that notes what is asked of it. */
function noting<T extends object>(words: T, calls: Call[], path: readonly string[] = []): T {
  return Object.fromEntries(
    Object.entries(words).map(([key, value]: [string, unknown]) => {
      const at = [...path, key];
      if (typeof value === 'function') {
        const say = value as (...facts: unknown[]) => unknown;
        return [
          key,
          (...facts: unknown[]) => {
            calls.push({ path: at, facts });
            return say(...facts);
          },
        ];
      }
      const inner = typeof value === 'object' && value !== null && !Array.isArray(value);
      return [key, inner ? noting(value, calls, at) : value];
    }),
  ) as T;
}

const frame: Frame = {
  kind: 'half-round',
  widthMm: 30,
  heightMm: 16,
  fixing: 'sewn',
  ratio: 1.15,
  gatherPercent: 0,
};

/** Patterns that together make a booklet say nearly everything that it can. */
function patterns(): [Pattern, Edition][] {
  const plain = panelSheet({ wedges: 7, rounds: 12 }, 6).pattern;
  const [front] = plain.panels;
  const holes = front.rounds.map((marks, n) =>
    n === 4 ? `${bareMark}${undecidedMark}${marks.slice(2)}` : marks,
  );
  const two: Pattern = {
    ...plain,
    shape: { ...plain.shape, hand: 'left', beadsFace: 'toward', construction: 'joined' },
    panels: [front, { ...front, name: 'back', startDegrees: -front.startDegrees }],
  };
  const long = panelSheet({ wedges: 7, rounds: 36 }, 5).pattern;
  const alike: Pattern = {
    ...plain,
    panels: [{ ...front, rounds: front.rounds.map((_, n) => `${'A'.repeat(n)}B`.repeat(7)) }],
  };
  return [
    [plain, {}],
    [
      { ...plain, panels: [{ ...front, rounds: holes }] },
      { grey: true, large: true },
    ],
    [two, { otherHand: 'right' }],
    [{ ...two, frame: { ...frame, widthMm: 60, heightMm: 30 } }, {}],
    [{ ...plain, frame: { ...frame, widthMm: 40, fixing: 'glued', kind: 'oval' } }, {}],
    [long, {}],
    [alike, {}],
  ];
}

async function spoken(): Promise<Call[]> {
  const calls: Call[] = [];
  const { words } = await wordsIn(['en-GB']);
  const noted: Words = noting(words, calls);
  const fonts = await fontsForPages('en-GB', []);
  const facts = { words: noted, each: [noted], languages: ['en-GB'] as const, fonts };
  for (const [pattern, edition] of patterns()) {
    await bookletPdf({ ...facts, pattern, edition, version: '1.2.3', author: 'A. Maker' }, 'a4');
    for (const { steps } of Object.values(noted.hands)) steps(handSaidOf(pattern));
  }
  for (const wish of [{}, { increase: 'first', construction: 'joined', hand: 'left' }] as const) {
    const shape = completeShape({ wedges: 7, rounds: 10, beadDiameterMm: 2.1, ...wish });
    const marks = { fromRound: 2, toRound: 10, markedWedge: 1 };
    swatchGuideSvg({ shape, size: '11/0', ...marks, words: noted, fonts }, 'a4');
  }
  const seen = new Map(calls.map((call) => [JSON.stringify([call.path, call.facts]), call]));
  return [...seen.values()];
}

const asked = await spoken();

/** The whole numbers and decimals of a text from 5 on: smaller ones may be words. */
function figures(text: string, language: Language): string[] {
  const { decimal, group } = marks(language);
  const plain = text
    .replace(new RegExp(`(\\d)[${group}](?=\\d{3}(?!\\d))`, 'gu'), '$1')
    .replace(new RegExp(`(\\d)[${decimal}](?=\\d)`, 'gu'), '$1.');
  return (plain.match(/\d+(\.\d+)?/g) ?? []).filter((one) => Number(one) >= 5).sort();
}
function marks(language: Language) {
  const { count, fixed } = numbersIn(language);
  return { decimal: fixed(0.5, 1)[1], group: count(12345)[2] };
}

const said = (value: unknown): string =>
  texts(value)
    .map(([, text]) => text)
    .join(' | ');

/** Of lengths that stand in inches or yards first, the metric ones alone. */
const metric = (text: string) =>
  text
    .replace(/[\d.,–]+(?: (?:to|x) [\d.,]+)*\u00a0(?:in|yd) \/ /g, '')
    .replace(/[\d.,–]+(?: (?:to|x) [\d.,]+)*\u00a0(?:in|yd) \(([^)]+)\)/g, '$1');

function answer(pages: PageWords, { path, facts }: Call): unknown {
  let at: unknown = pages;
  for (const key of path) at = (at as Record<string, unknown> | undefined)?.[key];
  return typeof at === 'function' ? (at as (...all: unknown[]) => unknown)(...facts) : undefined;
}

test('the booklets of the check ask nearly everything that pages can say', () => {
  const functions = new Set<string>();
  const walk = (value: unknown, path: readonly string[]): void => {
    if (typeof value === 'function') functions.add(path.join('.'));
    else if (typeof value === 'object' && value !== null)
      for (const [key, one] of Object.entries(value)) walk(one, [...path, key]);
  };
  walk(english, []);
  const reached = new Set(asked.map(({ path }) => path.join('.')));
  const missed = [...functions].filter((one) => !reached.has(one));
  expect(missed.length, missed.join(', ')).toBeLessThan(0.25 * functions.size);
});

describe.each(languages)('%s', (language) => {
  test('says everything, with as many rows as English, and names itself', async () => {
    const pages = await loadPages[language]();
    const here = new Map(texts(pages));
    expect([...here.keys()].sort()).toEqual(
      texts(english)
        .map(([path]) => path)
        .sort(),
    );
    for (const [path, text] of here) {
      expect(text.trim(), path).not.toBe('');
      expect(text, path).toBe(text.normalize('NFC'));
    }
    expect(languageNames[language].length).toBeGreaterThan(1);
  });

  test('figures are those of the English texts', async () => {
    const pages = await loadPages[language]();
    const here = new Map(texts(pages));
    for (const [path, text] of texts(english)) {
      // Half an hour is 30 minutes in Japanese.
      if (language === 'ja' && text.includes('half hour')) continue;
      expect(figures(metric(here.get(path)!), language), path).toEqual(figures(text, 'en-GB'));
    }
    for (const call of asked) {
      const wanted = answer(english, call);
      if (wanted === undefined) continue;
      const got = answer(pages, call);
      const where = `${call.path.join('.')} ${JSON.stringify(call.facts)}`;
      expect(said(got).trim(), where).not.toBe('');
      expect(said(got), where).not.toMatch(/undefined|NaN|\[object/);
      // Inches that stand behind already come first there.
      const behind = language === 'en-US' ? / \([\d.–]+ in\)/g : /$^/;
      expect(figures(metric(said(got)), language), `${where}: ${said(got)}`).toEqual(
        figures(said(wanted).replace(behind, ''), 'en-GB'),
      );
    }
  });

  test('is not English where it is another language', async () => {
    if (language.startsWith('en')) return;
    const pages = await loadPages[language]();
    const here = new Map(texts(pages));
    const long = texts(english).filter(([, text]) => text.split(' ').length > 4);
    for (const [path, text] of long) expect(here.get(path), path).not.toBe(text);
  });

  test('no word of a table head is too long for its column, in usual and in large print', async () => {
    // Japanese and Chinese break anywhere.
    if (language === 'ja' || language === 'zh') return;
    const { words, each } = await wordsIn([language]);
    const fonts = await fontsForPages(language, []);
    for (const large of [false, true]) {
      const look = lookOf('letter', fonts, { large });
      const style = { ...look.small, face: fonts.bold };
      for (const [pattern, edition] of patterns()) {
        const facts = { pattern, words, each, languages: [language] as const, fonts, edition };
        const flow = new Flow(look, [language], words.booklet.continued);
        const columns = [
          ...beadColumns(flow, { ...facts, version: '' }),
          ...roundColumns(flow, { ...facts, version: '' }, true),
          ...stringingColumns(flow, { ...facts, version: '' }, true),
        ];
        for (const column of columns) {
          for (const word of column.head.split(' ')) {
            expect(textWidth(word, style), word).toBeLessThanOrEqual(roomIn(column) + 1e-9);
          }
        }
      }
    }
  });

  test('every letter of its texts is in the bundled fonts', async () => {
    const pages = await loadPages[language]();
    const fonts = await fontsForPages(language, []);
    const spokenHere = asked.map((call) => said(answer(pages, call) ?? ''));
    const letters = new Set([...texts(pages).map(([, text]) => text), ...spokenHere].join(''));
    for (const letter of letters) {
      if (letter.trim() === '') continue;
      expect(fonts.regular.has(letter) && fonts.bold.has(letter), letter).toBe(true);
    }
  });
});

test('plural forms are those of CLDR: one, few and many where a language has them', () => {
  const forms = { one: 'one', few: 'few', many: 'many', other: 'other' };
  const of = (language: Language) =>
    [1, 2, 5, 11, 21, 22, 25, 101].map((n) => numbersIn(language).form(n, forms)).join(' ');
  // Unicode CLDR, language plural rules, cardinals.
  expect(of('en-GB')).toBe('one other other other other other other other');
  expect(of('cs')).toBe('one few other other other other other other');
  expect(of('pl')).toBe('one few many many many few many many');
  expect(of('ru')).toBe('one few many many one few many one');
  expect(of('uk')).toBe('one few many many one few many one');
  expect(of('ja')).toBe('other other other other other other other other');
});

test('numbers are grouped and marked as each language does (CLDR)', () => {
  const of = (language: Language) => {
    const { count, fixed } = numbersIn(language);
    return [count(1470), count(12810), fixed(3.4, 2)].join('|');
  };
  expect(of('en-US')).toBe('1,470|12,810|3.40');
  expect(of('de')).toBe('1.470|12.810|3,40');
  expect(of('cs')).toBe('1\u00a0470|12\u00a0810|3,40');
  expect(of('pl')).toBe('1470|12\u00a0810|3,40');
  expect(of('es')).toBe('1470|12.810|3,40');
  expect(of('ja')).toBe('1,470|12,810|3.40');
});

/** French printers' usage of two-part marks and guillemets (from memory, unchecked). */
test('no line begins with a French mark or ends with an opening guillemet', () => {
  expect(unparted('fil : 2 m ; « dos » !')).toBe(
    'fil\u00a0: 2\u00a0m\u00a0; «\u00a0dos\u00a0»\u00a0!',
  );
  expect(unparted('thread: 2 (two); done')).toBe('thread: 2 (two); done');
});

test('the number of a step stays with its first word, and an hour with its clock', () => {
  expect(unparted('holen. (3) Als Schlinge (1, 2) durch')).toBe(
    'holen. (3)\u00a0Als Schlinge (1, 2)\u00a0durch',
  );
  for (const [text, whole] of [
    ['at about 12 o’clock on', '12\u00a0o’clock'],
    ['etwa bei 12 Uhr.', '12\u00a0Uhr'],
    ['asi na 12. hodině.', '12.\u00a0hodině'],
    ['vers la position 12 h du cadran', '12\u00a0h'],
  ])
    expect(unparted(text)).toContain(whole);
});

test('no line of a list of rounds parts a number from the word for bare stitches', async () => {
  for (const language of languages) {
    const { words } = await wordsIn([language]);
    const { bare } = words.lists;
    const body = `6F 9 ${bare} [${bare} ${bare}] (19 ${bare} [A B]) x 2`;
    const whole = [`9 ${bare}`, `[${bare} ${bare}]`, `19 ${bare}`, ') x 2'];
    for (const one of whole) {
      expect(
        runPieces(body).some((piece) => piece.includes(one)),
        `${language}: ${one}`,
      ).toBe(true);
    }
  }
});

test('nothing that stands on pages is left in English', async () => {
  // English is spelled anew each time, so that its functions are never the same.
  for (const language of languages.filter((one) => !one.startsWith('en'))) {
    const { words } = await wordsIn([language]);
    const pages = await loadPages[language]();
    for (const [part, said] of Object.entries(pages)) {
      expect(words[part as keyof Words], `${language}: ${part}`).toMatchObject(said as object);
    }
  }
});

describe('US English', () => {
  // The inch is 25.4 mm and the yard 0.9144 m exactly (international yard and pound agreement, 1959).
  test.each([
    ['95–100 mm across', '3.7–3.9\u00a0in (95–100\u00a0mm) across'],
    ['About 95–100 mm (3.8–3.9 in) across', 'About 3.7–3.9\u00a0in (95–100\u00a0mm) across'],
    [
      'cut line 109.7 mm, 5 mm all round',
      'cut line 4.32\u00a0in (109.7\u00a0mm), 0.2\u00a0in (5\u00a0mm) all round',
    ],
    ['finish 5 to 10 mm below', 'finish 0.2 to 0.4\u00a0in (5 to 10\u00a0mm) below'],
    ['24 x 13 cm', '9.4 x 5.1\u00a0in (24 x 13\u00a0cm)'],
    ['a tail of 20\u00a0cm.', 'a tail of 7.9\u00a0in (20\u00a0cm).'],
    [
      'take 70.6 m; 1.10 m long',
      'take 77.2\u00a0yd (70.6\u00a0m); 1.20\u00a0yd (1.10\u00a0m) long',
    ],
    ['(77 to 87 mm can do)', '(3.0 to 3.4\u00a0in / 77 to 87\u00a0mm can do)'],
    ['24 x 13 cm (of cloth)', '9.4 x 5.1\u00a0in / 24 x 13\u00a0cm (of cloth)'],
    ['1,200 m', '1,312\u00a0yd (1,200\u00a0m)'],
    ['Crochet hook, 0.6 to 1 mm for 11/0', 'Crochet hook, 0.6 to 1 mm for 11/0'],
  ])('says %j as %j', (text, wanted) => {
    expect(inInches(text)).toBe(wanted);
  });

  test('no length that a tape can measure stands in millimetres, centimetres or metres alone', async () => {
    const pages = await loadPages['en-US']();
    const { lining, swatch: _, ...rest } = pages;
    const { check: _c, marks: _m, ...lined } = lining;
    const all = texts({ ...rest, lining: lined }).map(([, text]) => text);
    for (const call of asked) {
      const [part, inner] = call.path;
      if (part === 'swatch' || (part === 'lining' && ['check', 'marks'].includes(inner))) continue;
      all.push(said(answer(pages, call) ?? ''));
    }
    let lengths = 0;
    for (const text of all) {
      for (const [whole, before, number, unit] of text.matchAll(
        /(\(|\/ )?(?:[\d.,]+(?:–| to | x ))*([\d.,]+)[ \u00a0](mm|cm|m|meters?)\b/g,
      )) {
        const mm =
          Number(number.replaceAll(',', '')) * (unit === 'mm' ? 1 : unit === 'cm' ? 10 : 1000);
        if (mm < 5) continue;
        lengths++;
        expect(['(', '/ '], `${whole} | ${text}`).toContain(before);
      }
    }
    expect(lengths).toBeGreaterThan(100);
  });
});
