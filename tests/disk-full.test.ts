import { execFile, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inProcess } from './support/run.js';

/*
 * Where the system lets us (as root, or where anybody may have a namespace of their own), the disk
 * that runs full is a real one, in memory. A limit on the size of files works everywhere; there the
 * system says EFBIG, since there is room but not for this.
 */

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const tries = here('./support/disk-full.js');
const run = promisify(execFile);

interface Try {
  tried: string;
  problem?: string;
  code?: number;
  err?: string;
  changed: string[];
}

let root: string;
let place: string;
let set: string;
beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'rondure-full-'));
  place = join(root, 'place');
  set = join(root, 'set');
  mkdirSync(place);
  const picture = here('../fixtures/barley-moon.svg');
  const argv = ['chart', picture, '--rounds', '2', '--colours', '2', '--quiet', '-o', set];
  expect(await inProcess(...argv)).toEqual({ code: 0, out: '', err: '' });
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** How a mount of our own can be had here; undefined where it cannot. */
const namespace = [['-m'], ['-Urm']].find(
  (flags) => spawnSync('unshare', [...flags, 'mount', '-t', 'tmpfs', 'x', '/tmp']).status === 0,
);
const full = (dir: string) =>
  `Error: There is no room left on the disk for ${dir}: make room, or choose another place with -o.\n`;
const tooBig = (dir: string) =>
  `Error: ${dir} cannot be written (EFBIG): choose a place with -o where you may write.\n`;

test.each([
  ...(namespace === undefined
    ? []
    : [
        ['a full disk', 'unshare', [...namespace, process.execPath, tries, 'tmpfs'], full] as const,
      ]),
  ...[20, 300].map(
    (limit) =>
      [
        `a limit of ${limit} blocks a file`,
        'sh',
        ['-c', `ulimit -f ${limit}; exec "$@"`, 'sh', process.execPath, tries, 'limit'],
        tooBig,
      ] as const,
  ),
])('%s: one sentence, exit 5, and everything as before', async (name, program, argv, sentence) => {
  const { stdout } = await run(program, [...argv, place, set]);
  const lines = stdout.trim().split('\n');
  const all = lines.map((line) => JSON.parse(line) as Try);
  const dirs = { older: join(place, 'older'), new: join(place, 'on', 'the', 'way', 'set') };
  const code = sentence === full ? 'output-disk-full' : 'output-not-writable';
  for (const { tried, problem, code: exit, err, changed } of all) {
    if (tried.startsWith('room enough')) {
      expect(problem).toBe('none');
      expect(changed.length).toBe(readdirSync(set).length);
      continue;
    }
    const dir = tried.endsWith('older') ? dirs.older : dirs.new;
    expect({ tried, changed }).toEqual({ tried, changed: [] });
    if (problem !== undefined) expect({ tried, problem }).toEqual({ tried, problem: code });
    else expect({ tried, exit, err }).toEqual({ tried, exit: 5, err: sentence(dir) });
  }
  // Twice at each of the files, at each entry of the folders, and the commands themselves.
  const files = readdirSync(set).length;
  const commands = name === 'a full disk' ? 5 : undefined;
  if (commands) expect(all).toHaveLength(2 * files + (files + 4) + (files + 2) + commands + 1);
});
