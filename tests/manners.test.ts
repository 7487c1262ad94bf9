import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../src/cli/program.js';
import { similarTo } from '../src/cli/said/similar.js';
import { en } from '../src/words/index.js';
import { inProcess } from './support/run.js';

const top = fileURLToPath(new URL('../', import.meta.url));
const kingfisher = join(top, 'fixtures/kingfisher.svg');
const program = `${process.execPath} ${join(top, 'bin/rondure.js')}`;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-manners-'));
  writeFileSync(join(folder, 'bad.csv'), 'id,hex\nx,#zzzzzz\n');
  mkdirSync(join(folder, 'holiday'));
  writeFileSync(join(folder, 'holiday', 'chart.png'), 'mine');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function shell(command: string, env: NodeJS.ProcessEnv = {}) {
  const options = { cwd: folder, env: { ...process.env, ...env } };
  return spawnSync('bash', ['-o', 'pipefail', '-c', command], options);
}

/** One failure of every class, each a line of words; DIR stands for the test's folder. */
const failures: [code: string, exit: number, argv: string][] = [
  ['usage', 2, 'chrt --json'],
  ['usage', 2, '--json'],
  ['usage', 2, 'chart --json'],
  ['usage', 2, 'chart PICTURE --json --wegdes 7 -o DIR/x'],
  ['usage', 2, 'chart PICTURE --json -o'],
  ['usage', 2, 'chart PICTURE PICTURE --json -o DIR/x'],
  ['usage', 2, 'chart PICTURE --json'],
  ['usage', 2, 'redraw --json'],
  ['usage', 2, 'beads --json'],
  ['option-value', 2, 'chart PICTURE --json --wedges two -o DIR/x'],
  ['option-value', 2, 'chart PICTURE --json --hand both -o DIR/x'],
  ['options-contradict', 2, 'chart PICTURE --json --quiet -o DIR/x'],
  ['bead-unknown', 2, 'chart PICTURE --json --keep unobtainium -o DIR/x'],
  ['size-unknown', 2, 'chart PICTURE --json --size 12/7 -o DIR/x'],
  ['file-missing', 3, 'chart DIR/nowhere.png --json -o DIR/x'],
  ['palette-bad-row', 3, 'chart PICTURE --json --beads DIR/bad.csv -o DIR/x'],
  ['palette-unusable', 3, 'beads DIR/bad.csv --json'],
  ['across-out-of-reach', 4, 'chart PICTURE --json --across 900 -o DIR/x'],
  ['across-out-of-reach', 4, 'blank --json --across 900 -o DIR/x'],
  ['across-out-of-reach', 4, 'frame --width 85 --height 45 --json --across 900'],
  ['output-exists', 5, 'chart PICTURE --json -o DIR/holiday'],
];

