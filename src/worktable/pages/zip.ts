import { strToU8, zipSync } from 'fflate';
import type { Zippable } from 'fflate';

/** One zip of files; every file has the same date, so that the same files give the same bytes. */
export function zipOf(files: ReadonlyMap<string, string | Uint8Array>): Uint8Array {
  const all: Zippable = {};
  for (const [name, content] of files) {
    const bytes = typeof content === 'string' ? strToU8(content) : content;
    const packed = /\.(png|pdf)$/.test(name);
    all[name] = [bytes, { level: packed ? 0 : 6, mtime: '1980-01-01T00:00:00' }];
  }
  return zipSync(all);
}
