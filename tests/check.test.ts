import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { findProblems } from '../src/core/pattern/read/find-problems.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { patternKeyword } from '../src/node/output/pattern-files.js';
import { withPngText } from '../src/core/pages/surface/png-text.js';
import { encodePng } from '../src/node/output/rasterise.js';
import { patternTextIn } from '../src/node/read/read-pattern.js';
import { patternOf, someBeads } from './support/patterns.js';
import { thumbnailPng } from '../src/core/picture/thumbnail.js';
import { inProcess } from './support/run.js';
import { smallSwatch } from './support/swatch.js';
import { paint } from './support/paint.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-check-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const utf8 = (text: string) => new TextEncoder().encode(text);

/** A small pattern with every part, and letters of two and four bytes in its names. */
function smallPattern(): Pattern {
  const pattern = patternOf(['AAB', 'AB.AC_', 'AAAABCDDD']);
  pattern.title = 'Møn 月';
  pattern.swatch = smallSwatch();
  pattern.panels[0].picture = {
    file: 'moon.png',
    width: 1200,
    height: 900,
    art: 'drawing',
    background: 'bare',
    thumbnail: thumbnailPng({ width: 1, height: 1, data: new Uint8Array(4).fill(255) }),
    place: { mmPerPixel: 0.1, centreXmm: 0, centreYmm: -0.5, rotateDegrees: 90, mirror: true },
  };
  pattern.choice = {
    objective: 3.21,
    lowerBound: 3.2,
    gap: 0.003,
    proven: false,
    method: 'greedy',
  };
  return pattern;
}

/** Writes a pattern, after a change, and checks it. */
async function checked(change: (json: ReturnType<typeof JSON.parse>) => void, ...more: string[]) {
  const json = JSON.parse(patternText(smallPattern()));
  change(json);
  const file = join(folder, 'pattern.json');
  writeFileSync(file, JSON.stringify(json));
  return inProcess('check', file, ...more);
}

/** What parsePattern and findProblems say; both must agree, and nothing but our errors may come. */
function verdict(text: string): 'sound' | 'broken' {
  const ours = (work: () => boolean) => {
    try {
      return work();
    } catch (error) {
      expect(error).toBeInstanceOf(RondureError);
      expect((error as Error).message.length).toBeLessThan(2000);
      return false;
    }
  };
  const parsed = ours(() => parsePattern(text, 'x') !== undefined);
  const found = ours(() => {
    const { problems, pattern } = findProblems(text, 'x');
    expect(pattern === undefined).toBe(problems.length > 0);
    return problems.length === 0;
  });
  expect(found).toBe(parsed);
  return parsed ? 'sound' : 'broken';
}

