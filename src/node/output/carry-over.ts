import { chmod, copyFile, link, lstat, mkdir, readdir } from 'node:fs/promises';
import { readlink, symlink, utimes } from 'node:fs/promises';
import { join } from 'node:path';
import { hasCode } from './output-errors.js';
import type { StopSignal } from './stop-signal.js';

/**
 * Gives the entries of one folder a second life in another, as hard links, so that nothing is
 * copied and nothing of the old place changes; where links are not to be had, as copies. Folders
 * are made anew with the same mode and times. `wanted` judges the outermost names.
 */
export async function carryOver(
  from: string,
  to: string,
  wanted: (name: string) => boolean,
  signal?: StopSignal,
): Promise<void> {
  for (const name of (await readdir(from)).filter(wanted)) {
    signal?.throwIfAborted();
    const [source, target] = [join(from, name), join(to, name)];
    const about = await lstat(source);
    if (!about.isDirectory()) {
      await linkOrCopy(source, target, about.isSymbolicLink());
      continue;
    }
    await mkdir(target);
    await carryOver(source, target, () => true, signal);
    await chmod(target, about.mode & 0o7777);
    await utimes(target, about.atime, about.mtime);
  }
}

async function linkOrCopy(source: string, target: string, isLink: boolean): Promise<void> {
  try {
    if (isLink) await symlink(await readlink(source), target);
    else await link(source, target);
  } catch (error) {
    // On disks that do not tell A from a, this is one of our files under another spelling.
    if (hasCode(error, 'EEXIST')) return;
    if (isLink || !hasCode(error, 'EPERM', 'ENOTSUP', 'ENOSYS', 'EMLINK', 'EXDEV')) throw error;
    const about = await lstat(source);
    await copyFile(source, target);
    await chmod(target, about.mode & 0o7777);
    await utimes(target, about.atime, about.mtime);
  }
}
