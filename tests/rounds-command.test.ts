import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { differenceCiede2000, lab65 } from 'culori';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { letterColours } from '../src/core/pattern/read/from-rounds.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { patternFromRounds } from '../src/core/pattern/read/from-rounds.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { letters } from '../src/core/pattern/marks.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { readRoundList } from '../src/core/pages/lists/read-rounds.js';
import { roundsText } from '../src/core/pages/lists/rounds.js';
import { en } from '../src/words/index.js';
import { swatchText } from '../src/core/swatch/swatch-file.js';
import { anyPattern, patternOf } from './support/patterns.js';
import { inProcess } from './support/run.js';
import { smallSwatch } from './support/swatch.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-rounds-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const palette = readPalette(
  'id,name,hex\nop-1,Colour 1,#112233\nop-2,colour 2,#aa0000\nop-9,Møn (pale),#eeeeff\n',
  'test.csv',
);

/** A pattern from a text alone. */
function made(text: string, more: Partial<Parameters<typeof patternFromRounds>[0]> = {}) {
  return patternFromRounds({
    list: readRoundList(text, 'typed.txt'),
    where: 'typed.txt',
    title: 'typed',
    beads: palette.beads,
    inOrder: false,
    shape: { beadDiameterMm: 2.1 },
    ...more,
  });
}

function refusal(text: string, more?: Parameters<typeof made>[1]): RondureError {
  try {
    made(text, more);
  } catch (error) {
    if (error instanceof RondureError) return error;
    throw error;
  }
  throw new Error('it was read');
}

describe('a list that we wrote', () => {
  it.each([
    {},
    { hand: 'left', increase: 'first', lean: -0.5 },
    { beadsFace: 'toward', construction: 'joined', lean: 0.25 },
    { hand: 'left', beadsFace: 'toward', increase: 'middle', lean: 0 },
    { stitchWidthMm: 3.25, roundHeightMm: 2.1 },
  ] as const)('says the way of working, the title and the beads again: %o', (wish) => {
    const pattern = patternOf(['AAB', 'AB.AC_', 'AAAABCDDD', 'ABCDABCDABC_'], wish);
    pattern.title = 'Barley, moon panel';
    pattern.panels[0].name = 'back';
    const { pattern: got } = made(roundsText(pattern, 0, en));
    expect(got.shape).toEqual(pattern.shape);
    expect(got.title).toBe('Barley, moon panel');
    expect(got.panels[0].name).toBe('back');
    expect(got.panels[0].rounds).toEqual(pattern.panels[0].rounds);
    expect(got.beads.map(({ letter, id, name }) => [letter, id, name])).toEqual([
      ['A', 'op-1', 'Colour 1'],
      ['B', 'op-2', 'colour 2'],
      ['C', 'op-3', 'colour 3'],
      ['D', 'op-4', 'colour 4'],
    ]);
    expect(got.beads[1].hex).toBe('#aa0000');
  });

  it('comes back whole, whatever the pattern', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        const { pattern: got } = made(roundsText(pattern, 0, en));
        expect(got.panels[0].rounds).toEqual(pattern.panels[0].rounds);
        // In fewer rounds the pairs of two kinds of increase can stand in the same places.
        if (pattern.shape.rounds >= 4) {
          expect(got.shape.increase).toBe(pattern.shape.increase);
        }
        expect(checkPattern(got)).toEqual([]);
        expect(parsePattern(patternText(got), 'x')).toEqual(got);
      }),
      { numRuns: 80 },
    );
  });

  it('with any one character changed, put in or left out is read or refused in a sentence', () => {
    const change = fc.record({
      pattern: anyPattern,
      at: fc.nat(100_000),
      remove: fc.nat(2),
      put: fc.oneof(fc.constantFrom(...'()[]x×*,.:_ \nR0A9bI-'), fc.string({ maxLength: 3 })),
    });
    const counts = { read: 0, refused: 0 };
    fc.assert(
      fc.property(change, ({ pattern, at, remove, put }) => {
        const text = roundsText(pattern, 0, en);
        const place = text.indexOf('\nR1 (') + (at % (text.length - text.indexOf('\nR1 (')));
        const changed = text.slice(0, place) + put + text.slice(place + remove);
        let got: Pattern;
        try {
          got = made(changed).pattern;
        } catch (error) {
          expect(error).toBeInstanceOf(RondureError);
          counts.refused++;
          return;
        }
        counts.read++;
        const problems = checkPattern(got).filter(({ code }) => code !== 'letter-out-of-order');
        expect(problems).toEqual([]);
        expect(parsePattern(patternText(got), 'x')).toEqual(got);
      }),
      { numRuns: 500 },
    );
    expect(counts.refused).toBeGreaterThan(50);
    expect(counts.read).toBeGreaterThan(20);
  });
});

