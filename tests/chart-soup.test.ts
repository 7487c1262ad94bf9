import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { makeProgram } from '../src/cli/program.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { lettersInWorkingOrder } from '../src/core/pattern/stitches.js';
import { parseRoundsText } from '../src/core/pages/lists/read-rounds.js';
import { expandStringing } from '../src/core/pages/lists/stringing.js';
import { encodePng } from '../src/node/output/rasterise.js';
import { en } from '../src/words/index.js';
import { paint } from './support/paint.js';
import { inProcess } from './support/run.js';

// What is drawn is tested elsewhere.
vi.mock('../src/node/output/pattern-files.js', async (original) => ({
  ...(await original<object>()),
  patternFiles: (await import('./support/without-drawings.js')).textFiles,
}));

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-chart-soup-'));
  const png = await encodePng(paint(24, 18, (x, y) => [x * 10, y * 14, (x * y) % 256]));
  writeFileSync(join(folder, 'picture.png'), png);
  const beads = 'id,name,hex,grams\na,sand,#d9b36a,9\nb,sea,#123456,1\nc,=sky,#88bbee,\n';
  writeFileSync(join(folder, 'beads.csv'), beads);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const between = (min: number, max: number) => fc.integer({ min, max }).map(String);
const decimal = (min: number, max: number) =>
  fc.integer({ min: 100 * min, max: 100 * max }).map((value) => String(value / 100));

/** Values that an option may have, within its bounds; each may still be refused beside another. */
const values: Record<string, fc.Arbitrary<string>> = {
  '--beads': fc.constant('beads.csv'),
  '--colours': between(1, 24),
  '--colors': between(1, 24),
  '--wedges': between(3, 12),
  '--rounds': between(2, 6),
  '--across': between(8, 40).map((mm) => `${mm}mm`),
  '--size': fc.constantFrom('11/0', '8', '15/0', '6/0'),
  '--round-height': decimal(1, 4),
  '--stitch-width': decimal(1, 4),
  '--lean': decimal(-1, 1),
  '--start': decimal(-400, 400),
  '--zoom': decimal(0.1, 4),
  '--shift': fc.tuple(decimal(-9, 9), decimal(-9, 9)).map((both) => both.join()),
  '--rotate': decimal(-400, 400),
  '--back': fc.constantFrom('same', 'plain:sea', 'picture.png', 'plain:tar'),
  '--background': fc.constantFrom('auto', 'bare', 'ffffff', '#123456', 'sand'),
  '--keep': fc.constantFrom('a', 'sea', 'a,b', '=sky'),
  '--leave-out': fc.constantFrom('b', 'sand', 'a,b,c'),
  '--title': fc.constantFrom('Barley moon', '=1+1', 'Møn', '-'),
};

const io = { out() {}, err() {}, progress: undefined, signal: new AbortController().signal };
const program = await makeProgram(en, io);

/** Any of the options of `chart` together, each once. */
function optionsTogether(): fc.Arbitrary<string[]> {
  const { options } = program.commands.find((one) => one.name() === 'chart')!;
  const able = options.filter(({ long }) => !['--output', '--json', '--quiet'].includes(long!));
  const few = fc.subarray(able, { maxLength: 6 });
  return fc.oneof({ arbitrary: few, weight: 3 }, fc.subarray(able)).chain((chosen) =>
    fc
      .tuple(
        ...chosen.map((option) => {
          const long = option.long!;
          if (option.isBoolean()) return fc.constant([long]);
          const value = option.argChoices ? fc.constantFrom(...option.argChoices) : values[long];
          return (value ?? between(0, 3)).map((text) => [long, text]);
        }),
      )
      .map((parts) => parts.flat()),
  );
}

it('any options of chart together make a whole, sound set, or nothing and a sentence', async () => {
  const dir = join(folder, 'set');
  const codes = new Map<number, number>();
  const home = process.cwd();
  process.chdir(folder);
  try {
    await fc.assert(
      fc.asyncProperty(optionsTogether(), async (options) => {
        const size = options.some((one) => /^--(rounds|across)$/.test(one))
          ? []
          : ['--rounds', '4'];
        const start = ['chart', 'picture.png', '--beads', 'beads.csv', '--json', '-o', dir];
        const argv = [...start, ...size, ...options];
        const { code, out, err } = await inProcess(...argv);
        codes.set(code, (codes.get(code) ?? 0) + 1);
        const made = readdirSync(folder).filter((name) => !/^(picture|beads)\./.test(name));
        if (code !== 0 || options.includes('--dry-run')) {
          expect(made).toEqual([]);
          expect([0, 2, 3, 4], err).toContain(code);
          if (code !== 0) expect(JSON.parse(err).error.message).toMatch(/^\S.*[.?)]$/);
          return;
        }
        expect({ made, err }).toEqual({ made: ['set'], err: '' });
        const read = (name: string) => readFileSync(join(dir, name), 'utf8');
        expect(JSON.parse(out).files).toEqual(readdirSync(dir).sort());
        const pattern = parsePattern(read('pattern.json'), 'pattern.json');
        expect(checkPattern(pattern)).toEqual([]);
        const [panel] = pattern.panels;
        expect(parseRoundsText(read('rounds.txt'), 'rounds.txt')).toEqual(panel.rounds);
        const strung = [...expandStringing(read('stringing.csv'))].reverse().join('');
        expect(strung).toBe(lettersInWorkingOrder(panel).replaceAll('.', ''));
        expect(JSON.parse(out).beads).toBe(strung.length);
        rmSync(dir, { recursive: true });
      }),
      { numRuns: 150, seed: 20261126, endOnFailure: true },
    );
  } finally {
    process.chdir(home);
  }
  for (const code of [0, 2]) expect(codes.get(code), `exit code ${code}`).toBeGreaterThan(15);
});
