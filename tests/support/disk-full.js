/*
 * A program of its own for a place with little room. Arguments: how the room is limited, a folder
 * that lies in that place, and a folder with a finished set, whose files are written again and again.
 * 'tmpfs': the first folder gets a disk in memory that goes with this process; it is made so small
 * that in turn every file fails half-way, and that in turn every entry of a folder fails.
 * 'limit': no file may grow beyond what `ulimit -f` said.
 * Prints one line of JSON a try: what was tried, what went wrong, and which paths changed.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, readdirSync, statfsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { run } from '../../dist/cli/program.js';
import { writeFolder } from '../../dist/node/output/output-folder.js';
import { en } from '../../dist/words/index.js';

const [how, place, setFolder] = process.argv.slice(2);
const top = fileURLToPath(new URL('../../', import.meta.url));
const files = new Map(readdirSync(setFolder).map((n) => [n, readFileSync(join(setFolder, n))]));
const room = how === 'tmpfs' ? tmpfs() : undefined;
const [older, fresh] = [join(place, 'older'), join(place, 'on', 'the', 'way', 'set')];
oldSet();

if (room) {
  let before = 0;
  for (const [name, { length }] of files) {
    const bytes = before + Math.floor(length / 2);
    before += Math.ceil(length / 4096) * 4096;
    for (const dir of [fresh, older]) {
      room.leave({ bytes });
      await written(`${bytes} bytes, ${name}`, dir);
    }
  }
  for (let entries = 0; entries < files.size + 4; entries++) {
    room.leave({ entries });
    await written(`${entries} entries`, fresh);
    if (entries < files.size + 2) await written(`${entries} entries`, older);
  }
  room.leave({ bytes: 20_000 });
} else {
  await written('limit', fresh);
  await written('limit', older);
}
for (const dir of [fresh, older]) {
  const blank = ['blank', '--rounds', '3', '--force', '-o', dir];
  if (room) await command(['rounds', join(setFolder, 'rounds.txt'), '--force', '-o', dir]);
  spawned(blank);
}
await command(['beads', join(top, 'palettes/pebbles.csv'), '-o', fresh]);
if (room) {
  room.leave({});
  await written('room enough', older);
}

/** An older set of ours, with a file of the maker's own. */
function oldSet() {
  mkdirSync(join(older, 'photos'), { recursive: true });
  writeFileSync(join(older, 'pattern.json'), '{"format":"rondure-pattern"}');
  writeFileSync(join(older, 'chart.svg'), '<svg/>');
  writeFileSync(join(older, 'photos', 'finished.jpg'), 'the purse');
}

async function written(tried, dir) {
  const before = seen();
  const problem = await writeFolder(dir, files, { force: true }).then(
    () => 'none',
    (error) => error.code,
  );
  tell(`${tried} → ${dir === older ? 'older' : 'new'}`, { problem }, before);
}

/** One command in this process. */
async function command(argv) {
  const before = seen();
  let err = '';
  const io = {
    out() {},
    err: (text) => void (err += text),
    signal: new globalThis.AbortController().signal,
  };
  const code = await run(argv, en, io);
  tell(`${argv[0]} → ${argv.at(-1) === older ? 'older' : 'new'}`, { code, err }, before);
}

/** The program as it is installed. */
function spawned(argv) {
  const before = seen();
  const done = spawnSync(process.execPath, [join(top, 'bin/rondure.js'), ...argv]);
  const facts = { code: done.status, err: done.stderr.toString() };
  tell(`bin ${argv[0]} → ${argv.at(-1) === older ? 'older' : 'new'}`, facts, before);
}

function tell(tried, facts, before) {
  const after = seen();
  const paths = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  const changed = paths.filter((path) => before[path] !== after[path]);
  console.log(JSON.stringify({ tried, ...facts, changed }));
}

/** Every path in the place with a digest of what it holds. */
function seen() {
  const found = {};
  for (const entry of readdirSync(place, { withFileTypes: true, recursive: true })) {
    const path = join(entry.parentPath ?? entry.path, entry.name);
    found[path] = entry.isFile()
      ? createHash('sha256').update(readFileSync(path)).digest('hex')
      : '/';
  }
  return found;
}

/** A disk in memory at the place; `leave` makes it so small that only that much is free. */
function tmpfs() {
  execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=200m,nr_inodes=1000', 'rondure', place]);
  const leave = ({ bytes = 1e8, entries = 500 }) => {
    const { bsize, blocks, bfree, files: all, ffree } = statfsSync(place);
    const size = (blocks - bfree + Math.ceil(bytes / bsize)) * bsize;
    const options = `remount,size=${size},nr_inodes=${all - ffree + entries}`;
    execFileSync('mount', ['-t', 'tmpfs', '-o', options, 'rondure', place]);
  };
  return { leave };
}