describe('a list typed by hand', () => {
  const typed = 'r1: 6 a\nr2: ([a b])x6\nround 3: 18 C\n';

  it('needs no head, counts or brackets', () => {
    const { pattern, warnings } = made(typed);
    expect(pattern.shape).toMatchObject({ wedges: 6, rounds: 3, increase: 'last', hand: 'right' });
    expect(pattern.panels[0].rounds).toEqual(['AAAAAA', 'ABABABABABAB', 'C'.repeat(18)]);
    expect(pattern.beads.map(({ name, hex }) => [name, hex])).toEqual([
      ['colour A', letterColours[0]],
      ['colour B', letterColours[1]],
      ['colour C', letterColours[2]],
    ]);
    expect(warnings).toEqual([]);
  });

  it('takes the beads of --beads in order, and tells when they run out', () => {
    const { pattern, warnings } = made(`${typed}r4: 24d`, { inOrder: true });
    expect(pattern.beads.map(({ id }) => id)).toEqual(['op-1', 'op-2', 'op-9', 'D']);
    expect(warnings).toEqual([{ code: 'bead-made-up', facts: { letter: 'D', name: 'colour D' } }]);
  });

  it('finds beads by id, by name, and by a name with brackets', () => {
    const head = 'The beads:\n A: OP-2\n b = møn (pale)\n C colour 1, 12 beads\n\n';
    const { pattern } = made(head + typed);
    expect(pattern.beads.map(({ id }) => id)).toEqual(['op-2', 'op-9', 'op-1']);
  });

  it('lets options go before what the list says', () => {
    const text = roundsText(patternOf(['AAB', 'ABABAB'], { hand: 'left' }), 0, en);
    const { pattern } = made(text, { shape: { beadDiameterMm: 3, hand: 'right' } });
    expect(pattern.shape.hand).toBe('right');
  });
});

