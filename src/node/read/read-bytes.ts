import { open } from 'node:fs/promises';
import type { FileHandle } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { RondureError } from '../../core/errors.js';
import { byteLimit } from '../../core/picture/limits.js';
import { bringBack } from '../output/neighbours.js';
import { hasCode } from '../output/output-errors.js';

const megabytes = (bytes: number) => Math.ceil(bytes / 1e6);
const limitMegabytes = megabytes(byteLimit);

/**
 * The whole file at a path, or everything on standard input for `-`.
 *
 * Throws 'file-missing', 'file-is-folder', 'file-unreadable', 'file-empty', 'file-too-big',
 * 'stdin-empty'.
 */
export async function readBytes(pathOrDash: string): Promise<Uint8Array> {
  return pathOrDash === '-' ? readStream(process.stdin) : readFrom(pathOrDash);
}

async function readFrom(name: string): Promise<Uint8Array> {
  let file: FileHandle | undefined;
  try {
    file = await openFile(name);
    const about = await file.stat();
    if (about.isDirectory()) throw new RondureError('file-is-folder', { name });
    if (!about.isFile()) return await readStream(file.createReadStream({ autoClose: false }), name);
    if (about.size > byteLimit)
      throw new RondureError('file-too-big', {
        name,
        megabytes: megabytes(about.size),
        limitMegabytes,
      });
    const bytes = await file.readFile();
    if (bytes.length === 0) throw new RondureError('file-empty', { name });
    return bytes;
  } catch (error) {
    throw readError(error, name);
  } finally {
    await file?.close();
  }
}

/** A file in a folder that a run was killed while replacing is found all the same. */
async function openFile(name: string): Promise<FileHandle> {
  try {
    return await open(name, 'r');
  } catch (error) {
    if (hasCode(error, 'ENOENT') && (await bringBack(dirname(resolve(name)))))
      return open(name, 'r');
    throw error;
  }
}

/** Standard input when no name is given; else a pipe or device that has a name. */
async function readStream(
  stream: NodeJS.ReadableStream & { isTTY?: boolean },
  name?: string,
): Promise<Uint8Array> {
  if (stream.isTTY) throw new RondureError('stdin-empty', {});
  const parts: Uint8Array[] = [];
  let total = 0;
  try {
    for await (const part of stream as AsyncIterable<Uint8Array>) {
      total += part.length;
      if (total > byteLimit)
        throw new RondureError('file-too-big', {
          name: name ?? '-',
          megabytes: megabytes(total),
          limitMegabytes,
        });
      parts.push(part);
    }
  } catch (error) {
    throw readError(error, name ?? '-');
  }
  if (total > 0) return Buffer.concat(parts, total);
  throw name === undefined
    ? new RondureError('stdin-empty', {})
    : new RondureError('file-empty', { name });
}

function readError(error: unknown, name: string): unknown {
  if (error instanceof RondureError) return error;
  const code = (error as NodeJS.ErrnoException).code ?? String(error);
  if (code === 'ENOENT' || code === 'ENOTDIR' || code === 'ENAMETOOLONG')
    return new RondureError('file-missing', { name }, { cause: error });
  if (code === 'EISDIR') return new RondureError('file-is-folder', { name }, { cause: error });
  return new RondureError('file-unreadable', { name, detail: code }, { cause: error });
}
