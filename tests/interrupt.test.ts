import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../src/cli/program.js';
import { RondureError } from '../src/core/errors.js';
import { en } from '../src/words/index.js';

const top = fileURLToPath(new URL('../', import.meta.url));
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
