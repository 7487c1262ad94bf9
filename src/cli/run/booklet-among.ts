import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Warning } from '../../core/errors.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { bookletFile } from '../options/booklet-option.js';
import type { BookletOptions } from '../options/booklet-option.js';

/** booklet.pdf with what holds where nothing is said; `rondure booklet` can do more. */
export async function bookletAmong(
  pattern: Pattern,
  { language }: BookletOptions,
): Promise<Uint8Array> {
  const { makeBooklet, plainBooklet } = await import('./make-booklet.js');
  const wish = { ...plainBooklet, ...(language && { languages: language }) };
  return (await makeBooklet(pattern, wish)).bytes;
}

/** An older booklet that stays in the folder, although its pattern changes. */
export function olderBooklet(folder: string, { booklet }: BookletOptions): Warning[] {
  if (booklet || !existsSync(join(folder, bookletFile))) return [];
  return [{ code: 'booklet-of-before', facts: { file: bookletFile } }];
}
