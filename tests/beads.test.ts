import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import fc from 'fast-check';
import Papa from 'papaparse';
import { ciede2000 } from '../src/core/colour/ciede2000.js';
import { hexToLab65 } from '../src/core/colour/lab.js';
import { nearPairs } from '../src/core/beads/palette/alike.js';
import { paletteCsv } from '../src/core/beads/palette/palette-csv.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { inProcess as rondure } from './support/run.js';
import { jarPhoto } from './support/jar-photo.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-beads-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function file(name: string, content: string | Buffer): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const good =
  'id;name;hex;grams\na1;sand;#d9b36a;2,5\na2;sea;#123456;\na3;Sea;#123457;\na4;deep;#123456;';

it('lists a palette, what was filled in, and beads that are alike', async () => {
  const { code, out, err } = await rondure('beads', file('good.csv', good));
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(/good\.csv \(CSV\): 4 beads/);
  expect(out).toMatch(/a1 +sand +#d9b36a +11\/0 +275 beads \(2\.5 g\)/);
  expect(out).toMatch(/diameter of every bead \(2\.1 mm\)/);
  expect(out).toMatch(/same colour twice:\n {2}a2 sea and a4 deep/);
  expect(out).toMatch(/same name twice:\n {2}a2 sea and a3 Sea/);
  expect(out).toMatch(/under 2\): 2 pairs/);
});

it('prints the same as one JSON object', async () => {
  const { out } = await rondure('beads', file('good.csv', good), '--json', '--size', '8');
  const told = JSON.parse(out);
  expect(told).toMatchObject({ schema: 'rondure-beads', version: 1, format: 'csv', problems: [] });
  expect(told.beads[0]).toMatchObject({ id: 'a1', size: '8/0', diameterMm: 3.05, grams: 2.5 });
  expect(told.beads[0].filled).toEqual(['size', 'diameterMm', 'beadsPerGram']);
  expect(told.sameColour).toEqual([['a2', 'a4']]);
  expect(told.near.map(({ ids }: { ids: string[] }) => ids.join())).toEqual(['a2,a3', 'a3,a4']);
});

it('names every bad cell with its line, and writes nothing', async () => {
  const path = file(
    'bad.csv',
    'id,name,hex,grams\na,x,blau,-1\nb,y,#123456,2\nb,z,#123457,x\nb,y,#111111,',
  );
  const dir = join(folder, 'never');
  const { code, out, err } = await rondure('beads', path, '-o', dir);
  expect(code).toBe(3);
  expect(out).toMatch(/1 bead\n/);
  expect(err).toMatch(/has 4 cells that cannot be used/);
  expect(err.match(/Line \d/g)).toEqual(['Line 2', 'Line 2', 'Line 4', 'Line 5']);
  expect(existsSync(dir)).toBe(false);
  const json = await rondure('beads', path, '--json');
  expect(JSON.parse(json.out).problems).toHaveLength(4);
  expect(JSON.parse(json.err).error).toMatchObject({ code: 'palette-unusable' });
});

it('makes a sample card and a palette that reads back to the same beads', async () => {
  const dir = join(folder, 'card');
  const many = Array.from(
    { length: 25 },
    (_, n) => `${n},bead ${n},#${(n * 9).toString(16).padStart(6, '0')},pearl`,
  );
  const path = file(
    'many.csv',
    `id,name,hex,finish\n${many.join('\n')}\n=1,"=2+2, ""x""",#ffffff,@matte\n`,
  );
  expect(await rondure('beads', path, '-o', dir)).toMatchObject({ code: 0, err: '' });
  const names = [
    'beads.csv',
    'sample-card-2.png',
    'sample-card-2.svg',
    'sample-card.png',
    'sample-card.svg',
  ];
  expect(readdirSync(dir).sort()).toEqual(names);
  const svg = readFileSync(join(dir, 'sample-card.svg'), 'utf8');
  expect(svg).toContain('width="210mm" height="297mm"');
  const png = await readPicture(readFileSync(join(dir, 'sample-card.png')), 'card');
  expect(png.height / png.width).toBeCloseTo(297 / 210, 2);
  const csv = readFileSync(join(dir, 'beads.csv'), 'utf8');
  // Cells that begin so are run by spreadsheets (OWASP, "CSV Injection").
  for (const row of Papa.parse<string[]>(csv.trim()).data) {
    for (const cell of row) expect(cell).not.toMatch(/^[=+@\t\r-]/);
  }
  const [before, after] = [readFileSync(path, 'utf8'), csv].map(
    (text) => readPalette(text, '').beads,
  );
  expect(after.map((bead) => ({ ...bead, filled: [] }))).toEqual(
    before.map((bead) => ({ ...bead, filled: [] })),
  );
  // A shorter card in its place leaves no page behind, and what is not ours stays.
  writeFileSync(join(dir, 'mine.txt'), 'mine');
  expect((await rondure('beads', file('good.csv', good), '-o', dir)).code).toBe(5);
  expect((await rondure('beads', file('good.csv', good), '-o', dir, '--force')).code).toBe(0);
  expect(readdirSync(dir).sort()).toEqual([
    'beads.csv',
    'mine.txt',
    'sample-card.png',
    'sample-card.svg',
  ]);
});

it('never replaces a folder that holds something else, a pattern for instance', async () => {
  const dir = join(folder, 'pattern');
  mkdirSync(dir);
  writeFileSync(join(dir, 'pattern.json'), '{"format":"rondure-pattern"}');
  const { code, err } = await rondure('beads', file('good.csv', good), '-o', dir, '--force');
  expect(code).toBe(5);
  expect(err).toMatch(/without a sample card of ours/);
  expect(readdirSync(dir)).toEqual(['pattern.json']);
});