test.each(failures)('%s (exit code %i) is one JSON object: %s', async (code, exit, words) => {
  const argv = words.split(' ').map((word) => word.replace('DIR', folder));
  const result = await inProcess(...argv.map((word) => (word === 'PICTURE' ? kingfisher : word)));
  const { error, ...others } = JSON.parse(result.err);
  expect(others).toEqual({});
  expect(error).toEqual({ code, message: expect.any(String), facts: expect.any(Object) });
  expect(error.message).not.toMatch(/undefined|\[object/);
  expect(result.code).toBe(exit);
  expect(result.err.endsWith('}\n') && result.err.trim().split('\n').length === 1).toBe(true);
});

test('a fault of the program is a JSON object too, with exit code 1', async () => {
  let err = '';
  const out = () => {
    throw new TypeError('a fault made by the test');
  };
  const io = { out, err: (text: string) => void (err += text), progress: undefined };
  const argv = ['chart', kingfisher, '--rounds', '4', '--dry-run', '--json'];
  const code = await run(argv, en, { ...io, signal: new AbortController().signal });
  expect(code).toBe(1);
  expect(JSON.parse(err).error).toMatchObject({
    code: 'bug',
    message: /made by the test/ as never,
  });
});

test('after -- even --json is a file’s name', async () => {
  const { code, err } = await inProcess('check', '--', '--json');
  expect(code).toBe(3);
  expect(err).toMatch(/^Error: /);
});

const slips: [slip: string, meant: string, argv: string[]][] = [
  ['command', 'Did you mean chart?', ['chrt', kingfisher]],
  ['command', 'Did you mean redraw?', ['redarw', 'pattern.json']],
  ['option', 'Did you mean --wedges?', ['chart', kingfisher, '--wegdes', '7']],
  ['option', 'Did you mean --title?', ['blank', '--titel', 'x']],
  ['choice', 'Did you mean “spiral”?', ['blank', '--construction', 'sprial']],
  ['choice', 'Did you mean “drawing”?', ['chart', kingfisher, '--art', 'drawnig']],
  ['bead’s name', 'Did you mean “buoy red”?', ['chart', kingfisher, '--keep', 'bouy red']],
  ['bead’s id', 'Did you mean “op-07”?', ['chart', kingfisher, '--leave-out', 'op07']],
  ['background', 'Did you mean “lagoon”?', ['chart', kingfisher, '--background', 'lagon']],
];

test.each(slips)('a slip in a %s: %s', async (_what, meant, argv) => {
  const harbour = argv[0] === 'chart' ? ['--beads', join(top, 'palettes/harbour.csv')] : [];
  const { code, err } = await inProcess(...argv, ...harbour, '-o', join(folder, 'x'));
  expect(code).toBe(2);
  expect(err).toContain(meant);
});

test('nothing is suggested where nothing is near', async () => {
  // Damerau 1964: one letter wrong, missing, too many, or two swapped is one slip.
  for (const slip of ['barlay', 'barly', 'barrley', 'braley']) {
    expect(similarTo(slip, ['heather', 'barley'])).toBe('barley');
  }
  expect(similarTo('unobtainium', ['heather', 'barley'])).toBeUndefined();
  expect(similarTo('x', ['a', 'b'])).toBeUndefined();
  const { err } = await inProcess('frobnicate');
  expect(err).toBe("Error: Unknown command 'frobnicate'. See: rondure --help\n");
});

const chart = `${program} chart ${kingfisher} --rounds 6`;
/** Runs a command on a pseudo-terminal, by `script` of Debian's bsdutils; what the screen got. */
function onTerminal(command: string, env: NodeJS.ProcessEnv = {}): string {
  const made = spawnSync('script', ['-qec', command, '/dev/null'], {
    cwd: folder,
    env: { ...process.env, TERM: 'xterm', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  expect(made.error).toBeUndefined();
  expect(made.status).toBe(0);
  return made.stdout.toString();
}

test('progress is one line, on a terminal’s standard error only, and gone at the end', () => {
  const screen = onTerminal(`${chart} -o pty > said.txt`);
  expect(screen).toContain('Reading the picture');
  expect(screen).toContain('Painting the panel');
  expect(screen).not.toContain('\n');
  expect(screen.endsWith('\r\u001b[K')).toBe(true);
  expect(readFileSync(join(folder, 'said.txt'), 'utf8')).not.toContain('Reading');
  expect(onTerminal(`${chart} --dry-run 2> err.txt`)).not.toContain('Reading');
  expect(readFileSync(join(folder, 'err.txt'), 'utf8')).toBe('');
  expect(onTerminal(`${chart} --dry-run --json > said.txt`)).toBe('');
});

test('a dumb terminal gets no progress, and no terminal gets colours', () => {
  expect(onTerminal(`${chart} --dry-run > said.txt`, { TERM: 'dumb' })).toBe('');
  for (const env of [{ NO_COLOR: '1' }, { NO_COLOR: '', FORCE_COLOR: '3' }]) {
    // ECMA-48, 8.3.117: colours are set by CSI … m.
    // eslint-disable-next-line no-control-regex
    const colour = /\u001b\[[0-9;]*m/;
    expect(onTerminal(`${chart} --dry-run`, env)).not.toMatch(colour);
    expect(onTerminal(`${program} chart --help`, env)).not.toMatch(colour);
  }
});

test('a reader that goes away early is no error', () => {
  for (const words of ['--help', `chart ${kingfisher} --rounds 4 --dry-run`]) {
    const { status, stderr } = shell(`${program} ${words} | head -c 1 > /dev/null`);
    expect(stderr.toString()).toBe('');
    expect(status).toBe(0);
  }
  const gone = shell(`${program} chart nowhere.png --dry-run 2> >(true)`);
  expect([0, 3]).toContain(gone.status);
});

test('a summary that cannot be printed is told as JSON too', () => {
  const { status, stderr } = shell(`${chart} --dry-run --json > /dev/full`);
  expect(status).toBe(5);
  expect(JSON.parse(stderr.toString()).error).toMatchObject({ code: 'not-printed' });
});
