import { access, constants, mkdir, readFile, readdir, realpath } from 'node:fs/promises';
import { chmod, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { RondureError } from '../../core/errors.js';
import { blankOutputs } from '../../core/pages/blank-outputs.js';
import { outputNames } from '../../core/pages/outputs.js';
import { carryOver } from './carry-over.js';
import { exists, neighbour, newMark, recover, removeTree } from './neighbours.js';
import { hasCode, outputError } from './output-errors.js';
import { makeParents, removeParents } from './parents.js';
import type { StopSignal } from './stop-signal.js';
import { putNew, replaceOlder } from './swap-in.js';

/** What else a pattern's folder may get: of a blank chart, and of reading one. */
const besides = [...blankOutputs.map(({ name }) => name), 'doubtful.csv'];

/** The names of every file that a pattern's folder may get from us; others belong to the maker. */
export const ourFiles: readonly string[] = [...outputNames, ...besides];

/** What a kind of folder may get from us, and how an older one of the kind is known. */
export interface FolderKind {
  /** Whether a file of that name may be replaced. */
  isOurFile(name: string): boolean;
  /** Whether the folder is one that was written here. */
  isOurFolder(dir: string): Promise<boolean>;
  /** What a folder that is not ours lacks. */
  readonly mark: 'pattern' | 'card' | 'listing';
}

const patternFolder: FolderKind = {
  isOurFile: (name) => ourFiles.includes(name),
  isOurFolder: holdsPattern,
  mark: 'pattern',
};

/**
 * Whether `writeFolder` could write there; to be asked before long work. Nothing is made, but what
 * a killed run left is mended.
 *
 * Throws 'output-exists' (anything there, unless `force`), 'output-not-ours' (`force`, and it is
 * neither an empty folder nor one with a pattern.json of ours), 'output-is-here',
 * 'output-parent-not-folder', 'output-name-bad', 'output-not-writable'.
 */
export async function checkOutputFree(
  dir: string,
  force: boolean,
  kind: FolderKind = patternFolder,
): Promise<void> {
  try {
    const target = await targetOf(dir);
    await recover(target);
    await refuse(dir, target, force, kind);
    const parent = await nearestParent(target);
    if (!(await stat(parent)).isDirectory())
      throw new RondureError('output-parent-not-folder', { dir, parent });
    await access(parent, constants.W_OK | constants.X_OK);
  } catch (error) {
    throw outputError(error, dir);
  }
}

/**
 * Writes a set of files as one folder, all or nothing: into a hidden neighbour first, which is then
 * renamed. `files` maps plain names to content; text is written as UTF-8. Missing parent folders
 * are made. With `force` a folder of ours is replaced: files of ours that the set no longer has go,
 * files that are not ours stay. On any error or abort everything is as before.
 *
 * Throws what `checkOutputFree` throws, 'output-disk-full', and the signal's reason when aborted.
 */
export async function writeFolder(
  dir: string,
  files: ReadonlyMap<string, Uint8Array | string>,
  options: { force: boolean; signal?: StopSignal; kind?: FolderKind },
): Promise<void> {
  for (const name of files.keys())
    if (basename(name) !== name || name === '' || name === '.' || name === '..')
      throw new TypeError(`no plain file name: ${name}`);
  const { force, signal, kind = patternFolder } = options;
  let parents: string[] = [];
  let fresh: string | undefined;
  let aside: string | undefined;
  try {
    const target = await targetOf(dir);
    await recover(target);
    const older = await refuse(dir, target, force, kind);
    signal?.throwIfAborted();
    await makeParents(dirname(target), parents);
    const mark = newMark();
    const beside = neighbour(target, 'new', mark);
    await mkdir(beside);
    fresh = beside;
    for (const [name, content] of files) {
      signal?.throwIfAborted();
      await writeFile(join(fresh, name), content, { flag: 'wx' });
    }
    if (older) {
      const plain = new Set(
        (await readdir(target, { withFileTypes: true }))
          .filter((entry) => entry.isFile())
          .map((entry) => entry.name),
      );
      const ours = (name: string) => plain.has(name) && (kind.isOurFile(name) || files.has(name));
      await carryOver(target, fresh, (name) => !ours(name), signal);
      await chmod(fresh, (await stat(target)).mode & 0o7777);
    }
    signal?.throwIfAborted();
    if (older) {
      aside = neighbour(target, 'old', mark);
      await replaceOlder(target, fresh, aside, neighbour(target, 'gone', mark));
    } else await putNew(dir, target, fresh);
    fresh = undefined;
    parents = [];
  } catch (error) {
    throw outputError(error, dir);
  } finally {
    // Beside an older folder that could not go back, the new one shows that it was not replaced.
    const needed = aside !== undefined && (await exists(aside).catch(() => true));
    if (fresh !== undefined && !needed) await removeTree(fresh).catch(() => undefined);
    await removeParents(parents);
  }
}

/** The absolute path that is written; a link to a folder stays, and its folder is written. */
async function targetOf(dir: string): Promise<string> {
  try {
    return await realpath(dir);
  } catch (error) {
    if (hasCode(error, 'ENOENT', 'ENOTDIR')) return resolve(dir);
    throw error;
  }
}

/** True when an older folder will be replaced, false when nothing is there; else throws. */
async function refuse(
  dir: string,
  target: string,
  force: boolean,
  kind: FolderKind,
): Promise<boolean> {
  if (!(await exists(target))) return false;
  if (!force) throw new RondureError('output-exists', { dir });
  let names: string[];
  try {
    if (!(await stat(target)).isDirectory())
      throw new RondureError('output-not-ours', { dir, found: 'file' });
    await access(target, constants.R_OK | constants.W_OK | constants.X_OK);
    names = await readdir(target);
  } catch (error) {
    if (hasCode(error, 'ENOENT', 'ELOOP'))
      throw new RondureError('output-not-ours', { dir, found: 'link' }, { cause: error });
    throw error;
  }
  if (names.length > 0 && !(await kind.isOurFolder(target)))
    throw new RondureError('output-not-ours', { dir, found: 'folder', mark: kind.mark });
  const here = relative(target, process.cwd());
  if (here === '' || (here !== '..' && !here.startsWith(`..${sep}`) && resolve(here) !== here))
    throw new RondureError('output-is-here', { dir });
  return true;
}

async function holdsPattern(dir: string): Promise<boolean> {
  return (await isPattern(join(dir, 'pattern.json'))) || (await isPattern(join(dir, 'blank.json')));
}

async function isPattern(path: string): Promise<boolean> {
  try {
    const found: unknown = JSON.parse(await readFile(path, 'utf8'));
    return (found as { format?: unknown } | null)?.format === 'rondure-pattern';
  } catch (error) {
    if (error instanceof SyntaxError || hasCode(error, 'ENOENT', 'EISDIR')) return false;
    throw error;
  }
}

async function nearestParent(target: string): Promise<string> {
  let parent = dirname(target);
  while (!(await exists(parent)) && dirname(parent) !== parent) parent = dirname(parent);
  return parent;
}
