import type { Option } from 'commander';
import { RondureError } from '../core/errors.js';
import { languages } from '../words/index.js';
import type { LanguageChoice, Words } from '../words/index.js';
import { option, shown } from './option-makers.js';
import { similarTo } from './similar.js';

/** `--language cs`, or `--language cs,en-GB` for two side by side. */
export function languageOption(words: Words): Option {
  const { language, languageDefault } = words.booklet.options;
  const given = option('--language <LANGUAGE>', language).argParser(languageChoice(words));
  return shown(given, languageDefault);
}

/** Reads one language tag or two with a comma; upper and lower case are the same. */
function languageChoice({ booklet }: Words) {
  return (got: string): LanguageChoice => {
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
      expected: booklet.languageForm(languages),
      ...(near !== undefined && { near }),
    });
  };
}

/** The tag that was probably meant: of `en` and `de-AT` the one that begins alike. */
function nearest(part: string): string | undefined {
  const begin = part.toLowerCase().split(/[-_]/)[0];
  const alike = languages.find((language) => language.toLowerCase().split('-')[0] === begin);
  return alike ?? similarTo(part, languages);
}
