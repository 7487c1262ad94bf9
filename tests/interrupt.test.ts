import { spawn, spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../src/cli/program.js';
import { RondureError } from '../src/core/errors.js';
import { en } from '../src/words/index.js';
import { everythingIn } from './support/folders.js';
import { inProcess } from './support/run.js';

const top = fileURLToPath(new URL('../', import.meta.url));
const atStep = pathToFileURL(join(top, 'tests/support/at-step.js')).href;
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-interrupt-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each([
  ['chart', [join(top, 'fixtures/kingfisher.svg'), '--rounds', '4']],
  ['blank', ['--rounds', '4']],
  ['beads', [join(top, 'palettes/pebbles.csv')]],
])('Ctrl-C while %s writes: exit 130, one sentence, nothing left', async (name, more) => {
  const abort = new AbortController();
  const guarded: boolean[] = [];
  let err = '';
  const io = {
    out() {},
    err: (text: string) => void (err += text),
    progress: undefined,
    signal: abort.signal,
    guard(on: boolean) {
      guarded.push(on);
      if (on) abort.abort(new RondureError('interrupted', undefined));
    },
  };
  const code = await run([name, ...more, '-o', join(folder, 'set')], en, io);
  expect({ code, err }).toEqual({ code: 130, err: 'Error: Interrupted: nothing was written.\n' });
  expect(guarded).toEqual([true, false]);
  expect(readdirSync(folder)).toEqual([]);
});

/*
 * The program itself with real signals, sent while the second file of a set is to be written. It
 * answers with the code that a shell gives for the signal.
 */
const signals = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 };
const inputs = {
  chart: ['moon.svg', '--rounds', '2', '--colours', '2'],
  redraw: ['older/pattern.json'],
  rounds: ['older/rounds.txt'],
  read: ['coloured.png', '--blank', 'blank/blank.json', '--unpainted', 'bare'],
  blank: ['--rounds', '2'],
  beads: ['beads.csv'],
};
const older = { blank: 'blank', beads: 'card' };

describe('a signal while the program writes', () => {
  let root: string;
  beforeAll(async () => {
    root = mkdtempSync(join(tmpdir(), 'rondure-signal-'));
    copyFileSync(join(top, 'fixtures/barley-moon.svg'), join(root, 'moon.svg'));
    copyFileSync(join(top, 'palettes/pebbles.csv'), join(root, 'beads.csv'));
    const at = (name: string) => join(root, name);
    const small = ['--rounds', '2', '--colours', '2'];
    for (const argv of [
      ['chart', at('moon.svg'), ...small, '-o', at('older')],
      ['blank', '--rounds', '3', '-o', at('blank')],
      ['beads', at('beads.csv'), '-o', at('card')],
    ])
      expect(await inProcess(...argv)).toMatchObject({ code: 0, err: '' });
    // A crayon laid over the middle of the blank chart.
    const page = sharp(at('blank/blank.png'));
    const { width, height } = await page.metadata();
    const red = `<svg width="${width}" height="${height}"><circle cx="50%" cy="50%" r="15%" fill="#d33"/></svg>`;
    await page
      .composite([{ input: Buffer.from(red), blend: 'multiply' }])
      .toFile(at('coloured.png'));
  });
  afterAll(() => rmSync(root, { recursive: true, force: true }));

  const cases = Object.entries(inputs).flatMap(([command, input], n) => [
    [command, 'a new set', Object.keys(signals)[n % 3], [...input, '-o', 'on/the/way']] as const,
    [
      command,
      'an older set',
      Object.keys(signals)[(n + 1) % 3],
      [...input, '--force', '-o', older[command as 'blank'] ?? 'older'],
    ] as const,
  ]);
  test.each(cases)('%s, %s, %s: its code, one sentence, all as before', (name, _, signal, argv) => {
    const before = everythingIn(root);
    const done = spawnSync(
      process.execPath,
      ['--import', atStep, join(top, 'bin/rondure.js'), name, ...argv],
      {
        cwd: root,
        encoding: 'utf8',
        env: {
          ...process.env,
          AT_FOLDER: root,
          AT_STEP: '2',
          AT_CALL: 'writeFile',
          AT_SIGNAL: signal,
        },
      },
    );
    expect({ code: done.status, out: done.stdout, err: done.stderr }).toEqual({
      code: signals[signal as 'SIGINT'],
      out: '',
      err: 'Error: Interrupted: nothing was written.\n',
    });
    expect(everythingIn(root)).toEqual(before);
  });

  test.each([
    ['blank', 'SIGINT'],
    ['beads', 'SIGTERM'],
  ] as const)(
    '%s, %s before anything is written: ended by it, all as before',
    async (name, signal) => {
      const before = everythingIn(root);
      const argv = [join(top, 'bin/rondure.js'), name, ...inputs[name], '-o', 'fresh'];
      const child = spawn(process.execPath, argv, { cwd: root, stdio: 'ignore' });
      setTimeout(() => child.kill(signal), 100);
      const ended = await new Promise((done) => child.on('close', (...by) => done(by)));
      expect(ended).toEqual([null, signal]);
      expect(everythingIn(root)).toEqual(before);
    },
  );
});
