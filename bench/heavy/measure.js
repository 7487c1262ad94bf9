// Runs the tool and watches what it and the processes that it starts take. Reads /proc, so Linux only.
import { spawn } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const top = fileURLToPath(new URL('../../', import.meta.url));
const everyMs = 5;

/** Memory of a process in MB, now and at its most; undefined when it has ended. */
function memoryOf(pid) {
  try {
    const status = readFileSync(`/proc/${pid}/status`, 'utf8');
    const mb = (key) => Number(new RegExp(`${key}:\\s+(\\d+)`).exec(status)?.[1] ?? 0) / 1024;
    return { now: mb('VmRSS'), most: mb('VmHWM') };
  } catch {
    return undefined;
  }
}

function childrenOf(pid) {
  try {
    return readdirSync(`/proc/${pid}/task`).flatMap((thread) =>
      readFileSync(`/proc/${pid}/task/${thread}/children`, 'utf8').split(' ').filter(Boolean),
    );
  } catch {
    return [];
  }
}

/**
 * @returns exit code, what was said on standard error, seconds, and MB: of the tool, of the largest
 *   process that it started, and of all at one moment
 */
export async function measured(argv) {
  const from = performance.now();
  const child = spawn(process.execPath, ['bin/rondure.js', ...argv], {
    cwd: top,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (part) => (said += part));
  const mb = { tool: 0, started: 0, together: 0 };
  const watch = setInterval(() => {
    const tool = memoryOf(child.pid);
    if (!tool) return;
    const started = childrenOf(child.pid).flatMap((pid) => memoryOf(pid) ?? []);
    mb.tool = Math.max(mb.tool, tool.most);
    for (const { most } of started) mb.started = Math.max(mb.started, most);
    const now = started.reduce((sum, one) => sum + one.now, tool.now);
    mb.together = Math.max(mb.together, mb.tool, now);
  }, everyMs);
  const code = await new Promise((done) => child.on('close', (code) => done(code)));
  clearInterval(watch);
  return { code, said: said.trim(), seconds: (performance.now() - from) / 1000, mb };
}
