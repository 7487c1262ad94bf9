import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { checkPattern, problemSentence } from '../src/core/pattern/read/check.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { patternText } from '../src/core/pattern/serialise.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { en } from '../src/words/index.js';
import { anyPattern, patternOf, someBeads } from './support/patterns.js';
import { smallSwatch } from './support/swatch.js';

/** A pattern with every optional part. */
function wholePattern(): Pattern {
  const pattern = patternOf(['AAB', 'AB.AC_', 'AAAABCDDD']);
  Object.assign(pattern.beads[0], { finish: 'opaque', grams: 0, price: 1.9, packGrams: 10 });
  pattern.panels[0].startDegrees = -24.459184;
  pattern.panels[0].picture = {
    file: 'moon.png',
    width: 1200,
    height: 900,
    art: 'drawing',
    background: 'bare',
    thumbnail: 'iVBORw0KGgo=',
    place: { mmPerPixel: 1e-7, centreXmm: 0, centreYmm: -0.5, rotateDegrees: 90, mirror: true },
  };
  pattern.choice = {
    objective: 3.21,
    lowerBound: 3.2,
    gap: 0.003,
    proven: false,
    method: 'greedy',
  };
  pattern.swatch = smallSwatch();
  return pattern;
}

function refusal(text: string): RondureError {
  try {
    parsePattern(text, 'moon/pattern.json');
  } catch (error) {
    if (error instanceof RondureError) return error;
    throw error;
  }
  throw new Error('it was read');
}

/** The text of the whole pattern with one change. */
function changed(change: (json: Record<string, never>) => void): string {
  const json = JSON.parse(patternText(wholePattern())) as Record<string, never>;
  change(json);
  return JSON.stringify(json);
}

describe('patternText and parsePattern', () => {
  it('go round, text to text and pattern to pattern', () => {
    const pattern = wholePattern();
    const text = patternText(pattern);
    expect(parsePattern(text, 'x')).toEqual(pattern);
    expect(patternText(parsePattern(text, 'x'))).toBe(text);
    expect(JSON.parse(text)).toEqual(pattern);
    expect(text.endsWith('}\n')).toBe(true);
    expect(text).not.toContain('\r');
  });

  it('go round for any pattern', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        expect(parsePattern(patternText(pattern), 'x')).toEqual(pattern);
      }),
      { numRuns: 60 },
    );
  });

  it('keep the order of keys whatever order they were given in', () => {
    const pattern = wholePattern();
    const backwards = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(backwards);
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, inner]) => [key, key === 'swatch' ? inner : backwards(inner)]),
      );
    };
    expect(patternText(backwards(pattern) as Pattern)).toBe(patternText(pattern));
    expect(Object.keys(JSON.parse(patternText(pattern)) as object)).toEqual([
      'format',
      'version',
      'title',
      'shape',
      'beads',
      'panels',
      'choice',
      'swatch',
    ]);
  });

  it('write one round a line, indented by two', () => {
    expect(patternText(wholePattern())).toContain(
      '      "rounds": [\n        "AAB",\n        "AB.AC_",\n        "AAAABCDDD"\n      ]\n',
    );
  });

  it('write any number as plain decimals that read back the same', () => {
    const pattern = wholePattern();
    expect(patternText(pattern)).toContain('"mmPerPixel": 0.0000001,');
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
        pattern.panels[0].startDegrees = number;
        const text = patternText(pattern);
        const written = /"startDegrees": (.*),\n/.exec(text)?.[1] ?? '';
        expect(written).toMatch(/^-?\d+(\.\d+)?$/);
        expect(Number(written)).toBe(number + 0);
      }),
      { numRuns: 300 },
    );
  });

  it('leave out what is undefined', () => {
    const pattern = { ...wholePattern(), frame: undefined } as unknown as Pattern;
    expect(patternText(pattern)).toBe(patternText(wholePattern()));
  });
});