describe('rondure check', () => {
  it('says that a sound pattern is sound, and its counts', async () => {
    const result = await checked(() => undefined);
    // 3 + 6 + 9 stitches, of which one is bare and one is open.
    const said = '“Møn 月” is sound: 3 wedges, 3 rounds, 18 stitches, 16 beads.\n';
    expect(result).toEqual({ code: 0, out: said, err: '' });
    const { code, out } = await checked(() => undefined, '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ schema: 'rondure-check', sound: true, stitches: 18 });
    expect(await checked(() => undefined, '--quiet')).toEqual({ code: 0, out: '', err: '' });
  });

  it('passes no letters that redraw could not draw, and tells what it would leave out', async () => {
    const moon = await checked((json) => (json.title = 'Møn 🌕'));
    expect([moon.code, moon.out]).toEqual([3, '']);
    expect(moon.err).toContain('no "🌕" (U+1F315)');
    const damaged = await checked((json) => (json.panels[0].picture.thumbnail = 'iVBORw0KGgo='));
    expect(damaged.code).toBe(0);
    expect(damaged.out).toMatch(/small picture that the pattern keeps is damaged/);
  });

  it('prints no control characters, whatever stands in titles and names', async () => {
    const hidden = await checked((json) => {
      json.title = 'Barley\u001b[31m\u0000 moon\u202e';
      json.beads[0].name = 'sand\u0007';
    });
    expect([hidden.code, hidden.err]).toEqual([0, '']);
    expect(hidden.out).toContain('“Barley [31m moon”');
  });

  it('nor does any command, whatever stands in a palette', async () => {
    const palette = join(folder, 'hidden.csv');
    const head = 'id;name;hex;colo\u202eur\u001b[31m note;\u0085grams\n';
    writeFileSync(palette, `${head}a;sand;#d9b36a;b;4\nb;sea\u0007;#1f7fa8;;\n`);
    for (const argv of [
      ['beads', palette],
      ['beads', palette, '--json'],
    ]) {
      const { out, err, code } = await inProcess(...argv);
      expect([0, 3]).toContain(code);
      expect(out).toContain('sand');
      // eslint-disable-next-line no-control-regex
      expect(out + err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
      if (argv.length === 3) expect(JSON.stringify(JSON.parse(out))).toContain('sand');
    }
  });

  it('takes letters out of order and beads that no stitch carries for what they are: sound', async () => {
    const result = await checked((json) => {
      json.beads.reverse();
      json.beads.push({ letter: 'X', id: 'x', name: 'spare', hex: '#123456' });
    });
    expect(result.code).toBe(0);
    expect(result.out).toMatch(/is sound/);
    expect(result.out).toMatch(/Note: Bead 1 of the list has the letter D/);
  });

  it('names everything that is wrong, with round and stitch', async () => {
    const breakIt = (json: ReturnType<typeof JSON.parse>) => {
      json.shape.hand = 'both';
      json.colour = 'red';
      json.beads[1].hex = 'teal';
      json.beads[3].letter = 'A';
      const { rounds } = json.panels[0];
      rounds[0] = 'A B';
      rounds[1] = 'AB.AC';
      rounds[2] = 'AAAABCDDI';
    };
    const { code, out, err } = await checked(breakIt);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    const [head, ...lines] = err.trimEnd().split('\n');
    expect(head).toMatch(/^Error: .*pattern\.json has 8 problems:$/);
    expect(lines.map((line) => line.trim()).sort()).toEqual(
      [
        'shape.hand: expected "right" or "left".',
        'beads[1].hex: expected a colour as #rrggbb in small letters.',
        'In the file: the name "colour" is not known.',
        'Beads 1 and 4 of the list both have the letter A: give one of them another.',
        'Stitch 2 of round 1 of the front panel is “U+0020”, and no bead has that letter.',
        'Round 2 of the front panel has 5 stitches; it needs 6.',
        'Stitches 7 and 8 of round 3 of the front panel are “D”, and no bead has that letter.',
        'Stitch 9 of round 3 of the front panel is “I”, and no bead has that letter.',
      ].sort(),
    );
    const json = await checked(breakIt, '--json');
    expect(json.code).toBe(3);
    const { error } = JSON.parse(json.err);
    expect(error.code).toBe('pattern-broken');
    expect(error.facts.problems).toHaveLength(8);
    expect(error.facts.problems).toContainEqual({
      code: 'round-length',
      facts: { panel: 'front', round: 2, got: 5, expected: 6 },
    });
    expect(error.message).toContain('Round 2 of the front panel has 5 stitches; it needs 6.');
  });

  it('goes on past a round that is no text', async () => {
    const { err } = await checked((json) => {
      json.panels[0].rounds[0] = 7;
      json.panels[0].rounds[2] += 'A';
    });
    expect(err).toMatch(/Round 1 of the front panel should be letters between quotation marks/);
    expect(err).toMatch(/Round 3 of the front panel has 10 stitches; it needs 9/);
  });

  it('names all of 80 rounds of the wrong length', async () => {
    const pattern = patternOf(
      Array.from({ length: 80 }, (_, n) => 'A'.repeat(12 * (n + 1))),
      { outline: 'circle' },
      someBeads(1),
    );
    pattern.panels[0].rounds = pattern.panels[0].rounds.map((marks, n) =>
      n % 2 ? marks.slice(1) : `${marks}A`,
    );
    const file = join(folder, 'eighty.json');
    writeFileSync(file, patternText(pattern));
    const { code, err } = await inProcess('check', file, '--json');
    expect(code).toBe(3);
    const { problems } = JSON.parse(err).error.facts;
    expect(problems.map(({ facts }: { facts: unknown }) => facts)).toEqual(
      Array.from({ length: 80 }, (_, n) => {
        const expected = 12 * (n + 1);
        return { panel: 'front', round: n + 1, got: expected + (n % 2 ? -1 : 1), expected };
      }),
    );
  });

  it.each([
    ['nowhere.json', [], 3, /is not there/],
    ['pattern.json', ['--json', '--quiet'], 2, /contradict/],
    ['pattern.json', ['--jsn'], 2, /Did you mean --json\?.*rondure check --help/],
  ])('refuses %s %o in one sentence', async (name, more, code, sentence) => {
    const result = await inProcess('check', join(folder, name), ...more);
    expect(result.err).toMatch(sentence);
    expect({ code: result.code, out: result.out }).toEqual({ code, out: '' });
    expect(result.err.trim().split('\n')).toHaveLength(1);
  });
});

describe('patterns that are damaged', () => {
  const text = patternText(smallPattern());
  const json = JSON.parse(text);

  it('cut off at any byte are refused in a sentence', () => {
    const bytes = utf8(text);
    for (let end = 1; end < bytes.length - 1; end++) {
      let given: string;
      try {
        given = patternTextIn(bytes.subarray(0, end), 'x');
      } catch (error) {
        // In the middle of a letter of several bytes.
        expect(error).toMatchObject({ code: 'text-not-unicode' });
        continue;
      }
      expect(verdict(given), `cut at ${end}`).toBe('broken');
    }
    expect(verdict(text)).toBe('sound');
  });

  /** Every place in the pattern, as the steps that lead there. */
  const places: (string | number)[][] = [];
  const visit = (value: unknown, path: (string | number)[]) => {
    places.push(path);
    if (Array.isArray(value)) value.forEach((one, index) => visit(one, [...path, index]));
    else if (typeof value === 'object' && value !== null) {
      for (const [key, one] of Object.entries(value)) visit(one, [...path, key]);
    }
  };
  visit(json, []);

  /** The pattern with the value at one place replaced. */
  const withValue = (path: (string | number)[], value: unknown): unknown => {
    if (path.length === 0) return value;
    const copy = structuredClone(json);
    let parent = copy;
    for (const step of path.slice(0, -1)) parent = parent[step];
    parent[path[path.length - 1]] = value;
    return copy;
  };

  it('with any value swapped for any other are read or refused, the same by redraw and check', () => {
    const other = fc.oneof(
      fc.constantFrom(null, true, 0, -1, 1.5, 7, 1e308, '', 'A', 'AB.', 'polygon', [], {}, [[]]),
      fc.jsonValue({ maxDepth: 3 }),
      fc.constantFrom(...places).map((path) => path.reduce((at, step) => at[step], json)),
    );
    const counts = { sound: 0, broken: 0 };
    fc.assert(
      fc.property(fc.constantFrom(...places), other, (path, value) => {
        counts[verdict(JSON.stringify(withValue(path, value)))]++;
      }),
      { numRuns: 1500 },
    );
    expect(counts.broken).toBeGreaterThan(700);
  });

  it('with a foreign key anywhere outside the free parts are refused by its name', () => {
    const records = places.filter((path) => {
      const at = path.reduce((value, step) => value[step], json);
      return typeof at === 'object' && !Array.isArray(at) && path[0] !== 'swatch';
    });
    const key = fc.oneof(
      fc.string({ minLength: 1, maxLength: 20 }),
      fc.constantFrom('constructor', 'toString', 'hasOwnProperty', 'Title', 'rounds '),
    );
    fc.assert(
      fc.property(fc.constantFrom(...records), key, fc.jsonValue(), (path, name, value) => {
        const copy = structuredClone(json);
        const record = path.reduce((at, step) => at[step], copy);
        fc.pre(!Object.hasOwn(record, name) && name !== '__proto__');
        fc.pre(!['frame', 'thread', 'swatch', 'grams', 'price', 'packGrams'].includes(name));
        fc.pre(!['finish', 'repeat'].includes(name));
        record[name] = value;
        expect(verdict(JSON.stringify(copy))).toBe('broken');
      }),
      { numRuns: 400 },
    );
  });

  it('of any bytes at all are refused', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 60 }), (bytes) => {
        try {
          parsePattern(patternTextIn(bytes, 'x'), 'x');
        } catch (error) {
          expect(error).toBeInstanceOf(RondureError);
          return;
        }
        throw new Error('it was read');
      }),
      { numRuns: 500 },
    );
  });

  it('in a PNG with bytes changed or cut off are refused or read as they were', async () => {
    const png = withPngText(await encodePng(paint(4, 4, () => [1, 2, 3])), patternKeyword, text);
    expect(patternTextIn(png, 'x')).toBe(text);
    const change = fc.record({ at: fc.nat(png.length - 1), value: fc.nat(255), cut: fc.boolean() });
    fc.assert(
      fc.property(change, ({ at, value, cut }) => {
        const bytes = Uint8Array.from(cut ? png.subarray(0, at + 1) : png);
        if (!cut) bytes[at] = value;
        try {
          expect(parsePattern(patternTextIn(bytes, 'x'), 'x')).toEqual(smallPattern());
        } catch (error) {
          expect(error).toBeInstanceOf(RondureError);
        }
      }),
      { numRuns: 600 },
    );
  });
});

describe('text that editors write', () => {
  const text = patternText(smallPattern());

  it('is read with a byte order mark and in UTF-16', () => {
    const little = Buffer.from(`\uFEFF${text}`, 'utf16le');
    const big = Buffer.from(little).swap16();
    for (const bytes of [utf8(`\uFEFF${text}`), little, big]) {
      expect(parsePattern(patternTextIn(bytes, 'x'), 'x')).toEqual(smallPattern());
    }
  });

  it('is refused in a sentence in other encodings', () => {
    const latin = Buffer.from(text.replace(/月/u, ''), 'latin1');
    expect(() => patternTextIn(latin, 'moon.json')).toThrow(/moon\.json is not plain text/);
  });
});
