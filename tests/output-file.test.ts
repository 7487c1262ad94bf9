import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync } from 'node:fs';
import { rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { checkFileFree, writeOutputFile } from '../src/node/output/output-file.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-file-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const isOurs = (older: Uint8Array) => older[0] === 0x25;
const plain = { force: false, isOurs };
const forced = { force: true, isOurs };

async function refused(work: Promise<void>): Promise<string> {
  const error: unknown = await work.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  if (error instanceof RondureError) return error.code;
  throw error ?? new Error('nothing was refused');
}

test('writes a new file and its folders, and leaves nothing else', async () => {
  const file = join(folder, 'a', 'b', 'x.pdf');
  await checkFileFree(file, plain);
  expect(readdirSync(folder)).toEqual([]);
  await writeOutputFile(file, '%one', plain);
  expect(readFileSync(file, 'utf8')).toBe('%one');
  expect(readdirSync(join(folder, 'a', 'b'))).toEqual(['x.pdf']);
});

test('an older file stays without force, and one that is not ours stays in any case', async () => {
  const file = join(folder, 'x.pdf');
  await writeOutputFile(file, '%one', plain);
  expect(await refused(checkFileFree(file, plain))).toBe('output-file-exists');
  expect(await refused(writeOutputFile(file, '%two', plain))).toBe('output-file-exists');
  expect(readFileSync(file, 'utf8')).toBe('%one');
  await writeOutputFile(file, '%two', forced);
  expect(readFileSync(file, 'utf8')).toBe('%two');
  writeFileSync(file, 'mine');
  expect(await refused(checkFileFree(file, forced))).toBe('output-file-not-ours');
  expect(await refused(writeOutputFile(file, '%three', forced))).toBe('output-file-not-ours');
  expect(readFileSync(file, 'utf8')).toBe('mine');
  expect(readdirSync(folder)).toEqual(['x.pdf']);
});

test('folders, dead links, bad names and files in the way are refused', async () => {
  mkdirSync(join(folder, 'dir'));
  symlinkSync('nowhere', join(folder, 'dead'));
  writeFileSync(join(folder, 'plain'), '%');
  const cases = [
    ['dir', 'output-file-not-ours'],
    ['new/', 'output-file-not-ours'],
    ['dead', 'output-file-not-ours'],
    ['plain/x.pdf', 'output-parent-not-folder'],
    ['x'.repeat(300), 'output-name-bad'],
    ['x\u0000.pdf', 'output-name-bad'],
  ];
  for (const [name, code] of cases) {
    expect(await refused(writeOutputFile(`${folder}/${name}`, '%', forced)), name).toBe(code);
  }
  expect(readdirSync(folder).sort()).toEqual(['dead', 'dir', 'plain']);
});

test('what a killed run left beside the file goes with the next one', async () => {
  // No process has a number as large as this (Linux: at most 2^22).
  writeFileSync(join(folder, '.x.pdf.rondure-new-99999999-0123abcd'), 'half');
  await writeOutputFile(join(folder, 'x.pdf'), '%one', plain);
  expect(readdirSync(folder)).toEqual(['x.pdf']);
});

test('a link to a file of ours stays a link', async () => {
  writeFileSync(join(folder, 'real.pdf'), '%one');
  symlinkSync('real.pdf', join(folder, 'link.pdf'));
  await writeOutputFile(join(folder, 'link.pdf'), '%two', forced);
  expect(readFileSync(join(folder, 'real.pdf'), 'utf8')).toBe('%two');
});

test('an abort and a place that cannot be written leave all as it was', async () => {
  const abort = new AbortController();
  abort.abort(new Error('stopped'));
  const file = join(folder, 'new', 'x.pdf');
  await expect(writeOutputFile(file, '%', { ...plain, signal: abort.signal })).rejects.toThrow(
    'stopped',
  );
  expect(existsSync(join(folder, 'new'))).toBe(false);
  if (process.getuid?.() === 0) return;
  chmodSync(folder, 0o500);
  expect(await refused(writeOutputFile(join(folder, 'x.pdf'), '%', plain))).toBe(
    'output-not-writable',
  );
  chmodSync(folder, 0o700);
});
