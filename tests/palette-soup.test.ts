import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { paletteCsv } from '../src/core/beads/palette/palette-csv.js';
import { readPalette, surveyPalette } from '../src/core/beads/palette/read-palette.js';
import { findProblems } from '../src/core/pattern/read/find-problems.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { doubtfulCsv } from '../src/core/pages/lists/doubtful.js';
import { materialsCsv } from '../src/core/pages/lists/materials-csv.js';
import { stringingCsv } from '../src/core/pages/lists/stringing.js';
import { patternOf, someBeads } from './support/patterns.js';
import { inProcess } from './support/run.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-palette-soup-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (name: string, content: string) => {
  writeFileSync(join(folder, name), content);
  return join(folder, name);
};

describe('a palette of 100,000 rows', () => {
  const hexes = Array.from(
    { length: 100_000 },
    (_, n) => `#${(n * 167).toString(16).padStart(6, '0')}`,
  );
  const gpl = hexes.map((_, n) => `${n % 256} ${(n >> 8) % 256} 7\tbead ${n}`);
  it.each([
    ['CSV', `hex\n${hexes.join('\n')}`],
    ['CSV without a header', hexes.map((hex, n) => `${n};bead ${n};${hex}`).join('\n')],
    ['CSV of bad rows', `hex;grams\n${hexes.map(() => 'blue;much').join('\n')}`],
    ['JSON', JSON.stringify(hexes.map((hex) => ({ hex })))],
    ['JSON of bad beads', JSON.stringify(hexes.map(() => ({ hex: 'blau' })))],
    ['a GIMP palette', `GIMP Palette\n${gpl.join('\n')}`],
  ])('as %s is refused in a sentence, within time and memory', async (_, text) => {
    const [start, memory] = [process.cpuUsage(), process.memoryUsage.rss()];
    const { code, err } = await inProcess('beads', file('long', text));
    expect([code, err]).toEqual([
      3,
      expect.stringMatching(/^Error: .*more than 10000 beads.*\.\n$/),
    ]);
    expect(process.cpuUsage(start).user / 1e6).toBeLessThan(10);
    expect(process.memoryUsage.rss() - memory).toBeLessThan(400e6);
  });
});

it.each([
  ['10,000 letters', 'x'.repeat(10_000)],
  ['10,000 letters of two halves', '🌕'.repeat(5000)],
  ['a zero byte', 'a\u0000b'],
  ['an escape sequence', 'a\u001b[31mb'],
  ['a mark that turns the writing around', 'a\u202egnp.b'],
  ['an isolate', 'a\u2066b'],
  ['a character that is none', 'a\uffffb'],
])(
  'a name of %s is refused with its line, and nothing of it reaches the terminal',
  async (_, name) => {
    const texts = [
      `id,name,hex\na,ok,#fff000\nb,"${name}",#123456\n`,
      JSON.stringify([{ hex: '#fff000' }, { name, hex: '#123456' }], null, 1),
    ];
    for (const text of texts) {
      const { code, err } = await inProcess(
        'chart',
        'x.png',
        '--beads',
        file('name', text),
        '--dry-run',
      );
      const beads = await inProcess('beads', file('name', text));
      // The picture is missing too: whichever is told, it is one sentence.
      expect([code, beads.code]).toEqual([3, 3]);
      for (const said of [err, beads.err]) {
        expect(said.length).toBeLessThan(700);
        // eslint-disable-next-line no-control-regex
        expect(said).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202a-\u202e\u2066-\u2069]/);
      }
      expect(beads.err).toMatch(/Line \d: name|Line \d of .*: name/);
    }
  },
);

describe('cells that a spreadsheet would run', () => {
  // The beginnings that OWASP lists under "CSV Injection".
  const risky = [
    '=1+1',
    '+1',
    '-1',
    '@x',
    "'=1",
    "''@x",
    '=',
    '-',
    '=HYPERLINK("http://x","y")',
    '+a,b;c',
  ];
  const runs = /^[=+@\t\r-]/;
  const cells = (text: string) => Papa.parse<string[]>(text.trim()).data.flat();

  it('are held back in every CSV that is written', () => {
    for (const text of [...risky, '\t=1', '\r=1', "'", 'sand']) {
      const beads = someBeads(2).map((bead, n) => ({
        ...bead,
        id: text + n,
        name: text,
        finish: text,
      }));
      const pattern = patternOf(['AAB', 'AABBAA'], {}, beads);
      const doubt = { round: 1, stitch: 2, read: text, other: text, reason: text };
      const { beads: palette } = readPalette(JSON.stringify([{ hex: '#123456', id: 'x' }]), '');
      const named = palette.map((bead) => ({
        ...bead,
        id: text,
        name: text,
        finish: text,
        size: text,
      }));
      const all = [
        materialsCsv(pattern),
        stringingCsv(pattern, 0),
        doubtfulCsv([doubt as never]),
        paletteCsv(named),
      ];
      for (const csv of all) for (const cell of cells(csv)) expect(cell).not.toMatch(runs);
    }
  });

  it('come back as they were from the palette that we write', () => {
    const names = fc.oneof(
      fc.constantFrom(...risky),
      fc.string({ unit: fc.constantFrom(...`=+-@',;" a`), minLength: 1, maxLength: 6 }),
    );
    fc.assert(
      fc.property(names, (name) => {
        const json = JSON.stringify([{ id: name, name, hex: '#123456', finish: name }]);
        const { beads, problems } = surveyPalette(json, '');
        expect(problems).toEqual([]);
        const [again] = readPalette(paletteCsv(beads), '').beads;
        const { id, name: same, finish } = beads[0];
        expect([again.id, again.name, again.finish]).toEqual([id, same, finish]);
      }),
      { numRuns: 400 },
    );
  });
});

it.each(['__proto__', 'constructor', 'prototype', 'toString'])(
  'the key %s anywhere in a pattern or a palette does no harm',
  (key) => {
    const text = patternText(patternOf(['AAB', 'AB.AC_', 'AAAABCDDD']));
    for (const place of [...text.matchAll(/\{/g)].map(({ index }) => index + 1)) {
      for (const value of ['{"polluted":true}', '"A"', 'null', '[7]']) {
        const broken = `${text.slice(0, place)}"${key}":${value},${text.slice(place)}`;
        expect(() => parsePattern(broken, 'x')).toThrow(RondureError);
        expect(findProblems(broken, 'x').problems.length).toBeGreaterThan(0);
        try {
          readPalette(broken, 'x');
        } catch (error) {
          expect(error).toBeInstanceOf(RondureError);
        }
      }
    }
    expect(({} as { polluted?: true }).polluted).toBeUndefined();
  },
);
