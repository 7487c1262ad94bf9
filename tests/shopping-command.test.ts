import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { patternText } from '../src/core/pattern/serialise.js';
import { shoppingText } from '../src/core/pages/lists/shopping-text.js';
import { en } from '../src/words/index.js';
import { patternOf, someBeads } from './support/patterns.js';
import { inProcess } from './support/run.js';

const pattern = patternOf(
  Array.from({ length: 12 }, (_, n) => `${'A'.repeat(6 * n + 5)}B`),
  { wedges: 6 },
  someBeads(2),
);

let folder: string;
let file: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-shopping-'));
  file = join(folder, 'pattern.json');
  writeFileSync(file, patternText(pattern));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('prints the list that the folder gets', async () => {
  const { code, out, err } = await inProcess('shopping', file);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toBe(shoppingText(pattern, en));
});

test('writes text and CSV for a batch, and replaces only lists of ours', async () => {
  for (const name of ['twelve.txt', 'twelve.CSV']) {
    const path = join(folder, name);
    const first = await inProcess('shopping', file, '--pieces', '12', '-o', path);
    expect(first.code).toBe(0);
    expect(first.out).toContain('for 12 purses is in');
    expect((await inProcess('shopping', file, '-o', path)).code).toBe(5);
    expect((await inProcess('shopping', file, '-o', path, '--force')).code).toBe(0);
  }
  const csv = readFileSync(join(folder, 'twelve.CSV'), 'utf8');
  const { data } = Papa.parse<Record<string, string>>(csv, { header: true });
  expect(data[0]).toMatchObject({ kind: 'bead', letter: 'A', count: '912' });
  const foreign = join(folder, 'letter.txt');
  writeFileSync(foreign, 'Dear aunt,\n');
  const { code, err } = await inProcess('shopping', file, '-o', foreign, '--force');
  expect(code, err).toBe(5);
  expect(readFileSync(foreign, 'utf8')).toBe('Dear aunt,\n');
});

test('the options of the thread go before the pattern, in the list and in pattern.json', async () => {
  const given = ['--thread-per-stitch', '30', '--reserve', '0', '--tail', '10cm'];
  const { out } = await inProcess('shopping', file, '--json', ...given, '--thread-tex', '90');
  const list = JSON.parse(out);
  // 936 stitches of 30 mm on two panels, one length each: 28.08 m and four tails of 10 cm.
  expect(list).toMatchObject({ schema: 'rondure-shopping', pieces: 1, panels: 2 });
  expect(list.thread).toMatchObject({ stitches: 936, netMm: 28080, tailsMm: 400, totalMm: 28480 });
  expect(list.thread).toMatchObject({ perStitchFrom: 'pattern', reserveMm: 0, grams: 2.56 });
  const dir = join(folder, 'again');
  const names = ['--thread-name', 'silk no. 9', '--thread-diameter', '0.5'];
  const made = await inProcess('redraw', file, '-o', dir, ...given, ...names);
  expect(made.code, made.err).toBe(0);
  expect(made.out).toContain('goes through the hole of 11/0 beads');
  const kept = JSON.parse(readFileSync(join(dir, 'pattern.json'), 'utf8'));
  expect(kept.thread).toEqual({
    name: 'silk no. 9',
    diameterMm: 0.5,
    perStitchMm: 30,
    reservePercent: 0,
    tailMm: 100,
  });
  expect(readFileSync(join(dir, 'shopping.txt'), 'utf8')).toContain('silk no. 9: 29 m');
  // Another thickness replaces the earlier one, whichever way it was given.
  const last = join(folder, 'last');
  await inProcess('redraw', join(dir, 'pattern.json'), '-o', last, '--thread-tex', '50');
  const { thread } = JSON.parse(readFileSync(join(last, 'pattern.json'), 'utf8'));
  expect(thread).toMatchObject({ tex: 50, perStitchMm: 30 });
  expect(thread).not.toHaveProperty('diameterMm');
});

test('one panel alone has no seam, frame or braid', async () => {
  const { out } = await inProcess('shopping', file, '--panels', '1', '--pieces', '3');
  expect(out).toContain('for 3 single panels');
  expect(out).not.toMatch(/lasp frame|[Bb]raid|sewn together/);
  expect(out).toContain('3 pieces of');
});

test.each([
  [['--pieces', '0'], /--pieces cannot be “0”: give a whole number from 1 to 10000/],
  [['--pieces', '1.5'], /whole number/],
  [['--panels', '3'], /--panels cannot be “3”/],
  [['--bead-reserve', '-5'], /from 0 to 200/],
  [['--thread-per-stitch', '0'], /from 2 to 500/],
  [['--thread-diameter', 'thick'], /from 0.05 to 5/],
  [['--thread-tex', '99999'], /from 1 to 2000/],
  [['--thread-tex', '50', '--thread-diameter', '0.3'], /both say how thick/],
  [['--reserve', '1e2'], /from 0 to 200/],
  [['--tail', 'long'], /a length such as/],
  [['--thread-name', ''], /1 to 200 letters/],
  [['-o', 'list.pdf'], /ends in .txt or .csv/],
  [['--json', '--quiet'], /contradict/],
])('refuses %j in one sentence', async (options, message) => {
  const { code, out, err } = await inProcess('shopping', file, ...options);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toMatch(message);
  expect(err.trimEnd().split('\n')).toHaveLength(1);
  expect(existsSync('list.pdf')).toBe(false);
});

test('a pattern of two panels is not torn apart', async () => {
  const two = join(folder, 'two.json');
  const panels = [pattern.panels[0], { ...pattern.panels[0], name: 'back' }];
  writeFileSync(two, patternText({ ...pattern, panels }));
  const { code, err } = await inProcess('shopping', two, '--panels', '1');
  expect(code).toBe(2);
  expect(err).toContain('has two panels');
  expect((await inProcess('shopping', two)).out).toContain('this pattern has both');
});
