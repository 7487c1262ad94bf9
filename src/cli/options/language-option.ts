import type { Option } from 'commander';
import { RondureError } from '../../core/errors.js';
import { languages } from '../../words/index.js';
import type { LanguageChoice, Words } from '../../words/index.js';
import { optionsOf } from './described.js';
import type { Described } from './described.js';
import { similarTo } from '../said/similar.js';

/** `--language cs`, or `--language cs,en-GB` for two side by side. */
export const languageOf: Described<LanguageChoice, false> = {
  flags: '--language <LANGUAGE>',
  parse: languageChoice,
  said: (words) => words.booklet.options.languageDefault,
  word: (words) => words.booklet.options.language,
};

/** The same for commander. */
export const languageOption = (words: Words): Option =>
  optionsOf({ language: languageOf }, words)[0];

/** Reads one language tag or two with a comma; upper and lower case are the same. */
function languageChoice(got: string): LanguageChoice {
  const parts = got.split(',').map((part) => part.trim());
  const found = parts.map((part) =>
    languages.find((language) => language.toLowerCase() === part.toLowerCase()),
  );
  const [first, second] = found;
  if (first !== undefined && found.length === 1) return [first];
  if (first !== undefined && second !== undefined && found.length === 2 && first !== second) {
    return [first, second];
  }
  const wrong = parts[found.indexOf(undefined)];
  const near = wrong === undefined ? undefined : nearest(wrong);
  throw new RondureError('option-value', {
    option: '--language',
    got: got.replace(/\s+/g, ' ').slice(0, 40),
    expected: { kind: 'languages', languages },
    ...(near !== undefined && { near }),
  });
}

/** The tag that was probably meant: of `en` and `de-AT` the one that begins alike. */
function nearest(part: string): string | undefined {
  const begin = part.toLowerCase().split(/[-_]/)[0];
  const alike = languages.find((language) => language.toLowerCase().split('-')[0] === begin);
  return alike ?? similarTo(part, languages);
}
