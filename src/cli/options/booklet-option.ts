import type { Option } from 'commander';
import { RondureError } from '../../core/errors.js';
import type { Words } from '../../words/index.js';
import { flag, inGroup, optionsOf } from './described.js';
import type { ValuesOf } from './described.js';
import { languageOf } from './language-option.js';

/** Its name in the folder of a pattern. */
export const bookletFile = 'booklet.pdf';

/** `--booklet` and the language of its pages, of a booklet among the files of a pattern. */
export const bookletTable = inGroup('printing', {
  booklet: flag('--booklet', { word: (words) => words.booklet.options.among }),
  language: languageOf,
});

/** Their values. */
export interface BookletOptions extends ValuesOf<typeof bookletTable> {}

/** `--booklet` and the language, for commander. */
export const bookletOptions = (words: Words): Option[] => optionsOf(bookletTable, words);

/** Refuses a language where there is no booklet to be in it. */
export function refuseBookletContradictions({ booklet, language }: BookletOptions): void {
  if (booklet || language === undefined) return;
  throw new RondureError('usage', { problem: { kind: 'language-without-booklet' } });
}
