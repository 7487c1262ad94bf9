import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { patternText } from '../src/core/pattern/serialise.js';
import { roundsText } from '../src/core/pages/lists/rounds.js';
import { en } from '../src/words/index.js';
import { patternOf } from './support/patterns.js';
import { wantsJson } from '../src/cli/program.js';
import { inProcess } from './support/run.js';

it('any mixture of options of redraw, check and rounds ends well or in a sentence', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'rondure-soup-'));
  try {
    const pattern = patternOf(['AAB', 'AB.AC_', 'AAAABCDDD']);
    const inside = (name: string, text: string) => {
      writeFileSync(join(folder, name), text);
      return join(folder, name);
    };
    const files = [
      inside('pattern.json', patternText(pattern)),
      inside('broken.json', patternText(pattern).replace('AAB', 'AAAB')),
      inside('cut.json', patternText(pattern).slice(0, 300)),
      inside('rounds.txt', roundsText(pattern, 0, en)),
      inside('bad.txt', 'R1: 3A\nR2: (((\n'),
      inside('beads.csv', 'hex\n#ff0000\n#00ff00\n'),
      inside('empty', ''),
      folder,
      join(folder, 'nowhere'),
    ];
    const before = readdirSync(folder).sort();
    const value = fc.oneof(
      fc.constantFrom('3', '7', '-1', '0.5', '1e9', 'NaN', '', 'left', 'joined', 'circle', '11/0'),
      fc.constantFrom('polygon', 'middle', 'toward', '--json', '9cm', '=cmd', '\u0000', ...files),
      // A lone - would wait for the standard input.
      fc.string({ maxLength: 6 }).filter((text) => text !== '-'),
    );
    const long = [
      ...['--beads', '--wedges', '--size', '--round-height', '--stitch-width', '--increase'],
      ...['--lean', '--outline', '--construction', '--hand', '--beads-face', '--start', '--title'],
    ];
    const part = fc.oneof(
      fc.tuple(fc.constantFrom(...long), value),
      fc.constantFrom(['--json'], ['--quiet'], ['--wegdes'], ['--'], ['-h'], ['extra']),
      fc.tuple(value),
    );
    const line = fc.tuple(
      fc.constantFrom('redraw', 'check', 'rounds', 'round'),
      fc.constantFrom(...files),
      fc.array(part, { maxLength: 4 }),
    );
    const codes = new Set<number>();
    await fc.assert(
      fc.asyncProperty(line, async ([command, file, parts]) => {
        const argv = [command, file, '--dry-run', ...parts.flat()];
        if (command === 'check') argv.splice(2, 1);
        const { code, out, err } = await inProcess(...argv);
        codes.add(code);
        expect([0, 2, 3, 4], err).toContain(code);
        expect(code === 0 ? err : out).toBe('');
        expect(err).not.toMatch(/\n\s+at |undefined|NaN\./);
        if (code !== 0 && wantsJson(argv)) {
          expect(JSON.parse(err).error.message).toMatch(/^\S/);
        }
      }),
      { numRuns: 1000 },
    );
    expect([...codes]).toEqual(expect.arrayContaining([0, 2, 3]));
    expect(readdirSync(folder).sort()).toEqual(before);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
