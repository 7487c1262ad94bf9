/*
 * A program of its own that runs commands as a user without rights. Arguments: a folder to work in
 * and JSON of two lists of command lines. Started as root, it runs the first list, then becomes
 * the user nobody and runs the second; what it read of this project stays in memory, since nobody
 * may have no right to look in here. Prints one line of JSON a command of the second: { code, err }.
 */
import fs from 'node:fs';
import promises from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';
import { fileURLToPath } from 'node:url';
import { run } from '../../dist/cli/program.js';
import { en } from '../../dist/words/index.js';

const [folder, lists] = process.argv.slice(2);
process.chdir(folder);
const signal = new globalThis.AbortController().signal;

const top = fileURLToPath(new URL('../../', import.meta.url));
keepWhatIsRead(fs, 'readFileSync');
keepWhatIsRead(promises, 'readFile');
syncBuiltinESMExports();

function keepWhatIsRead(from, name) {
  const read = from[name];
  const kept = new Map();
  from[name] = (path, ...more) => {
    const key = path instanceof URL ? fileURLToPath(path) : String(path);
    if (!key.startsWith(top)) return read(path, ...more);
    if (!kept.has(key)) kept.set(key, read(path, ...more));
    return kept.get(key);
  };
}

async function tried(argv) {
  let err = '';
  const code = await run(argv, en, { out() {}, err: (text) => void (err += text), signal });
  return { code, err };
}

const [warm, commands] = JSON.parse(lists);
for (const argv of warm) {
  const done = await tried(argv);
  if (done.code !== 0) throw new Error(done.err);
}
if (process.getuid() === 0) {
  process.setgroups([65534]);
  process.setgid(65534);
  process.setuid(65534);
}
process.umask(0o022);
for (const argv of commands) console.log(JSON.stringify(await tried(argv)));
