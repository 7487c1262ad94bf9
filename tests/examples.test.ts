import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { afterAll, beforeAll, expect, test } from 'vitest';

// The worked examples, run as a reader would run them: by node, importing the built package by its
// name. What they wrote is read here as plain text and JSON, not by Rondure's own readers.
const top = fileURLToPath(new URL('../', import.meta.url));
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-examples-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function node(example: string, ...argv: string[]) {
  const made = spawnSync(process.execPath, [join(top, 'examples', example), ...argv], {
    cwd: folder,
    maxBuffer: 1 << 26,
  });
  return { code: made.status, out: made.stdout.toString(), err: made.stderr.toString() };
}

const jsonOf = (...path: string[]) => JSON.parse(readFileSync(join(folder, ...path), 'utf8'));
/** N·R(R+1)/2, the sum of an arithmetic series. */
const sum = (n: number, r: number) => (n * r * (r + 1)) / 2;

test('a picture becomes a folder, and a bead in it is changed', () => {
  const made = node('picture-to-files.js', 'bird');
  expect(made.err).toBe('');
  const pattern = jsonOf('bird', 'pattern.json');
  const { wedges, rounds } = pattern.shape;
  expect(wedges).toBe(7);
  expect(made.out).toContain(`${sum(7, rounds)} stitches in ${rounds} rounds`);
  expect(pattern.panels[0].rounds.map((round: string) => round.length)).toEqual(
    Array.from({ length: rounds }, (_, r) => 7 * (r + 1)),
  );
  const palette = readFileSync(join(top, 'palettes/harbour.csv'), 'utf8');
  expect(pattern.beads.length).toBeLessThanOrEqual(6);
  for (const { id, name, hex } of pattern.beads) expect(palette).toContain(`${id},${name},${hex}`);
  // The thread carries every bead once: the last total of the list is the sum.
  const strung = readFileSync(join(folder, 'bird', 'stringing.csv'), 'utf8')
    .trim()
    .split('\n');
  expect(Number(strung.at(-1)!.split(',').at(-1))).toBe(sum(7, rounds));

  expect(node('picture-to-files.js', 'bird')).toMatchObject({ code: 1, err: /^output-exists: / });

  const changed = node('change-a-bead.js', 'bird/pattern.json', 'bird-changed');
  expect(changed).toEqual({ code: 0, err: '', out: expect.stringContaining(`${sum(7, rounds)}`) });
  const after = jsonOf('bird-changed', 'pattern.json');
  const least = pattern.beads.at(-1).letter;
  expect(after.panels[0].rounds).toEqual([least.repeat(7), ...pattern.panels[0].rounds.slice(1)]);
  expect(after.title).toBe(`${pattern.title}, changed`);
  const list = readFileSync(join(folder, 'bird-changed', 'rounds.txt'), 'utf8');
  expect(list).toMatch(new RegExp(`^R1 \\(.*\\): 7${least}$`, 'm'));
  expect(readdirSync(join(folder, 'bird-changed'))).toEqual(readdirSync(join(folder, 'bird')));
});

test('pixels become a chart whose stringing list reads back', () => {
  const { code, out, err } = node('pixels-to-chart.js');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out.startsWith('<svg ')).toBe(true);
  expect(out.trim().endsWith('</svg>')).toBe(true);
  expect(out).toContain('6 wedges');
  expect(out).toContain(`${sum(6, 12)} stitches`);
  // Every cell carries its letter: as many letters as stitches are drawn, night and barley.
  expect(out).toMatch(/#1b2a52/);
  expect(out).toMatch(/#f0d68a/);
});

// TypeScript users without the DOM's types and without skipLibCheck can compile against both
// entry points; the second program sees neither Node's types nor the DOM's.
test.each([
  [
    'all examples',
    ['node'],
    readdirSync(join(top, 'examples')).filter((name) => /\.js$/.test(name)),
  ],
  ['the core alone', [], ['core-only.ts']],
])('%s compile with ES2023 and nothing else', (_what, types, names) => {
  const alone = join(top, '.tmp', `core-only-${process.pid}.ts`);
  const core =
    "import { makePattern } from 'rondure';\nexport const make: typeof makePattern = makePattern;\n";
  const files = names.map((name) =>
    name === 'core-only.ts' ? alone : join(top, 'examples', name),
  );
  ts.sys.createDirectory(join(top, '.tmp'));
  writeFileSync(alone, core);
  try {
    const program = ts.createProgram(files, {
      noEmit: true,
      strict: true,
      allowJs: true,
      checkJs: true,
      skipLibCheck: false,
      target: ts.ScriptTarget.ES2022,
      lib: ['lib.es2023.d.ts'],
      module: ts.ModuleKind.NodeNext,
      moduleResolution: ts.ModuleResolutionKind.NodeNext,
      types,
    });
    const told = ts
      .getPreEmitDiagnostics(program)
      .map(
        ({ messageText, file }) =>
          `${file?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`,
      );
    expect(told).toEqual([]);
    const seen = program.getSourceFiles().map(({ fileName }) => fileName);
    expect(seen.some((name) => name.includes('dist/core/index.d.ts'))).toBe(true);
    expect(seen.filter((name) => /lib\.dom/.test(name))).toEqual([]);
  } finally {
    rmSync(alone, { force: true });
  }
});