describe('a list that goes against the growth of a panel', () => {
  // Line 1 to 4; 4 wedges: 4, 8, 12 and 16 stitches.
  const sound = [
    'R1 (4 stitches, 4 beads, total 4): 4A',
    'R2 (8 stitches, 8 beads, total 12): ([A B]) x 4',
    'R3 (12 stitches, 11 beads, total 23): (1A [A B]) x 3 1 bare [A B]',
    'R4 (16 stitches, 16 beads, total 39): (2A [A B]) x 4',
  ];
  const broken = (line: number, from: string, to: string) =>
    sound.map((text, n) => (n === line - 1 ? text.replace(from, to) : text)).join('\n');

  it('is refused with line, got and expected', () => {
    expect(made(sound.join('\n')).pattern.shape.wedges).toBe(4);
    const cases: [text: string, sentence: string][] = [
      [broken(3, 'x 3', 'x 2'), 'Line 3: round 3 has 9 stitches, expected 12 (4 wedges of 3).'],
      [
        broken(3, '11 beads', '12 beads'),
        'Line 3: round 3 says 12 beads, expected 11 by its letters.',
      ],
      [
        broken(4, 'total 39', 'total 40'),
        'Line 4: round 4 says a total of 40 beads, expected 39 by its letters.',
      ],
      [
        broken(2, '8 stitches', '9 stitches'),
        'Line 2: round 2 says 9 stitches, expected 8 by its letters.',
      ],
      [
        broken(4, '(2A [A B]) x 4', '(1A [A A] 1B) x 2 (2A [A B]) x 2'),
        'Line 4: in round 4 a pair in square brackets is stitch 2 and 3, expected 3 and 4 (increase in the last stitch of each wedge).',
      ],
      [
        broken(4, '(2A [A B]) x 4', '[A A] [A B] (2A [A B]) x 3'),
        'Line 4: round 4 has 5 pairs in square brackets, expected 4, one in each wedge.',
      ],
      [
        broken(1, ': 4A', ': [A A] 2A'),
        'Line 1: round 1 has 1 pair in square brackets, expected none, since it has no increases.',
      ],
      [
        `The beads:\n  A  sand\n\n${sound.join('\n')}`,
        'Line 5: stitch 2 of round 2 is B, and the list of beads has no B.',
      ],
    ];
    for (const [text, sentence] of cases) {
      const error = refusal(text);
      expect(error.code).toBe('rounds-broken');
      expect(error.message.split('\n')[1]).toBe(`  ${sentence}`);
    }
  });

  it('is told all that is wrong at once, and a wrong total only once', () => {
    const text = broken(2, 'total 12', 'total 13').replace('(2A [A B]) x 4', '15A');
    expect(refusal(text).message.split('\n')).toEqual([
      'typed.txt has 3 problems:',
      '  Line 2: round 2 says a total of 13 beads, expected 12 by its letters.',
      '  Line 3: round 3 says a total of 23 beads, expected 24 by its letters.',
      '  Line 4: round 4 has 15 stitches, expected 16 (4 wedges of 4).',
    ]);
  });

  it('of 80 rounds, all of the wrong length, names every one', () => {
    const text = Array.from({ length: 80 }, (_, n) => `R${n + 1}: ${7 * (n + 1) + 1}A`).join('\n');
    const error = refusal(text, { shape: { beadDiameterMm: 2.1, wedges: 7 } });
    const { problems } = error.facts as { problems: { facts: object }[] };
    expect(problems.map(({ facts }) => facts)).toEqual(
      Array.from({ length: 80 }, (_, n) => ({
        line: n + 1,
        round: n + 1,
        got: 7 * (n + 1) + 1,
        expected: 7 * (n + 1),
        wedges: 7,
      })),
    );
  });

  it('of one round, or of more than 80, is refused', () => {
    expect(refusal('R1: 7A').message).toMatch(/2 to 80/);
    const many = Array.from({ length: 81 }, (_, n) => `R${n + 1}: ${3 * (n + 1)}A`).join('\n');
    expect(refusal(many).message).toMatch(/2 to 80/);
  });
});

describe('rondure rounds', () => {
  it('gives back the pattern that chart made, and takes an edit of its list', async () => {
    const dir = join(folder, 'chart');
    const picture = new URL('../fixtures/barley-moon.svg', import.meta.url).pathname;
    const shape = ['--rounds', '6', '--hand', 'left', '--increase', 'first', '--lean', '-0.4'];
    await inProcess('chart', picture, ...shape, '--quiet', '-o', dir);
    const list = readFileSync(join(dir, 'rounds.txt'), 'utf8');
    const wanted = parsePattern(readFileSync(join(dir, 'pattern.json'), 'utf8'), 'x');
    const out = join(folder, 'again');
    const result = await inProcess('rounds', join(dir, 'rounds.txt'), '--json', '-o', out);
    expect(result.err).toBe('');
    expect(JSON.parse(result.out)).toMatchObject({ stitches: 147, difference: null });
    const got = parsePattern(readFileSync(join(out, 'pattern.json'), 'utf8'), 'x');
    expect({ shape: got.shape, beads: got.beads, title: got.title }).toEqual({
      shape: wanted.shape,
      beads: wanted.beads,
      title: wanted.title,
    });
    const { name, startDegrees, rounds } = wanted.panels[0];
    expect(got.panels).toEqual([{ name, startDegrees, rounds }]);
    expect(readFileSync(join(out, 'rounds.txt'), 'utf8')).toBe(list);
    expect(readFileSync(join(out, 'stringing.csv'))).toEqual(
      readFileSync(join(dir, 'stringing.csv')),
    );
  });

  it.each([
    ['no list', 'a shopping list', [], 3, /holds no list of rounds/],
    ['a slip', 'R1: 3A\nR2: 6A', ['--leen', '0.5'], 2, /Did you mean --lean\?/],
    ['no folder', 'R1: 3A\nR2: 6A', [], 2, /add -o/],
    ['too many wedges', 'R1: 3A\nR2: 6A', ['--wedges', '13', '-o', 'x'], 2, /3 to 12/],
    ['a size of its own', 'R1: 3A\nR2: 6A', ['--rounds', '9', '-o', 'x'], 2, /Unknown option/],
    ['wrong stitches', 'R1: 3A\nR2: 7A\nR3: 9A', ['-o', 'x'], 3, /Line 2: round 2 has 7 stitches/],
    ['a list of one wedge', 'R1: 1A\nR2: 2A', ['-o', 'x'], 4, /3 to 12/],
  ])('refuses %s', async (_why, text, more, code, sentence) => {
    const file = join(folder, 'typed.txt');
    writeFileSync(file, text);
    const argv = more.map((word) => (word === 'x' ? join(folder, 'x') : word));
    const needsFolder = more.length === 0 && code === 3 ? ['--dry-run'] : [];
    const result = await inProcess('rounds', file, ...argv, ...needsFolder);
    expect(result.err).toMatch(sentence);
    expect({ code: result.code, out: result.out }).toEqual({ code, out: '' });
  });
});