describe('parsePattern refuses', () => {
  it.each([
    ['', 'pattern-not-json'],
    ['{"format": "rondure-pattern",', 'pattern-not-json'],
    ['<svg/>', 'pattern-not-json'],
    ['\u0000\u0001', 'pattern-not-json'],
    ['[]', 'pattern-not-ours'],
    ['null', 'pattern-not-ours'],
    ['"rondure-pattern"', 'pattern-not-ours'],
    ['{"format":"other"}', 'pattern-not-ours'],
    ['{"format":"rondure-pattern","version":2}', 'pattern-too-new'],
    ['{"format":"rondure-pattern","version":0}', 'pattern-invalid'],
    ['{"format":"rondure-pattern","version":"2"}', 'pattern-invalid'],
    ['{"format":"rondure-pattern"}', 'pattern-invalid'],
  ])('%j as %s', (text, code) => {
    const error = refusal(text);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(/^moon\/pattern\.json /);
    expect(error.message.length).toBeLessThan(420);
  });

  // The sentence is ours: each names the path and says what should stand there.
  it.each([
    ['title: it is missing', changed((json) => delete json.title)],
    ['the name "colour" is not known', changed((json) => Object.assign(json, { colour: 1 }))],
    [
      'beads[1]: the name "hue" is not known',
      changed((j) => Object.assign(j.beads[1], { hue: 1 })),
    ],
    ['shape.wedges: expected 12 or less', changed((j) => Object.assign(j.shape, { wedges: 13 }))],
    ['shape.rounds: expected 2 or more', changed((j) => Object.assign(j.shape, { rounds: 0 }))],
    ['shape.wedges: expected number', changed((j) => Object.assign(j.shape, { wedges: '7' }))],
    ['shape.hand: expected "right" or "left"', changed((j) => Object.assign(j.shape, { hand: 1 }))],
    [
      'shape.lean: expected a number from -1 to 1',
      changed((j) => Object.assign(j.shape, { lean: 2 })),
    ],
    ['title: expected at least 1 characters', changed((j) => Object.assign(j, { title: '' }))],
    ['panels: expected at least 1 entries', changed((j) => Object.assign(j, { panels: [] }))],
    ['beads[0].hex: expected a colour', changed((j) => Object.assign(j.beads[0], { hex: 'red' }))],
    [
      'panels[0].rounds[1]: expected letters',
      changed((j) => Object.assign((j.panels[0] as { rounds: string[] }).rounds, { 1: 'AI' })),
    ],
    [
      'Round 2 of the front panel has 5 stitches; it needs 6',
      changed((j) => Object.assign((j.panels[0] as { rounds: string[] }).rounds, { 1: 'AAAAA' })),
    ],
    [
      'no bead has that letter',
      changed((j) => Object.assign((j.panels[0] as { rounds: string[] }).rounds, { 0: 'AAZ' })),
    ],
  ])('with “%s”', (sentence, text) => {
    const error = refusal(text);
    expect(error.code).toBe('pattern-invalid');
    expect(error.message).toContain(sentence);
  });

  it('text nested without end, in no time', () => {
    const deep = '['.repeat(50_000) + ']'.repeat(50_000);
    const error = refusal(changed(() => undefined).replace('"swatch":{', `"swatch":{"x":${deep},`));
    expect(['pattern-invalid', 'pattern-not-json']).toContain(error.code);
  });

  it('nothing for a byte order mark, and lets no key reach the prototype', () => {
    const text = patternText(wholePattern());
    expect(parsePattern(`\uFEFF${text}`, 'x')).toEqual(wholePattern());
    const evil = text.replace('"stitches": 20,', '"stitches": 20, "__proto__": { "polluted": 1 },');
    const read = parsePattern(evil, 'x');
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
    expect((read.swatch as { polluted?: number }).polluted).toBeUndefined();
    const top = refusal(text.replace('{', '{ "__proto__": { "polluted": 1 },'));
    expect(top.message).toContain('"__proto__"');
    expect(refusal(text.replace('{', '{ "constructor": 1,')).message).toContain('"constructor"');
  });
});

describe('checkPattern', () => {
  const problems = (change: (pattern: Pattern) => void) => {
    const pattern = wholePattern();
    change(pattern);
    return checkPattern(pattern);
  };

  it('finds nothing wrong with sound patterns', () => {
    expect(problems(() => undefined)).toEqual([]);
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        expect(checkPattern(pattern)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('finds rounds that are missing, short or long', () => {
    expect(problems(({ panels }) => panels[0].rounds.pop())).toEqual([
      { code: 'round-count', facts: { panel: 'front', got: 2, expected: 3 } },
    ]);
    expect(problems(({ panels }) => (panels[0].rounds[2] += 'AA'))).toEqual([
      { code: 'round-length', facts: { panel: 'front', round: 3, got: 11, expected: 9 } },
    ]);
  });

  it('finds letters without a bead, and counts for people', () => {
    const [problem] = problems((pattern) => pattern.beads.splice(2, 1));
    expect(problem).toEqual({
      code: 'letter-out-of-order',
      facts: { letter: 'D', bead: 3, expected: 'C' },
    });
    expect(problems((pattern) => pattern.beads.splice(3, 1))).toEqual([
      {
        code: 'letter-unknown',
        facts: { panel: 'front', round: 3, stitches: [7, 8, 9], letter: 'D' },
      },
    ]);
  });

  it('finds a letter used for two beads', () => {
    const found = problems((pattern) => (pattern.beads[3].letter = 'A'));
    expect(found[0]).toEqual({ code: 'letter-twice', facts: { letter: 'A', first: 1, second: 4 } });
  });

  it('finds polygons without corners and panels of one name', () => {
    const found = problems((pattern) => {
      Object.assign(pattern.shape, { outline: 'polygon', increase: 'middle' });
      pattern.panels.push(structuredClone(pattern.panels[0]));
    });
    expect(found.map(({ code }) => code)).toEqual(['polygon-middle-increase', 'panel-name-twice']);
  });

  it('says each problem in a sentence', () => {
    const found = [
      ...problems(({ panels }) => panels[0].rounds.pop()),
      ...problems(({ panels }) => (panels[0].rounds[2] += 'A')),
      ...problems((pattern) => pattern.beads.splice(2, 2)),
      ...problems((pattern) => (pattern.beads = someBeads(4).reverse())),
    ];
    for (const problem of found) expect(problemSentence(en, problem)).toMatch(/^[A-Z].*\.$/);
    expect(problemSentence(en, found[0])).toBe(
      'The front panel has 2 rounds where its shape says 3.',
    );
  });
});
