import fc from 'fast-check';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { patternText } from '../src/core/pattern/serialise.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { alignBeads } from '../src/core/thread/find/align.js';
import { findPlaces } from '../src/core/thread/find/find-place.js';
import { mendString } from '../src/core/thread/find/mend.js';
import { typedRuns } from '../src/core/thread/find/typed-runs.js';
import { panelLengths } from '../src/core/thread/lengths.js';
import { anyPattern, patternOf } from './support/patterns.js';
import { inProcess } from './support/run.js';

const backwards = (text: string) => Array.from(text).reverse().join('');
const cut: fc.Arbitrary<Pattern> = fc
  .tuple(anyPattern, fc.integer({ min: 5, max: 200 }))
  .map(([pattern, lengthBeads]) => ({ ...pattern, thread: { lengthBeads } }));

describe('runs that somebody typed', () => {
  const known = ['A', 'B', 'C'];
  it.each([
    ['3A 2B 1A', 'AAABBA'],
    ['3a,2b; a', 'AAABBA'],
    [' AAB\n2 C ', 'AABCC'],
    ['12A', 'A'.repeat(12)],
    ['(2A b) x 2 [A C] 1 bare 2A', 'AABAABACAA'],
    ['R2 (14 beads, total 14): 2A (1B 1C) x 2\n    3A\nR1 (7 beads, total 21): A', 'AABCBCAAAA'],
    ['R14: 5 beads total 98 · 0.9 g\n☐ 2A 3B\n☐ 1C', 'AABBBC'],
    ['Rd 14: 98 Perlen gesamt 98 · 0,9 g\n2A', 'AA'],
    ['14段：98個 累計 98 · 0.9 g\n2A 1B', 'AAB'],
    ['Okr. 3, część: 9 koralików razem 9\n9C', 'CCCCCCCCC'],
  ])('%j', (text, beads) => expect(typedRuns(text, known)).toBe(beads));
  it.each([
    '',
    ' , ',
    '3',
    '3A 2',
    '0A',
    'A-B',
    '3A!',
    '9999999A',
    'é',
    '3A 2Z',
    'A×3',
    '(3A',
    '3A)',
    '(3A) x 0',
    'R14: 3A 2Z',
  ])('refuses %j in a sentence', (text) =>
    expect(() => typedRuns(text, known)).toThrow(/beads|letters/i),
  );
  it('refuses more beads than a panel can hold', () => {
    expect(() => typedRuns('99999A 99999A', known)).toThrow(/More than 100000/);
  });
});

