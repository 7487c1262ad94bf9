import { access, constants, link, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { realpath } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { RondureError } from '../../core/errors.js';
import { exists, neighbour, newMark, recover } from './neighbours.js';
import { hasCode, outputError } from './output-errors.js';
import { makeParents, removeParents } from './parents.js';
import type { StopSignal } from './stop-signal.js';

/** How one file is written. */
export interface OutputFileOptions {
  /** Replace an older file, when it is one of ours. */
  readonly force: boolean;
  /** Whether an older file is one that may be replaced; asked only with `force`. */
  readonly isOurs: (older: Uint8Array) => boolean;
  readonly signal?: StopSignal;
}

/**
 * Whether `writeOutputFile` could write there; to be asked before long work. Nothing is made.
 *
 * Throws 'output-file-exists' (anything there, unless `force`), 'output-file-not-ours' (`force`, and it
 * is a folder or somebody else's file), 'output-parent-not-folder', 'output-name-bad',
 * 'output-not-writable'.
 */
export async function checkFileFree(file: string, options: OutputFileOptions): Promise<void> {
  try {
    const target = await targetOf(file);
    await recover(target);
    await refuse(file, target, options);
    let parent = dirname(target);
    while (!(await exists(parent)) && dirname(parent) !== parent) parent = dirname(parent);
    if (!(await stat(parent)).isDirectory())
      throw new RondureError('output-parent-not-folder', { dir: file, parent });
    await access(parent, constants.W_OK | constants.X_OK);
  } catch (error) {
    throw outputError(error, file);
  }
}

/**
 * Writes one file, whole or not at all: into a hidden neighbour first, which is then renamed. Text
 * is written as UTF-8, missing parent folders are made. On any error or abort all is as before.
 *
 * Throws what `checkFileFree` throws, 'output-disk-full', and the signal's reason when aborted.
 */
export async function writeOutputFile(
  file: string,
  content: Uint8Array | string,
  options: OutputFileOptions,
): Promise<void> {
  let parents: string[] = [];
  let fresh: string | undefined;
  try {
    const target = await targetOf(file);
    await recover(target);
    const older = await refuse(file, target, options);
    options.signal?.throwIfAborted();
    await makeParents(dirname(target), parents);
    fresh = neighbour(target, 'new', newMark());
    await writeFile(fresh, content, { flag: 'wx' });
    options.signal?.throwIfAborted();
    if (older) await rename(fresh, target);
    else await putNew(file, fresh, target);
    fresh = undefined;
    parents = [];
  } catch (error) {
    throw outputError(error, file);
  } finally {
    if (fresh !== undefined) await rm(fresh, { force: true }).catch(() => undefined);
    await removeParents(parents);
  }
}

/** A second name never replaces a file that came up meanwhile, as a rename would. */
async function putNew(file: string, fresh: string, target: string): Promise<void> {
  try {
    await link(fresh, target);
  } catch (error) {
    if (hasCode(error, 'EEXIST') || (await exists(target)))
      throw new RondureError('output-file-exists', { file }, { cause: error });
    // Not every file system gives a file two names.
    if (!hasCode(error, 'EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK')) throw error;
    return rename(fresh, target);
  }
  await rm(fresh, { force: true }).catch(() => undefined);
}

/** The absolute path that is written; a link to a file stays, and its file is written. */
async function targetOf(file: string): Promise<string> {
  try {
    return await realpath(file);
  } catch (error) {
    if (hasCode(error, 'ENOENT', 'ENOTDIR')) return resolve(file);
    throw error;
  }
}

/** True when an older file will be replaced, false when nothing is there; else throws. */
async function refuse(file: string, target: string, options: OutputFileOptions): Promise<boolean> {
  if (/[\\/]$/.test(file))
    throw new RondureError('output-file-not-ours', { file, found: 'folder' });
  if (!(await exists(target))) return false;
  const found = await stat(target).catch(() => undefined);
  if (!options.force && !found?.isDirectory())
    throw new RondureError('output-file-exists', { file });
  if (!found?.isFile()) {
    const what = found?.isDirectory() ? 'folder' : found ? 'special' : 'link';
    throw new RondureError('output-file-not-ours', { file, found: what });
  }
  await access(target, constants.R_OK | constants.W_OK);
  if (!options.isOurs(new Uint8Array(await readFile(target))))
    throw new RondureError('output-file-not-ours', { file, found: 'file' });
  return true;
}