it('makes a palette from a photograph, which chart takes', async () => {
  const hexes = ['#d8b066', '#b3262e', '#2f6f9f', '#1d5a3c', '#e7a3b5', '#5b3a8e'];
  const wish = { rows: 2, columns: 3, hexes, seed: 2, widthPx: 800, heightPx: 600, beadPx: 7 };
  const photo = file(
    'jars.jpg',
    await jarPhoto({ ...wish, light: [0.85, 0.5], lamp: [1, 0.92, 0.8], noise: 3 }),
  );
  const dir = join(folder, 'jars');
  const grid = ['--rows', '2', '--columns', '3'];
  const made = await rondure('beads', '--from-picture', photo, ...grid, '-o', dir);
  expect(made).toMatchObject({ code: 0, err: '' });
  expect(made.out).toMatch(/r2c3 +row 2 column 3/);
  const { beads } = readPalette(readFileSync(join(dir, 'beads.csv'), 'utf8'), 'beads.csv');
  expect(beads.map(({ id }) => id)).toEqual(['r1c1', 'r1c2', 'r1c3', 'r2c1', 'r2c2', 'r2c3']);
  const apart = beads.map(({ hex }, n) => ciede2000(...hexToLab65(hex), ...hexToLab65(hexes[n])));
  expect(apart.reduce((sum, one) => sum + one) / 6).toBeLessThan(3);
  const chart = ['chart', photo, '--beads', join(dir, 'beads.csv'), '--rounds', '5', '--dry-run'];
  expect((await rondure(...chart)).code).toBe(0);
  const wrong = await rondure('beads', '--from-picture', photo, '--rows', '3', '--columns', '3');
  expect([wrong.code, wrong.err]).toEqual([3, expect.stringMatching(/do not lie in 3 rows of 3/)]);
});

it.each([
  [
    'a pattern',
    JSON.stringify({
      format: 'rondure-pattern',
      beads: [{ letter: 'A', id: 'x', name: 'sand', hex: '#d9b36a' }],
    }),
  ],
  ['a GIMP palette', 'GIMP Palette\n217 179 106\tsand\n'],
])('chart takes %s for beads', async (_, text) => {
  const path = file('palette', text);
  const moon = join(import.meta.dirname, '../fixtures/kingfisher.svg');
  const { code, err } = await rondure(
    'chart',
    moon,
    '--beads',
    path,
    '--rounds',
    '4',
    '--dry-run',
    '--quiet',
  );
  expect({ code, err }).toEqual({ code: 0, err: '' });
});

it.each([
  [[], /Say which palette/],
  [['x.csv', '--from-picture', 'y.jpg'], /contradict/],
  [['x.csv', '--rows', '2'], /contradict/],
  [['--from-picture', 'y.jpg', '--rows', '2'], /add --rows and --columns/],
  [['--from-picture', 'y.jpg', '--rows', '0', '--columns', '2'], /--rows cannot be/],
  [['x.csv', '--force'], /add -o/],
])('refuses the options %j', async (argv, sentence) => {
  const { code, err } = await rondure('beads', ...argv);
  expect(code).toBe(2);
  expect(err).toMatch(sentence);
});

it('refuses a hundred thousand rows at once, and looks through ten thousand in a few seconds', async () => {
  const rows = (count: number) =>
    Array.from(
      { length: count },
      (_, n) => `#${((n * 7919) % 0xffffff).toString(16).padStart(6, '0')}`,
    );
  const long = await rondure('beads', file('long.csv', `hex\n${rows(100_000).join('\n')}`));
  expect([long.code, long.err]).toEqual([3, expect.stringMatching(/more than 10000 beads/)]);
  const most = await rondure('beads', file('most.csv', `hex\n${rows(10_000).join('\n')}`));
  expect(most.code).toBe(0);
}, 20_000);

it('finds every near pair that the formula itself finds', () => {
  const hundredths = (least: number, most: number) =>
    fc.integer({ min: 100 * least, max: 100 * most }).map((value) => value / 100);
  const lab = fc.tuple(hundredths(40, 50), hundredths(-6, 6), hundredths(-6, 6));
  fc.assert(
    fc.property(fc.array(lab, { maxLength: 25 }), (labs) => {
      const found = new Set(
        nearPairs(labs.map((one) => ({ lab: one }))).map(({ pair }) => pair.join()),
      );
      for (let i = 0; i < labs.length; i++) {
        for (let j = i + 1; j < labs.length; j++) {
          const apart = ciede2000(...labs[i], ...labs[j]);
          expect(found.has(`${i},${j}`)).toBe(apart > 0 && apart < 2);
        }
      }
    }),
    { numRuns: 60 },
  );
});

it('keeps cells that look like formulas as they were, through its own CSV', () => {
  const { beads } = readPalette('id,name,hex\n-1,=SUM(A1),#123456\n@x,+y,#654321', '');
  const text = paletteCsv(beads);
  expect(text).toContain("'=SUM(A1)");
  expect(readPalette(text, '').beads.map(({ id, name }) => [id, name])).toEqual([
    ['-1', '=SUM(A1)'],
    ['@x', '+y'],
  ]);
});

it('keeps measured colours in the palette it writes', () => {
  const { beads } = readPalette('name;L;a;b\nred;53,24;-80,09;67,2', '');
  const again = readPalette(paletteCsv(beads), '').beads;
  expect(again[0].lab).toEqual([53.24, -80.09, 67.2]);
});
