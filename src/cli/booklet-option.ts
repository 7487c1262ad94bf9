import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Option } from 'commander';
import { RondureError } from '../core/errors.js';
import type { Warning } from '../core/errors.js';
import type { Pattern } from '../core/pattern/schema.js';
import { en } from '../words/index.js';
import type { LanguageChoice, Words } from '../words/index.js';
import { languageOption } from './language-option.js';
import { option, shown } from './option-makers.js';

/** The options of a booklet among the files of a pattern, as commander hands them over. */
export interface BookletOptions {
  booklet?: true;
  language?: LanguageChoice;
}

/** Its name in the folder of a pattern. */
export const bookletFile = 'booklet.pdf';

/** `--booklet` and the language of its pages. */
export function bookletOptions(words: Words): Option[] {
  const said = words.booklet.options;
  return [shown(option('--booklet', said.among), words.cli.options.off), languageOption(words)];
}

/** Refuses a language where there is no booklet to be in it. */
export function refuseBookletContradictions({ booklet, language }: BookletOptions): void {
  if (booklet || language === undefined) return;
  throw new RondureError('usage', { problem: en.booklet.languageAlone });
}

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
