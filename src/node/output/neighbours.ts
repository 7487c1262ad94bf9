import { createHash, randomBytes } from 'node:crypto';
import { chmod, lstat, readdir, rename, rm, rmdir } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/*
 * A folder NAME is written in a hidden neighbour, .NAME.rondure-new-PID-XXXXXXXX. When an older NAME
 * is replaced, that one waits as .NAME.rondure-old-PID-XXXXXXXX, whole, until the new one has its
 * place, and then becomes .NAME.rondure-gone-PID-XXXXXXXX before anything in it is removed. One run
 * uses one mark PID-XXXXXXXX for all three. The process number tells leftovers of a killed run from
 * the work of one that still runs.
 */

type Kind = 'new' | 'old' | 'gone';

/** Marks of this process: another process may have had its number before, in a container always. */
const mine = new Set<string>();
/** Writing takes seconds; an older leftover is nobody's, whoever has its process number by now. */
const longestWriteMs = 600_000;

/** A mark for the neighbours of one run. */
export function newMark(): string {
  const mark = `${process.pid}-${randomBytes(4).toString('hex')}`;
  mine.add(mark);
  return mark;
}

/** The path of a neighbour. */
export function neighbour(dir: string, kind: Kind, mark: string): string {
  return join(dirname(dir), `${stem(dir)}${kind}-${mark}`);
}

/**
 * Mends what a killed run left behind: the older folder goes back to its place when `dir` is
 * missing or empty; whatever else was left is removed, as far as that is allowed. Neighbours of
 * runs that are still alive stay. So does an older folder whose place somebody else took meanwhile:
 * its new set beside it shows that it was never replaced.
 */
export async function recover(dir: string): Promise<void> {
  const left = await leftovers(dir);
  const kept = new Set<string>();
  for (const mark of left.old) {
    const older = neighbour(dir, 'old', mark);
    if (await isFree(dir)) await rename(older, dir);
    else if (left.new.includes(mark)) kept.add(mark);
    else await removeLeftover(older);
  }
  for (const kind of ['new', 'gone'] as const)
    for (const mark of left[kind])
      if (!kept.has(mark)) await removeLeftover(neighbour(dir, kind, mark));
}

/** Brings back a missing folder that a killed run left aside; true when it is there again. */
export async function bringBack(dir: string): Promise<boolean> {
  try {
    if (await exists(dir)) return false;
    await recover(dir);
    return await exists(dir);
  } catch {
    return false;
  }
}

/** True when nothing is there, or an empty folder, which goes. */
async function isFree(dir: string): Promise<boolean> {
  if (!(await exists(dir))) return true;
  try {
    await rmdir(dir);
    return true;
  } catch {
    return false;
  }
}

/** What resists stays hidden and does no harm: no reason to refuse the work. */
async function removeLeftover(path: string): Promise<void> {
  await removeTree(path).catch(() => undefined);
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

/** A removal that failed may still be at work elsewhere in the tree: what is gone is no error. */
async function unlock(path: string): Promise<void> {
  try {
    await chmod(path, 0o700);
    for (const entry of await readdir(path, { withFileTypes: true }))
      if (entry.isDirectory()) await unlock(join(path, entry.name));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
  }
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

/** The marks of what killed runs left beside a folder. */
async function leftovers(dir: string): Promise<Record<Kind, string[]>> {
  const found: Record<Kind, string[]> = { new: [], old: [], gone: [] };
  const start = stem(dir);
  const names = await readdir(dirname(dir)).catch(() => []);
  for (const name of names.sort()) {
    if (!name.startsWith(start)) continue;
    const parts = /^(new|old|gone)-((\d+)-[0-9a-f]{8})$/.exec(name.slice(start.length));
    if (parts === null) continue;
    const [, kind, mark, pid] = parts;
    if (await isInUse(join(dirname(dir), name), mark, Number(pid))) continue;
    found[kind as Kind].push(mark);
  }
  return found;
}

async function isInUse(path: string, mark: string, pid: number): Promise<boolean> {
  if (mine.has(mark)) return true;
  if (pid === process.pid || !isAlive(pid)) return false;
  try {
    return Date.now() - (await lstat(path)).ctimeMs < longestWriteMs;
  } catch {
    return true;
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
