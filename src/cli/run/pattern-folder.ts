import { basename, dirname } from 'node:path';
import { RondureError } from '../../core/errors.js';
import type { OutputOptions } from '../options/output-options.js';

/**
 * With `--force` and no `-o` the files go where pattern.json lies. A chart could be older than the
 * pattern.json beside it, so that only pattern.json itself may be written over.
 */
export function withFolder<O extends OutputOptions>(options: O, file: string): O {
  if (options.output !== undefined || options.dryRun) return options;
  if (options.force && file !== '-' && basename(file) === 'pattern.json') {
    return { ...options, output: dirname(file) };
  }
  throw new RondureError('usage', { problem: { kind: 'no-folder-beside' } });
}