it('the colours of letters without beads are far apart, by another implementation', () => {
  expect(letterColours).toHaveLength(letters.length);
  const difference = differenceCiede2000();
  letterColours.forEach((one, n) => {
    for (const other of letterColours.slice(0, n)) {
      expect(difference(lab65(one)!, lab65(other)!), `${one} ${other}`).toBeGreaterThan(10);
    }
  });
});

describe('rounds --like', () => {
  it('keeps back, frame, swatch and thread of the pattern that the list was printed from', async () => {
    const dir = join(folder, 'purse');
    const frame = join(folder, 'frame.json');
    const swatch = join(folder, 'swatch.json');
    writeFileSync(swatch, swatchText(smallSwatch()));
    await inProcess('frame', '--width', '50', '--height', '27', '-o', frame);
    const chart = ['chart', 'fixtures/lighthouse.svg', '--back', 'fixtures/barley-moon.svg'];
    const made = await inProcess(
      ...[...chart, '--rounds', '11', '--frame', frame, '--swatch', swatch, '--quiet', '-o', dir],
    );
    expect(made).toEqual({ code: 0, out: '', err: '' });
    const like = parsePattern(readFileSync(join(dir, 'pattern.json'), 'utf8'), 'like');
    // One stitch of round 1 gets the bead of the next letter.
    const list = readFileSync(join(dir, 'rounds.txt'), 'utf8');
    const round = like.panels[0].rounds[0];
    const edited = round.replace(/./, round.startsWith('A') ? 'B' : 'A');
    const line = /^R1 .*$/m.exec(list)![0];
    const text = list.replace(line, `R1: ${Array.from(edited).join(' ')}`);
    const file = join(folder, 'edited.txt');
    writeFileSync(file, text);
    const out = join(folder, 'edited');
    const argv = ['rounds', file, '--like', join(dir, 'pattern.json'), '--quiet'];
    expect(await inProcess(...argv, '-o', out)).toEqual({ code: 0, out: '', err: '' });
    const again = parsePattern(readFileSync(join(out, 'pattern.json'), 'utf8'), 'again');
    const { choice: _choice, ...kept } = like;
    const rounds = [edited, ...like.panels[0].rounds.slice(1)];
    expect(again).toEqual({ ...kept, panels: [{ ...like.panels[0], rounds }, like.panels[1]] });

    const typed = await inProcess(...argv, '--hand', 'left', '-o', join(folder, 'x'));
    expect(typed.code).toBe(2);
    const other = join(folder, 'other');
    await inProcess('chart', 'fixtures/lighthouse.svg', '--rounds', '9', '--quiet', '-o', other);
    const unlike = await inProcess(
      'rounds',
      file,
      '--like',
      join(other, 'pattern.json'),
      '-o',
      join(folder, 'y'),
    );
    expect(unlike.code).toBe(3);
    expect(unlike.err).toMatch(/number of rounds is 11, the pattern’s 9/);
  });
});
