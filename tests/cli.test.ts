import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makeProgram } from '../src/cli/program.js';
import { expandStringing } from '../src/core/pages/lists/stringing.js';
import { lettersInWorkingOrder } from '../src/core/pattern/stitches.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import { en } from '../src/words/index.js';
import { guideText } from './support/guide.js';
import { namesOf } from './support/output-names.js';
import { inProcess } from './support/run.js';

const top = fileURLToPath(new URL('../', import.meta.url));
const kingfisher = join(top, 'fixtures/kingfisher.svg');
const names = namesOf('panel', 'pattern');

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-cli-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the installed program in a process of its own. */
function spawned(argv: string[], options: { input?: Buffer; env?: NodeJS.ProcessEnv } = {}) {
  const { input, env = {} } = options;
  return spawnSync(process.execPath, [join(top, 'bin/rondure.js'), ...argv], {
    cwd: folder,
    env: { ...process.env, ...env },
    ...(input && { input }),
  });
}

test('makes the whole set, and the set agrees with itself', async () => {
  const dir = join(folder, 'whole');
  const { code, out, err } = await inProcess('chart', kingfisher, '--json', '-o', dir);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(readdirSync(dir).sort()).toEqual(names);
  const summary = JSON.parse(out);
  expect(summary).toMatchObject({ schema: 'rondure-summary', version: 1, rounds: 20 });
  // N·R(R+1)/2, the sum of an arithmetic series.
  expect(summary.stitches).toBe((7 * 20 * 21) / 2);
  expect(summary.beads).toBe(1470);
  const pattern = parsePattern(readFileSync(join(dir, 'pattern.json'), 'utf8'), 'pattern.json');
  expect(checkPattern(pattern)).toEqual([]);
  const worked = lettersInWorkingOrder(pattern.panels[0]);
  const strung = expandStringing(readFileSync(join(dir, 'stringing.csv'), 'utf8'));
  expect([...strung].reverse().join('')).toBe(worked.replaceAll('.', ''));
  expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
});

test('the summary for a person says the size, the difference and what auto decided', async () => {
  const dir = join(folder, 'words');
  const { out } = await inProcess('chart', kingfisher, '--across', '9cm', '-o', dir);
  expect(out).toMatch(/across +about \d+–\d+ mm \(you asked for 90 mm\)/);
  expect(out).toMatch(/taken as a drawing/);
  expect(out).toMatch(/colour changes/);
});