describe('find your place', () => {
  it('by hand: 7 wedges, three rounds', () => {
    // Round 1 AAB, round 2 ABAACB, working order AABABAACB.
    const pattern = patternOf(['AAB', 'ABAACB']);
    const one = { panel: 0, length: 1, certainAfter: 2 };
    expect(findPlaces(pattern, { beads: 'AB' })).toEqual([
      { ...one, round: 1, stitch: 2, wedge: 2, inWedge: 1, left: 8, leftInPanel: 8 },
      { ...one, round: 2, stitch: 1, wedge: 1, inWedge: 1, left: 6, leftInPanel: 6 },
    ]);
    expect(findPlaces(pattern, { beads: 'AB', worked: true })).toMatchObject([
      { round: 1, stitch: 3, left: 6, certainAfter: 1 },
      { round: 2, stitch: 2, left: 4, certainAfter: 1 },
    ]);
    expect(findPlaces(pattern, { beads: 'CB' })).toMatchObject([
      { round: 2, stitch: 5, left: 2, certainAfter: 0 },
    ]);
    expect(findPlaces(pattern, { beads: 'CC' })).toEqual([]);
  });

  it('bare stitches are passed over, and stitch numbers count them', () => {
    const pattern = patternOf(['AAB', 'A..CCB']);
    expect(findPlaces(pattern, { beads: 'CC' })).toMatchObject([{ round: 2, stitch: 4, left: 3 }]);
    expect(findPlaces(pattern, { beads: 'BAC' })).toMatchObject([{ round: 1, stitch: 3 }]);
  });

  it('beads last worked are found over a join, those on a thread are not', () => {
    const pattern = { ...patternOf(['AAB', 'ACACCA']), thread: { lengthBeads: 6 } };
    expect(panelLengths(pattern, 0).map(({ beads }) => beads)).toEqual(['AABAC', 'ACCA']);
    expect(findPlaces(pattern, { beads: 'ACAC' })).toEqual([]);
    const place = {
      panel: 0,
      length: 2,
      round: 2,
      stitch: 4,
      wedge: 2,
      inWedge: 2,
      left: 2,
      leftInPanel: 2,
    };
    const worked = { beads: 'ACAC', worked: true };
    expect(findPlaces(pattern, worked)).toEqual([{ ...place, certainAfter: 0 }]);
    expect(findPlaces(pattern, { ...worked, length: 2 })).toHaveLength(1);
    expect(findPlaces(pattern, { ...worked, length: 1 })).toEqual([]);
    // What is left of the panel is the same, whichever length is asked for.
    expect(findPlaces(pattern, { beads: 'AAB', length: 1 })).toMatchObject([
      { left: 5, leftInPanel: 9 },
    ]);
  });

  it('a place is always among those found, and certain after the beads it says (brute force)', () => {
    fc.assert(
      fc.property(
        cut,
        fc.nat(),
        fc.integer({ min: 1, max: 9 }),
        fc.boolean(),
        (pattern, at, count, worked) => {
          const lengths = panelLengths(pattern, 0).filter(({ beads }) => beads.length >= count);
          fc.pre(lengths.length > 0);
          const length = lengths[at % lengths.length];
          const from = at % (length.beads.length - count + 1);
          const beads = length.beads.slice(from, from + count);
          const places = findPlaces(pattern, { beads, worked });
          const left = length.beads.length - (worked ? from + count : from);
          const mine = places.findIndex((one) => one.length === length.number && one.left === left);
          expect(mine).toBeGreaterThanOrEqual(0);
          // Every other place must stop to fit by then, and at least one must fit just before.
          const rest = ({ length: number, left: still }: (typeof places)[number]) => {
            const all = panelLengths(pattern, 0).map((one) => one.beads);
            const own = all[number - 1];
            if (!worked) return own.slice(own.length - still + count) + '|';
            const upTo = [...all.slice(0, number - 1), own.slice(0, own.length - still)].join('');
            return backwards(upTo.slice(0, -count)) + '|';
          };
          const after = places[mine].certainAfter;
          const others = places.filter((_, n) => n !== mine).map(rest);
          const own = rest(places[mine]);
          if (after === undefined) expect(others).toContain(own);
          else {
            expect(others.filter((one) => one.startsWith(own.slice(0, after)))).toEqual([]);
            if (after > 0) {
              const before = own.slice(0, after - 1);
              expect(others.some((one) => one.startsWith(before))).toBe(true);
            }
          }
        },
      ),
      { numRuns: 250 },
    );
  });
});

/** Textbook optimal string alignment on the whole matrix. */
function distance(one: string, other: string): number {
  const d = Array.from({ length: one.length + 1 }, (_, i) =>
    Array.from({ length: other.length + 1 }, (_, j) => (i === 0 ? j : j === 0 ? i : 0)),
  );
  for (let i = 1; i <= one.length; i++) {
    for (let j = 1; j <= other.length; j++) {
      const cost = one[i - 1] === other[j - 1] ? 0 : 1;
      d[i][j] = Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + cost);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) {
        d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
      }
    }
  }
  return d[one.length][other.length];
}

/** What the edits make of the thread: the list, if they are right. */
function mended(got: string, edits: NonNullable<ReturnType<typeof alignBeads>>['edits']): string {
  let out = '';
  let at = 0;
  for (const edit of edits) {
    out += got.slice(at, edit.gotAt) + edit.wanted;
    expect(got.slice(edit.gotAt, edit.gotAt + edit.got.length)).toBe(edit.got);
    at = edit.gotAt + edit.got.length;
  }
  return out + got.slice(at);
}

const string = fc.string({ unit: fc.constantFrom('A', 'B', 'C'), maxLength: 60 });

