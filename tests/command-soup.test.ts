import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { makeProgram, wantsJson } from '../src/cli/program.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { roundsText } from '../src/core/pages/lists/rounds.js';
import { encodePng } from '../src/node/output/rasterise.js';
import { en } from '../src/words/index.js';
import { paint } from './support/paint.js';
import { patternOf } from './support/patterns.js';
import { inProcess } from './support/run.js';

// What is drawn is tested elsewhere; here thousands of command lines are read.
vi.mock('../src/node/output/pattern-files.js', async (original) => ({
  ...(await original<object>()),
  patternFiles: (await import('./support/without-drawings.js')).textFiles,
}));
vi.mock('../src/node/output/blank-files.js', () => ({
  blankFiles: () => Promise.resolve({ files: new Map([['blank.json', '{}']]), paper: 'A4' }),
}));
vi.mock('../src/node/output/sample-files.js', async (original) => ({
  ...(await original<object>()),
  sampleFiles: () => Promise.resolve(new Map([['beads.csv', 'hex\n#000000\n']])),
}));

const seed = 20261125;
const count = 2000;

const home = process.cwd();
const unhandled: unknown[] = [];
const note = (reason: unknown) => void unhandled.push(reason);
let folder: string;
let files: string[];
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-commands-'));
  // Relative names lead into the folder.
  process.chdir(folder);
  process.on('unhandledRejection', note);
  const pattern = patternOf(['AAB', 'AB.AC_', 'AAAABCDDD']);
  const png = await encodePng(paint(12, 12, (x, y) => [x * 20, y * 20, 99]));
  const contents: Record<string, string | Uint8Array> = {
    'picture.png': png,
    'cut.png': png.subarray(0, png.length / 2),
    'drawing.svg':
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><rect width="7" height="7"/></svg>',
    'pattern.json': patternText(pattern),
    'broken.json': patternText(pattern).replace('AAB', 'AAAB'),
    'cut.json': patternText(pattern).slice(0, 300),
    'rounds.txt': roundsText(pattern, 0, en),
    'bad.txt': 'R1: 3A\nR2: (((\n',
    'beads.csv': 'id,name,hex\na,sand,#ff0000\nb,sea,#00ff00\n',
    'bad.csv': 'hex,grams\nblue,-1\n#fff,much\n',
    empty: '',
  };
  for (const [name, content] of Object.entries(contents)) writeFileSync(name, content);
  files = [...Object.keys(contents), folder, '.', 'nowhere', 'empty/x', '\u0000', 'n'.repeat(5000)];
});
afterAll(() => {
  process.off('unhandledRejection', note);
  process.chdir(home);
  rmSync(folder, { recursive: true, force: true });
});

const io = { out() {}, err() {}, progress: undefined, signal: new AbortController().signal };
const { commands } = await makeProgram(en, io);

/** One command line: a command, files, and a soup of its options, of others', and of nonsense. */
function commandLine(): fc.Arbitrary<string[]> {
  const odd = fc.oneof(
    fc.constantFrom(...['', ' ', '-1', '0', '3', '7', '0.5', '1e9', '9'.repeat(400), 'NaN', '-']),
    fc.constantFrom(...['Infinity', '0x10', '٣', '1,5', '1,5,9', '9cm', '3 mm', '1e-9', '--', '+']),
    fc.constantFrom(...['=cmd()', '\u0000', '\u001b[31m', 'a\nb', '\u202egnp', '🌕', '\ud800']),
    fc.constantFrom(...['__proto__', 'constructor', '#ff0000', 'sand', 'a', 'bare', '11/0', 'out']),
    fc.constantFrom(...files),
    fc.string({ unit: 'binary', maxLength: 8 }).filter((text) => !text.includes('/')),
  );
  const misspelt = (name: string) => fc.constantFrom(name.slice(0, -1), `${name}s`, name.slice(1));
  const all = commands.flatMap(({ options }) => options);
  const optionOf = (command: (typeof commands)[number]) =>
    fc.oneof(
      { arbitrary: fc.constantFrom(...command.options), weight: 9 },
      { arbitrary: fc.constantFrom(...all), weight: 1 },
    );
  const value = (choices: readonly string[] | undefined) =>
    choices ? fc.oneof(fc.constantFrom(...choices), odd) : odd;
  return fc.constantFrom(...commands).chain((command) => {
    const part = optionOf(command).chain((option) => {
      const long = option.long!;
      const name = fc.oneof({ arbitrary: fc.constant(long), weight: 8 }, misspelt(long));
      if (option.isBoolean()) return name.map((one) => [one]);
      return fc.oneof(
        { arbitrary: fc.tuple(name, value(option.argChoices)), weight: 8 },
        fc.tuple(name, odd).map(([one, text]) => [`${one}=${text}`]),
        name.map((one) => [one]),
      );
    });
    const extra = odd.map((one) => [one]);
    const usual = command.options.some(({ long }) => long === '--rounds')
      ? fc.constantFrom<string[]>(['--rounds', '2'], ['--across', '12mm'], [])
      : fc.constant<string[]>([]);
    const place = fc.constantFrom<string[]>(['-o', 'out'], ['-o', 'out'], ['--dry-run'], []);
    const parts = fc.oneof(
      { arbitrary: fc.array(part, { maxLength: 2 }), weight: 3 },
      fc.array(fc.oneof({ arbitrary: part, weight: 9 }, extra), { maxLength: 7 }),
    );
    const called = fc.oneof(
      { arbitrary: fc.constant(command.name()), weight: 20 },
      misspelt(command.name()),
      odd,
    );
    const file = fc.oneof({ arbitrary: fc.constantFrom(...files.slice(0, 11)), weight: 5 }, odd);
    const inputs = fc.oneof({ arbitrary: file.map((one) => [one]), weight: 6 }, fc.constant([]));
    return fc
      .tuple(called, inputs, usual, place, parts)
      .map(([name, given, size, to, soup]) => [name, ...given, ...size, ...to, ...soup.flat()]);
  });
}