test('the same input twice, under another time zone and locale, gives identical bytes', () => {
  const other = { TZ: 'Asia/Kathmandu', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' };
  const first = spawned(['chart', kingfisher, '-o', 'one', '--title', 'same']);
  const second = spawned(['chart', kingfisher, '-o', 'two', '--title', 'same'], { env: other });
  expect([first.status, second.status]).toEqual([0, 0]);
  for (const name of names) {
    const bytes = ['one', 'two'].map((dir) => readFileSync(join(folder, dir, name)));
    expect(bytes[0].equals(bytes[1]), name).toBe(true);
  }
});

test('reads the picture from standard input, and writes nothing on a dry run', () => {
  const made = spawned(['chart', '-', '--dry-run', '--json'], { input: readFileSync(kingfisher) });
  expect(made.status).toBe(0);
  expect(JSON.parse(made.stdout.toString())).toMatchObject({ folder: null, files: [] });
});

const wrong: [why: string, argv: string[], code: number, sentence: RegExp][] = [
  ['no such option', ['chart', kingfisher, '--wegdes', '7', '-o', 'x'], 2, /Did you mean --wedges/],
  ['no command', ['chrt'], 2, /Unknown command 'chrt'/],
  ['no picture', ['chart', '-o', 'x'], 2, /Missing required argument/],
  ['no folder', ['chart', kingfisher], 2, /add -o/],
  [
    'rounds and across',
    ['chart', kingfisher, '--rounds', '9', '--across', '9cm', '-o', 'x'],
    2,
    /contradict/,
  ],
  [
    'both spellings',
    ['chart', kingfisher, '--colours', '9', '--colors', '9', '-o', 'x'],
    2,
    /contradict/,
  ],
  [
    'polygon in the middle',
    ['chart', kingfisher, '--increase', 'middle', '--outline', 'polygon', '-o', 'x'],
    2,
    /polygon/,
  ],
  ['wedges 2', ['chart', kingfisher, '--wedges', '2', '-o', 'x'], 2, /--wedges cannot be “2”/],
  [
    'wedges 7.5',
    ['chart', kingfisher, '--wedges', '7.5', '-o', 'x'],
    2,
    /whole number from 3 to 12/,
  ],
  ['rounds 81', ['chart', kingfisher, '--rounds', '81', '-o', 'x'], 2, /2 to 80/],
  ['lean NaN', ['chart', kingfisher, '--lean', 'NaN', '-o', 'x'], 2, /-1 to 1/],
  ['a size in furlongs', ['chart', kingfisher, '--across', '9fl', '-o', 'x'], 2, /9cm/],
  ['an unknown hand', ['chart', kingfisher, '--hand', 'both', '-o', 'x'], 2, /right, left/],
  ['an unknown bead', ['chart', kingfisher, '--keep', 'unobtainium', '-o', 'x'], 2, /unobtainium/],
  [
    'an unknown background',
    ['chart', kingfisher, '--background', '#12', '-o', 'x'],
    2,
    /--background/,
  ],
  [
    'too large across',
    ['chart', kingfisher, '--across', '900mm', '-o', 'x'],
    4,
    /900 mm across cannot/,
  ],
  ['missing picture', ['chart', 'nowhere.png', '-o', 'x'], 3, /nowhere\.png/],
  [
    'missing palette',
    ['chart', kingfisher, '--beads', 'nowhere.csv', '-o', 'x'],
    3,
    /nowhere\.csv/,
  ],
  [
    'picture out of reach',
    ['chart', kingfisher, '--shift', '900,0', '--background', 'bare', '-o', 'x'],
    4,
    /No stitch/,
  ],
];

test.each(wrong)('refuses %s in one sentence', async (_why, argv, code, sentence) => {
  const before = readdirSync(folder);
  const target = argv.map((word) => (word === 'x' ? join(folder, 'x') : word));
  const result = await inProcess(...target);
  expect(result.err).toMatch(sentence);
  expect(result.code).toBe(code);
  expect(result.out).toBe('');
  expect(result.err.trim().split('\n')).toHaveLength(1);
  expect(readdirSync(folder)).toEqual(before);
});

test('errors are one JSON object with --json', async () => {
  const { code, err } = await inProcess('chart', 'nowhere.png', '--json', '-o', join(folder, 'x'));
  expect(code).toBe(3);
  expect(JSON.parse(err).error).toMatchObject({
    code: expect.any(String),
    message: /nowhere/ as never,
  });
});

test('an existing folder stays as it is without --force, and foreign files stay with it', async () => {
  const dir = join(folder, 'kept');
  expect((await inProcess('chart', kingfisher, '--quiet', '-o', dir)).code).toBe(0);
  writeFileSync(join(dir, 'my notes.txt'), 'mine');
  const before = readFileSync(join(dir, 'pattern.json'));
  const refused = await inProcess('chart', kingfisher, '--wedges', '6', '-o', dir);
  expect(refused.code).toBe(5);
  expect(readFileSync(join(dir, 'pattern.json')).equals(before)).toBe(true);
  expect((await inProcess('chart', kingfisher, '--wedges', '6', '--force', '-o', dir)).code).toBe(
    0,
  );
  expect(JSON.parse(readFileSync(join(dir, 'pattern.json'), 'utf8')).shape.wedges).toBe(6);
  expect(readFileSync(join(dir, 'my notes.txt'), 'utf8')).toBe('mine');
});

test('a folder that is not ours is never replaced', async () => {
  const dir = join(folder, 'holiday');
  mkdirSync(dir);
  writeFileSync(join(dir, 'chart.png'), 'my own picture');
  const { code } = await inProcess('chart', kingfisher, '--force', '-o', dir);
  expect(code).toBe(5);
  expect(readFileSync(join(dir, 'chart.png'), 'utf8')).toBe('my own picture');
  expect(existsSync(join(dir, 'pattern.json'))).toBe(false);
});

test('every option and exit code stands in the guide, with its default in help', async () => {
  const readme = guideText();
  const { out } = await inProcess('chart', '--help');
  const flat = out.replace(/\s+/g, ' ');
  const io = { out() {}, err() {}, progress: undefined, signal: new AbortController().signal };
  const chart = (await makeProgram(en, io)).commands.find((command) => command.name() === 'chart')!;
  expect(chart.options.length).toBeGreaterThan(30);
  for (const option of chart.options) {
    expect(readme, option.long).toContain(`\`${option.long!}`);
    expect(flat).toContain(option.long!);
    if (option.long !== '--output' && option.long !== '--colors') {
      const shown = option.defaultValueDescription ?? JSON.stringify(option.defaultValue);
      expect(flat, option.long).toContain(`default: ${shown})`);
    }
  }
});

test('every command has examples first in its help and none without a place in the guide', async () => {
  const readme = guideText();
  const io = { out() {}, err() {}, progress: undefined, signal: new AbortController().signal };
  for (const command of (await makeProgram(en, io)).commands) {
    const name = command.name();
    const { code, out } = await inProcess(name, '--help');
    expect(code).toBe(0);
    const said = out.replace(/\s+/g, ' ');
    for (const option of command.options) {
      const usual = option.defaultValueDescription;
      if (usual && !option.isBoolean()) expect(said).toContain(`default: ${usual}`);
    }
    expect(out, name).toMatch(new RegExp(`^Examples:\n(  rondure .*\n)*  rondure ${name} `));
    expect(readme, name).toContain(`node bin/rondure.js ${name} `);
    for (const option of command.options) expect(readme, option.long).toContain(option.long!);
  }
});

test('--version prints the version of the package', () => {
  const { version } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8'));
  expect(spawned(['--version']).stdout.toString()).toBe(`${version}\n`);
});