describe('mend a string', () => {
  it('fewest edits, as the whole matrix finds them, and they turn the thread into the list', () => {
    fc.assert(
      fc.property(string, string, (wanted, got) => {
        const found = alignBeads(wanted, got, { most: 200, freeEnd: false })!;
        expect(found.edits).toHaveLength(distance(wanted, got));
        expect(mended(got, found.edits)).toBe(wanted);
      }),
      { numRuns: 500 },
    );
  });

  it('so far: what is still to come costs nothing', () => {
    fc.assert(
      fc.property(string, string, (wanted, got) => {
        const found = alignBeads(wanted, got, { most: 200, freeEnd: true })!;
        const prefixes = Array.from({ length: wanted.length + 1 }, (_, n) => wanted.slice(0, n));
        const least = Math.min(...prefixes.map((prefix) => distance(prefix, got)));
        expect(found.edits).toHaveLength(least);
        expect(mended(got, found.edits)).toBe(wanted.slice(0, found.wanted));
      }),
      { numRuns: 300 },
    );
  });

  it('gives up above the most, and only then', () => {
    fc.assert(
      fc.property(string, string, fc.integer({ min: 1, max: 30 }), (wanted, got, most) => {
        const found = alignBeads(wanted, got, { most, freeEnd: false });
        expect(found !== undefined).toBe(distance(wanted, got) <= most);
      }),
      { numRuns: 300 },
    );
  });

  it('a slip of the needle in a whole panel is found where it is, by bead, round and stitch', () => {
    const rounds = Array.from({ length: 20 }, (_, n) => 'AAABBC'.repeat(20).slice(0, 7 * (n + 1)));
    const pattern = patternOf(rounds, { wedges: 7 });
    const [length] = panelLengths(pattern, 0);
    const list = backwards(length.beads);
    expect(mendString(pattern, { strung: list, panel: 0, length: 1 })).toMatchObject({
      edits: 0,
      repairs: [],
    });
    const at = 300;
    const strung = list.slice(0, at) + list.slice(at + 2);
    const found = mendString(pattern, { strung, panel: 0, length: 1 });
    expect(found.edits).toBe(2);
    const round =
      1 +
      rounds.findIndex(
        (_, n) => rounds.slice(0, n + 1).join('').length > length.beads.length - 1 - at,
      );
    expect(found.repairs[0].kind).toBe('missing');
    expect(Math.abs(found.repairs[0].round - round)).toBeLessThanOrEqual(1);
    const other = mendString(pattern, { strung: backwards(strung), panel: 0, length: 1 });
    expect(other.betterBackwards).toBe(true);
  });
});

describe('on the command line', () => {
  let folder: string;
  let file: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'rondure-place-'));
    file = join(folder, 'pattern.json');
    writeFileSync(file, patternText(patternOf(['AAB', 'ABAACB', 'AAABBBCCC'])));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('find tells the only place, several places, and none', async () => {
    const one = await inProcess('find', file, '1c 1b');
    expect(one.out).toBe(
      'Only one place fits.\n  Here: next is stitch 5 of round 2 (wedge 3, stitch 1 in it), 11 beads left on the thread\n',
    );
    const several = await inProcess('find', file, '1A', '1B');
    expect(several.out).toMatch(/^3 places fit\. Read up to 2 beads more on along the thread/);
    const none = await inProcess('find', file, '4B');
    expect(none).toMatchObject({ code: 0, err: '' });
    expect(none.out).toMatch(/comes nowhere like that/);
    const json = JSON.parse((await inProcess('find', file, 'AB', '--json')).out);
    expect(json).toMatchObject({ schema: 'rondure-places', certain: false });
    expect(json.places).toHaveLength(3);
  });

  it('mend says what is wrong, where, and how to live with it, with its caution', async () => {
    const right = await inProcess('mend', file, '3C 3B 3A 1B 1C 2A 1B 1A 1B 2A');
    expect(right.out).toBe('All 18 beads are as in the list of length 1.\n');
    const wrong = await inProcess('mend', file, '3C 3B 4A 1B 1C 2A 1B 1A 1B 2A');
    expect(wrong.out).toContain('One A too many in run 3: 3A in the list, 4A on the thread');
    expect(wrong.out).toContain('goggles');
    const soFar = await inProcess('mend', file, '3C 2B 3A 1B', '--so-far');
    expect(soFar.out).toContain('One B short in run 2: 3B in the list, 2B on the thread');
    const first = await inProcess('mend', file, '2C 3B 3A', '--so-far');
    expect(first.out).toMatch(
      /^1 bead needs mending \(list 9 beads, thread 8 beads\)\.\n {2}One C short in the first run: 3C in the list, 2C on the thread \(stitch 9 of round 3; wedge 3, stitch 3 in it\)/,
    );
    const gone = await inProcess('mend', file, '3C 3A 1B 1C 2A 1B 1A 1B 2A');
    expect(gone.out).toContain('After bead 3: 3B missing');
    const json = JSON.parse((await inProcess('mend', file, '3C', '--so-far', '--json')).out);
    expect(json).toMatchObject({ schema: 'rondure-mending', edits: 0, repairs: [] });
  });

  it.each([
    [['find', 'FILE', '3X'], 2, 'no bead X'],
    [['find', 'FILE', '3A', '--panel', 'back'], 2, 'no panel'],
    [['find', 'FILE', '3A', '--length', '7'], 2, 'no length 7'],
    [['mend', 'FILE', '3A', '--length', '2'], 2, 'no length 2'],
    [['mend', 'FILE', '?'], 2, 'cannot be read'],
    [['mend', '-', '-'], 2, 'contradict'],
    [['find', 'nowhere.json', '3A'], 3, 'nowhere.json'],
  ] as const)('%j: exit %i and one sentence', async (argv, code, text) => {
    const told = await inProcess(...argv.map((word) => (word === 'FILE' ? file : word)));
    expect(told.code).toBe(code);
    expect(told.err).toContain(text);
    expect(told.err.trim().split('\n')).toHaveLength(1);
  });
});