/** A lone - would wait for what this process is given. */
const waits = (argv: readonly string[]) => argv.some((word) => /^(--[a-z-]+=)?-$/.test(word));

/** What is wrong with the way in which a command line ended; undefined when nothing is. */
function fault(
  argv: readonly string[],
  { code, out, err }: { code: number; out: string; err: string },
  written: readonly string[],
): string | undefined {
  if (code === 0) return err === '' ? undefined : 'told of an error and gave 0';
  if (![2, 3, 4, 5].includes(code)) return `exit code ${code}`;
  if (written.length > 0) return `wrote ${written.join()}`;
  if (out !== '' && argv[0] !== 'beads') return 'printed';
  if (/\n\s+at |\bundefined\b|\[object /.test(err)) return 'is no sentence';
  // eslint-disable-next-line no-control-regex
  if (/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/.test(err)) return 'control characters';
  if (wantsJson(argv)) {
    const { error } = JSON.parse(err);
    const keys = Object.keys(error).join();
    return keys === 'code,message,facts' && error.code in en.errors ? undefined : `JSON of ${keys}`;
  }
  // One sentence, which may end with where to read on; several problems stand below it.
  const [head, ...list] = err.trimEnd().split('\n');
  if (!(list.length > 0 ? /^Error: .*:$/ : /^Error: .*([.?)]|--help)$/).test(head)) return 'head';
  return list.every((line) => /^ {2}\S.*\.$/.test(line)) ? undefined : 'list';
}

it(`${count} command lines end well or in a sentence, and only what ends well writes`, async () => {
  const codes = new Map<number, number>();
  const faults: string[] = [];
  const before = readdirSync('.').sort();
  const lines = commandLine().filter((argv) => !waits(argv));
  for (const argv of fc.sample(lines, { numRuns: count, seed })) {
    const result = await inProcess(...argv);
    codes.set(result.code, (codes.get(result.code) ?? 0) + 1);
    const written = readdirSync('.').filter((name) => !before.includes(name));
    for (const name of written) rmSync(name, { recursive: true });
    const found = fault(argv, result, written);
    if (found !== undefined) faults.push(`${found}: ${JSON.stringify(argv)}\n${result.err}`);
  }
  expect(faults).toEqual([]);
  expect(unhandled).toEqual([]);
  expect(readdirSync('.').sort()).toEqual(before);
  for (const code of [0, 2, 3, 5]) expect(codes.get(code), `exit code ${code}`).toBeGreaterThan(0);
});

/** What a process of its own could get wrong: streams, exit codes, and what the shell sees. */
it.each<[argv: string[], code: number, input?: string]>([
  [['chart', 'picture.png', '--rounds', '\u001b[2J', '--dry-run'], 2],
  [['chart', 'nowhere.png\nError: none', '-o', 'out'], 3],
  [['chart', '-', '--beads', '-', '-o', 'out'], 2, 'x'],
  [['chart', '-', '-o', 'out'], 3, ''],
  [['chart', '-', '-o', 'out'], 3, 'no picture\n'],
  [['read', '-', '--blank', '-', '-o', 'out'], 2, '{}'],
  [['read', 'picture.png', '--blank', '-', '--beads', '-', '-o', 'out'], 2, '{}'],
  [['check', '-'], 3, '{"format":"rondure-pattern","version":1e999}'],
  [['rounds', '-', '-o', 'empty/out'], 5, 'R1: 3A'],
  [['redraw', 'pattern.json', '-o', '/proc/out'], 5],
  [['beads', 'bad.csv', '--json', '-o', 'out'], 3],
  [['--json', '--jsn', 'chart'], 2],
])('the program %j: exit code %i and one sentence', (argv, code, input = '') => {
  const before = readdirSync('.');
  const program = join(import.meta.dirname, '../bin/rondure.js');
  const result = spawnSync(process.execPath, [program, ...argv], { input, encoding: 'utf8' });
  const { status, stdout: out, stderr: err } = result;
  expect(status, err).toBe(code);
  expect(fault(argv, { code, out, err }, [])).toBeUndefined();
  expect(readdirSync('.')).toEqual(before);
});
