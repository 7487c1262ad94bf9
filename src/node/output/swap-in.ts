import { renameSync } from 'node:fs';
import { rename } from 'node:fs/promises';
import { RondureError } from '../../core/errors.js';
import { exists, removeTree } from './neighbours.js';

/** Gives the finished folder `fresh` its place, where nothing was. */
export async function putNew(dir: string, target: string, fresh: string): Promise<void> {
  // A rename would silently replace an empty folder that came up meanwhile.
  if (await exists(target)) throw new RondureError('output-exists', { dir });
  await rename(fresh, target);
}

/**
 * Puts the finished folder `fresh` in the place of the older `target`; when that fails, the older
 * one goes back. No system call within reach of Node exchanges two folders at once, so between two
 * renames the place is empty. They follow each other without a pause, and a run that is killed
 * exactly there leaves the older folder whole as `aside`, from where `recover` brings it back.
 */
export async function replaceOlder(
  target: string,
  fresh: string,
  aside: string,
  gone: string,
): Promise<void> {
  renameSync(target, aside);
  try {
    renameSync(fresh, target);
  } catch (error) {
    renameSync(aside, target);
    throw error;
  }
  // The new set is complete: should the older one resist, the next run removes it.
  try {
    renameSync(aside, gone);
    await removeTree(gone);
  } catch {
    return;
  }
}
