import { languageNames, languages } from '../words/pages/languages.js';
import type { Language } from '../words/pages/languages.js';
import { language, speakFromNowOn, words } from './words.js';

/** The language of the page, each by its own name. */
export function Tongue() {
  return (
    <select
      class="tongue"
      aria-label={words.value.pages.language}
      value={language.value}
      onChange={(event) => void speakFromNowOn(event.currentTarget.value as Language)}
    >
      {languages.map((one) => (
        <option key={one} value={one} lang={one}>
          {languageNames[one]}
        </option>
      ))}
    </select>
  );
}
