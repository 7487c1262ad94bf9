/*
 * Preloaded with `node --import`: this process gets a real signal at its n-th change to files under
 * a folder. The environment says which: AT_FOLDER, AT_STEP (n, from 1), AT_SIGNAL, and AT_CALL when
 * only calls of one function count. Death comes
 * half-way: half of a file is written, one entry of a folder is removed. A signal that the program
 * may answer comes before the change, with time for its listener to run.
 */
import fs from 'node:fs';
import promises from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

const { AT_FOLDER: folder, AT_STEP: step, AT_SIGNAL: signal, AT_CALL: call } = process.env;
const real = { writeFile: promises.writeFile };
let steps = 0;

const names = ['mkdir', 'writeFile', 'rename', 'link', 'symlink', 'copyFile', 'chmod', 'utimes'];
for (const name of [...names, 'rmdir', 'rm']) {
  const change = promises[name];
  promises[name] = async (...given) => {
    if (isTheOne(name, given)) {
      if (signal === 'SIGKILL') await half(name, given);
      process.kill(process.pid, signal);
      await pause(20);
    }
    return change(...given);
  };
}
const renameSync = fs.renameSync;
fs.renameSync = (...given) => {
  if (isTheOne('renameSync', given)) process.kill(process.pid, signal);
  return renameSync(...given);
};
syncBuiltinESMExports();

function isTheOne(name, given) {
  if (call !== undefined && call !== name) return false;
  const within = given.some((one) => typeof one === 'string' && one.startsWith(folder));
  return within && ++steps === Number(step);
}

async function half(name, [path, content]) {
  if (name === 'writeFile') await real.writeFile(path, content.slice(0, content.length / 2));
  if (name !== 'rm') return;
  const [first] = fs.readdirSync(path);
  if (first !== undefined) fs.rmSync(join(path, first), { recursive: true });
}
