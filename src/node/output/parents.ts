import { mkdir, rmdir, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { exists } from './neighbours.js';
import { hasCode } from './output-errors.js';

/**
 * Makes every folder that is missing on the way to `path` and itself, and notes each in `made` as it
 * comes, the outermost first. Node's recursive mkdir calls a full disk a missing folder, and when
 * it fails it leaves what it made.
 */
export async function makeParents(path: string, made: string[]): Promise<void> {
  const missing: string[] = [];
  for (let at = path; !(await exists(at)) && dirname(at) !== at; at = dirname(at)) missing.push(at);
  for (const folder of missing.reverse()) {
    try {
      await mkdir(folder);
      made.push(folder);
    } catch (error) {
      // Another run may have made it meanwhile.
      if (!hasCode(error, 'EEXIST') || !(await stat(folder)).isDirectory()) throw error;
    }
  }
}

/** Removes the folders that `makeParents` made for nothing; what somebody put something in stays. */
export async function removeParents(made: readonly string[]): Promise<void> {
  for (const folder of [...made].reverse()) {
    try {
      await rmdir(folder);
    } catch {
      return;
    }
  }
}
