import { spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  watch,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkOutputFree, writeFolder } from '../src/node/output/output-folder.js';
import type { FolderKind } from '../src/node/output/output-folder.js';
import { cardFolder } from '../src/node/output/sample-files.js';
import { everythingIn } from './support/folders.js';
import { inProcess } from './support/run.js';
import { sequence } from './support/paint.js';
import { twoSets } from './support/two-sets.js';

/*
 * What is promised for a run that is killed with SIGKILL while it replaces an older set: the folder
 * holds the whole older set or the whole new one. Between two renames, which follow each other
 * without a pause, it is missing instead, and the older set lies whole beside it; the next run that
 * writes there or reads a file in it puts it back.
 */

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const program = here('../bin/rondure.js');
const twoSetsProgram = here('./support/two-sets.js');
const atStep = pathToFileURL(here('./support/at-step.js')).href;
const picture = here('../fixtures/barley-moon.svg');

type Moment = 'outside' | 'writing' | 'between' | 'clearing';
type Contents = Record<string, string>;

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'rondure-killed-'));
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** Starts node in a process of its own; `ended` gives its exit code, or the signal that ended it. */
function start(argv: string[], env: NodeJS.ProcessEnv = {}) {
  const child = spawn(process.execPath, argv, {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<number | string>((done) =>
    child.on('close', (code, signal) => done(signal ?? code!)),
  );
  return { child, ended };
}

/** A folder `set` of ours with a file and a folder of the maker's, alone in its own parent. */
async function oldSet(name: string): Promise<string> {
  const dir = join(root, name, 'set');
  mkdirSync(join(dir, 'photos'), { recursive: true });
  writeFileSync(join(dir, 'photos', 'finished.jpg'), 'the purse');
  writeFileSync(join(dir, 'pattern.json'), '{"format":"rondure-pattern"}');
  writeFileSync(join(dir, 'notes.md'), 'bought two packets');
  return dir;
}

/** Where in the work the kill came, told by what lies beside the folder. */
function momentOf(dir: string): Moment {
  const kinds = readdirSync(join(dir, '..')).map((name) => /rondure-(\w+)-/.exec(name)?.[1]);
  if (!existsSync(dir)) return 'between';
  if (kinds.includes('new')) return 'writing';
  return kinds.includes('gone') || kinds.includes('old') ? 'clearing' : 'outside';
}

/**
 * Looks at what a kill left: one of the whole sets, under its name or, between the renames, beside;
 * and the next run's first look mends everything. Returns the moment and the set that is there.
 */
async function judge(dir: string, sets: Contents[], kind?: FolderKind) {
  const parent = join(dir, '..');
  const moment = momentOf(dir);
  const aside = readdirSync(parent).filter((name) => name.includes('rondure-old'));
  if (moment === 'between') expect(aside).toHaveLength(1);
  const left = everythingIn(moment === 'between' ? join(parent, aside[0]) : dir);
  const set = sets.findIndex((whole) => same(left, whole));
  expect(set, `a whole set after a kill in ${moment}: ${Object.keys(left)}`).toBeGreaterThan(-1);
  await checkOutputFree(dir, true, kind);
  expect(readdirSync(parent)).toEqual(['set']);
  expect(same(everythingIn(dir), sets[set]), 'the same set after the next run').toBe(true);
  return { moment, set };
}

function same(a: Contents, b: Contents): boolean {
  const names = Object.keys(a);
  return names.length === Object.keys(b).length && names.every((name) => a[name] === b[name]);
}

/** Both sets as they look in a folder with the maker's own files; the first is left there. */
async function bothSets(dir: string): Promise<Contents[]> {
  const sets: Contents[] = [];
  for (const n of [1, 0]) {
    await writeFolder(dir, twoSets[n], { force: true });
    sets[n] = everythingIn(dir);
  }
  return sets;
}

test('killed at every single step of replacing a set: old or new, never half', async () => {
  const dir = await oldSet('steps');
  const sets = await bothSets(dir);
  const seen: Moment[] = [];
  let [now, step] = [0, 1];
  for (; ; step++) {
    const env = { AT_FOLDER: join(root, 'steps'), AT_STEP: String(step), AT_SIGNAL: 'SIGKILL' };
    const argv = ['--import', atStep, twoSetsProgram, String(1 - now), dir];
    const end = await start(argv, env).ended;
    if (end === 0) break;
    expect(end).toBe('SIGKILL');
    const { moment, set } = await judge(dir, sets);
    seen.push(moment);
    // The step after which the new set stands, and none before, changes what is there.
    expect(set === now, `step ${step}, ${moment}`).toBe(moment !== 'clearing');
    now = set;
  }
  expect(step).toBeGreaterThan(12);
  expect(new Set(seen)).toEqual(new Set(['outside', 'writing', 'between', 'clearing']));
  expect(everythingIn(dir)).toEqual(sets[1 - now]);
});

test('killed at every single step of writing a new set: nothing or all of it', async () => {
  for (let step = 1; ; step++) {
    const parent = join(root, 'fresh', String(step));
    const dir = join(parent, 'set');
    const env = { AT_FOLDER: root, AT_STEP: String(step), AT_SIGNAL: 'SIGKILL' };
    const end = await start(['--import', atStep, twoSetsProgram, '0', dir], env).ended;
    if (end === 0) {
      expect(step).toBe(8); // two folders, four files and a rename were the steps before
      break;
    }
    expect(end).toBe('SIGKILL');
    expect(existsSync(dir)).toBe(false);
    await writeFolder(dir, twoSets[1], { force: false });
    expect(readdirSync(parent)).toEqual(['set']);
    expect(readdirSync(dir).sort()).toEqual([...twoSets[1].keys()].sort());
  }
});

/** Waits until a new set is on its way beside the folder, or the process has ended. */
async function untilWriting(dir: string, ended: Promise<unknown>): Promise<void> {
  const parent = watch(join(dir, '..'));
  const begun = new Promise<void>((done) =>
    parent.on('change', (_, name) => String(name).includes('rondure-new') && done()),
  );
  await Promise.race([begun, ended]);
  parent.close();
}

/** Microseconds that no timer can wait. */
function spin(us: number): void {
  const until = performance.now() + us / 1000;
  while (performance.now() < until);
}

test('killed at 92 random moments while sets replace each other: old or new, never half', async () => {
  const below = sequence(20_261);
  const seen: Record<Moment, number> = { outside: 0, writing: 0, between: 0, clearing: 0 };
  const lane = async (name: string, kills: number) => {
    const dir = await oldSet(name);
    const sets = await bothSets(dir);
    for (let kill = 0; kill < kills; kill++) {
      const { child, ended } = start([twoSetsProgram, dir]);
      await new Promise((ready) => child.stdout.once('data', ready));
      if (kill % 3 === 0) await pause(below(12));
      else await untilWriting(dir, ended);
      spin(below(kill % 3 === 1 ? 1000 : 3000));
      child.kill('SIGKILL');
      expect(await ended).toBe('SIGKILL');
      seen[(await judge(dir, sets)).moment]++;
    }
  };
  await Promise.all([lane('random-a', 46), lane('random-b', 46)]);
  console.info('kills of two-sets.js by moment', seen);
  expect(seen.writing).toBeGreaterThan(10);
});

const chart = (title: string, dir: string) => [
  ...['chart', picture, '--rounds', '2', '--colours', '2', '--title', title],
  ...['--quiet', '--force', '-o', dir],
];
const palettes = ['pebbles', 'harbour'].map((name) => here(`../palettes/${name}.csv`));

test.each([
  ['chart', chart('first', ''), chart('second', '')],
  [
    'beads',
    ['beads', palettes[0], '--force', '-o', ''],
    ['beads', palettes[1], '--force', '-o', ''],
  ],
])('%s killed 4 times while it replaces a set: old or new, never half', async (name, ...argvs) => {
  const dir = await oldSet(`program-${name}`);
  if (name === 'beads') rmSync(dir, { recursive: true });
  const sets: Contents[] = [];
  for (const argv of argvs) {
    expect(await inProcess(...argv.slice(0, -1), dir)).toMatchObject({ code: 0, err: '' });
    sets.push(everythingIn(dir));
  }
  const below = sequence(77);
  const seen: Moment[] = [];
  let now = 1;
  for (let kill = 0; kill < 4; kill++) {
    // The last kill is sure to come in the middle of the second file.
    const last = kill === 3;
    const env = { AT_FOLDER: root, AT_STEP: '2', AT_SIGNAL: 'SIGKILL', AT_CALL: 'writeFile' };
    const { child, ended } = start(
      [...(last ? ['--import', atStep] : []), program, ...argvs[1 - now].slice(0, -1), dir],
      env,
    );
    if (kill === 0) await pause(below(800));
    else if (!last) {
      await untilWriting(dir, ended);
      spin(below(2000));
    }
    if (!last) child.kill('SIGKILL');
    await ended;
    const { moment, set } = await judge(dir, sets, name === 'beads' ? cardFolder : undefined);
    seen.push(moment);
    now = set;
  }
  console.info(`kills of ${name}: ${seen.join(', ')}`);
  expect(seen).toContain('writing');
});

test('check and redraw find a set that a run was killed between the renames of', async () => {
  const dir = await oldSet('between');
  expect(await inProcess(...chart('purse', dir))).toMatchObject({ code: 0, err: '' });
  const before = everythingIn(dir);
  for (const argv of [['check'], ['redraw', '--quiet', '--force']]) {
    const env = { AT_FOLDER: root, AT_STEP: '2', AT_SIGNAL: 'SIGKILL', AT_CALL: 'renameSync' };
    const { ended } = start(['--import', atStep, twoSetsProgram, '0', dir], env);
    expect(await ended).toBe('SIGKILL');
    expect(existsSync(dir)).toBe(false);
    const done = await inProcess(...argv, join(dir, 'pattern.json'));
    expect(done).toMatchObject({ code: 0, err: '' });
    expect(readdirSync(join(dir, '..'))).toEqual(['set']);
    expect(everythingIn(dir)).toEqual(before);
  }
});
