import { RondureError } from '../../core/errors.js';

/** An error of the file system, told about the folder that was to be written. */
export function outputError(error: unknown, dir: string): unknown {
  if (error instanceof RondureError) return error;
  const { code, path } = error as NodeJS.ErrnoException;
  // An abort carries a number for a code; it passes as it is, like any fault of this program.
  if (typeof code !== 'string') return error;
  const options = { cause: error };
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return new RondureError('output-disk-full', { dir }, options);
    case 'ENOTDIR':
    case 'EEXIST':
      return new RondureError('output-parent-not-folder', { dir, parent: path ?? dir }, options);
    case 'ENAMETOOLONG':
    case 'EINVAL':
    case 'EILSEQ':
    case 'ERR_INVALID_ARG_VALUE': // a zero byte in the name
      return new RondureError('output-name-bad', { dir }, options);
    default:
      return new RondureError('output-not-writable', { dir, detail: code }, options);
  }
}

/** True for an error of the file system with one of these codes. */
export function hasCode(error: unknown, ...codes: string[]): boolean {
  return codes.includes((error as NodeJS.ErrnoException)?.code ?? '');
}
