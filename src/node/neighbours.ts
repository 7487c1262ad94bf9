import { createHash, randomBytes } from 'node:crypto';
import { chmod, lstat, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/*
 * A folder NAME is written in a hidden neighbour, .NAME.rondure-new-PID-XXXXXXXX, and when an older
 * NAME is replaced that one waits as .NAME.rondure-old-PID-XXXXXXXX until the new one is in place.
 * The process number tells leftovers of a killed run from the work of one that still runs.
 */

type Kind = 'new' | 'old';

/** A neighbour's path that nobody uses yet. */
export function neighbour(dir: string, kind: Kind): string {
  const mark = `${process.pid}-${randomBytes(4).toString('hex')}`;
  return join(dirname(dir), `${stem(dir)}${kind}-${mark}`);
}

/**
 * Mends what a killed run left behind: the older folder goes back to its place when `dir` is
 * missing; whatever else was left is removed. Neighbours of runs that are still alive stay.
 */
export async function recover(dir: string): Promise<void> {
  const left = await leftovers(dir);
  for (const path of left.old)
    if (await exists(dir)) await removeTree(path);
    else await rename(path, dir);
  for (const path of left.new) await removeTree(path);
}

/** Removes a folder of ours with everything in it, folders without permission to write as well. */
export async function removeTree(path: string): Promise<void> {
  const options = { recursive: true, force: true };
  try {
    await rm(path, options);
  } catch {
    await unlock(path);
    await rm(path, options);
  }
}

async function unlock(path: string): Promise<void> {
  await chmod(path, 0o700);
  for (const entry of await readdir(path, { withFileTypes: true }))
    if (entry.isDirectory()) await unlock(join(path, entry.name));
}

/** True when something is there, be it a link that leads nowhere. */
export async function exists(path: string): Promise<boolean> {
  try {
    await lstat(path);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'ENOTDIR') return false;
    throw error;
  }
}

/** File names have at most 255 bytes nearly everywhere: a long name is told by its hash. */
function stem(dir: string): string {
  const name = basename(dir);
  const short =
    Buffer.byteLength(name) <= 180
      ? name
      : createHash('sha256').update(name).digest('hex').slice(0, 32);
  return `.${short}.rondure-`;
}

async function leftovers(dir: string): Promise<Record<Kind, string[]>> {
  const found: Record<Kind, string[]> = { new: [], old: [] };
  const start = stem(dir);
  const names = await readdir(dirname(dir)).catch(() => []);
  for (const name of names.sort()) {
    if (!name.startsWith(start)) continue;
    const parts = /^(new|old)-(\d+)-[0-9a-f]{8}$/.exec(name.slice(start.length));
    if (parts === null || isAlive(Number(parts[2]))) continue;
    found[parts[1] as Kind].push(join(dirname(dir), name));
  }
  return found;
}

function isAlive(pid: number): boolean {
  if (pid === process.pid) return true;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
