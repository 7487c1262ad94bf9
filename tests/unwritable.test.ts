import { execFileSync } from 'node:child_process';
import { chmodSync, chownSync, copyFileSync, mkdirSync, mkdtempSync } from 'node:fs';
import { readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { removeTree } from '../src/node/output/neighbours.js';
import { everythingIn } from './support/folders.js';

/* Root may write everywhere, so a run by root becomes nobody first; anybody else is nobody enough. */

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const isRoot = process.getuid?.() === 0;
const nobody = 65534;
const pattern = '{"format":"rondure-pattern","version":1}';
let root: string;

/** A folder or, with content, a file, that belongs to nobody unless it is said to be root's. */
function put(path: string, mode: number, content?: string | Buffer, owner = nobody): void {
  const full = join(root, path);
  if (content === undefined) mkdirSync(full);
  else writeFileSync(full, content);
  chmodSync(full, mode);
  if (isRoot) chownSync(full, owner, owner);
}

function older(path: string): void {
  put(path, 0o755);
  put(`${path}/pattern.json`, 0o444, pattern);
  put(`${path}/notes.md`, 0o444, 'bought two packets');
  put(`${path}/photos`, 0o755);
  put(`${path}/photos/finished.jpg`, 0o644, 'the purse');
}

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'rondure-locked-'));
  chmodSync(root, 0o755);
  copyFileSync(here('../fixtures/barley-moon.svg'), join(root, 'moon.svg'));
  copyFileSync(here('../palettes/pebbles.csv'), join(root, 'beads.csv'));
  put('rounds.txt', 0o644, 'R1 (7 stitches): 7A\nR2 (14 stitches): 14B\n');
  put('locked', 0o755);
  for (const path of ['locked/older', 'shut', 'secret', 'dark', 'plain', 'sticky']) {
    if (path === 'sticky') put(path, 0o777, undefined, 0);
    older(path === 'sticky' ? 'sticky/older' : path);
  }
  put('file', 0o444, 'mine');
  put('holiday', 0o755);
  put('holiday/chart.png', 0o444, 'weather');
  put('blind', 0o333);
  chmodSync(join(root, 'locked'), 0o555);
  chmodSync(join(root, 'shut'), 0o555);
  chmodSync(join(root, 'secret/pattern.json'), 0);
  chmodSync(join(root, 'dark/photos'), 0);
  chmodSync(join(root, 'plain/photos'), 0o555);
  if (isRoot) chownSync(root, nobody, nobody);
  asNobody([]); // the set `ready` is there before anything is compared
});
afterAll(() => removeTree(root));

/** Runs command lines inside `root`, as a user without rights. */
function asNobody(commands: string[][]): { code: number; err: string }[] {
  const warm = [blank('ready', '--force', '--quiet')];
  const argv = [here('./support/as-nobody.js'), root, JSON.stringify([warm, commands])];
  const out = execFileSync(process.execPath, argv, { encoding: 'utf8' });
  return out
    .trimEnd()
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line));
}

const blank = (dir: string, ...more: string[]) => ['blank', '--rounds', '2', ...more, '-o', dir];
const may = (dir: string, code: string) =>
  `${dir} cannot be written (${code}): choose a place with -o where you may write.`;

test('where one may not write: one sentence, exit 5, and everything as before', () => {
  const cases: [string[], string][] = [
    [blank('locked/new'), may('locked/new', 'EACCES')],
    [blank('locked/a/b/new'), may('locked/a/b/new', 'EACCES')],
    [['chart', 'moon.svg', '-o', 'locked/new'], may('locked/new', 'EACCES')],
    [['beads', 'beads.csv', '-o', 'locked/new'], may(join(root, 'locked/new'), 'EACCES')],
    [['rounds', 'rounds.txt', '-o', 'locked/new'], may('locked/new', 'EACCES')],
    [['read', 'moon.svg', '--blank', 'x', '-o', 'locked/new'], may('locked/new', 'EACCES')],
    [['redraw', 'ready/blank.json', '-o', 'locked/new'], may('locked/new', 'EACCES')],
    // The folder may be written, but what holds it may not: nothing could lie beside it.
    [blank('locked/older', '--force'), may('locked/older', 'EACCES')],
    [blank('shut', '--force'), may('shut', 'EACCES')],
    [blank('secret', '--force'), may('secret', 'EACCES')],
    [blank('dark', '--force'), may('dark', 'EACCES')],
    [blank('moon.svg/new'), 'moon.svg/new cannot be made, since'],
    [blank('file'), 'file is there already:'],
    [blank('file', '--force'), 'file is a file, so it is left as it is:'],
    [blank('holiday', '--force'), 'holiday is a folder without a pattern of ours in it, so'],
    [['beads', 'beads.csv', '--force', '-o', 'plain'], 'is a folder without a sample card of ours'],
  ];
  const before = everythingIn(root);
  const done = asNobody(cases.map(([argv]) => argv));
  for (const [index, [argv, sentence]] of cases.entries()) {
    const { code, err } = done[index];
    expect({ argv, code }).toEqual({ argv, code: 5 });
    expect(err).toContain(sentence);
    expect(err).toMatch(/^Error: [^\n]*\.\n$/);
  }
  expect(everythingIn(root)).toEqual(before);
});

test('somebody else’s folder in a place like /tmp stays as it is', () => {
  // Only root can make such a place; for anybody else the folder is simply shut.
  if (isRoot) {
    for (const path of ['sticky', 'sticky/older']) chownSync(join(root, path), 0, 0);
    chmodSync(join(root, 'sticky'), 0o1777);
    chmodSync(join(root, 'sticky/older'), 0o777);
  } else chmodSync(join(root, 'sticky/older'), 0o555);
  const before = everythingIn(root);
  const [{ code, err }] = asNobody([blank('sticky/older', '--force')]);
  const sentence = may('sticky/older', isRoot ? 'EPERM' : 'EACCES');
  expect({ code, err }).toEqual({ code: 5, err: `Error: ${sentence}\n` });
  expect(everythingIn(root)).toEqual(before);
});

test('what stands in nobody’s way: read-only files of ours, folders of the maker, a blind parent', () => {
  const done = asNobody([blank('plain', '--force', '--quiet'), blank('blind/new', '--quiet')]);
  expect(done).toEqual([
    { code: 0, err: '' },
    { code: 0, err: '' },
  ]);
  const made = ['blank.json', 'blank.pdf', 'blank.png', 'blank.svg'];
  expect(readdirSync(join(root, 'plain')).sort()).toEqual([...made, 'notes.md', 'photos']);
  expect(readFileSync(join(root, 'plain/photos/finished.jpg'), 'utf8')).toBe('the purse');
  expect(statSync(join(root, 'plain/photos')).mode & 0o777).toBe(0o555);
  chmodSync(join(root, 'blind'), 0o755);
  expect(readdirSync(join(root, 'blind'))).toEqual(['new']);
  expect(readdirSync(root).filter((name) => name.startsWith('.'))).toEqual([]);
});
