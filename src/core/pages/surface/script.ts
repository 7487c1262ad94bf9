/** Scripts by their Unicode names (UAX #24), those that are set letter by letter. */
const plainScripts = [
  'Latin',
  'Cyrillic',
  'Greek',
  'Han',
  'Hiragana',
  'Katakana',
  'Hangul',
  'Bopomofo',
  'Armenian',
  'Georgian',
  'Ethiopic',
  'Cherokee',
  'Canadian_Aboriginal',
  'Tifinagh',
  'Yi',
  'Osage',
  'Vai',
  'Glagolitic',
  'Gothic',
  'Ogham',
  'Runic',
];

/**
 * Scripts whose letters join, move or run from right to left: to set them one by one would spell
 * them wrongly (The Unicode Standard, chapters 9 and 12 to 17).
 */
const shapedScripts = [
  'Arabic',
  'Hebrew',
  'Syriac',
  'Thaana',
  'Nko',
  'Adlam',
  'Mongolian',
  'Devanagari',
  'Bengali',
  'Gurmukhi',
  'Gujarati',
  'Oriya',
  'Tamil',
  'Telugu',
  'Kannada',
  'Malayalam',
  'Sinhala',
  'Thai',
  'Lao',
  'Tibetan',
  'Myanmar',
  'Khmer',
  'Javanese',
  'Balinese',
  'Sundanese',
  'Tai_Tham',
  'Tai_Le',
  'New_Tai_Lue',
  'Tai_Viet',
  'Meetei_Mayek',
  'Ol_Chiki',
  'Limbu',
  'Lepcha',
  'Batak',
  'Buginese',
  'Cham',
];

// Made when first asked for: most texts never need them.
let tests: readonly (readonly [name: string, test: RegExp])[] | undefined;
let shaped: RegExp | undefined;
/** Hebrew is the first of the shaped scripts in Unicode's order. */
const firstShaped = 0x590;

/** The Unicode script of a character, by its English name; undefined where it has none of its own. */
export function scriptOf(character: string): string | undefined {
  tests ??= [...plainScripts, ...shapedScripts].map((name) => [
    name.replaceAll('_', ' '),
    new RegExp(`^\\p{Script=${name}}`, 'u'),
  ]);
  return tests.find(([, test]) => test.test(character))?.[0];
}

/** Whether a character may be set without regard to its neighbours. */
export function setLetterByLetter(character: string): boolean {
  if ((character.codePointAt(0) ?? 0) < firstShaped) return true;
  shaped ??= new RegExp(`^[${shapedScripts.map((name) => `\\p{Script=${name}}`).join('')}]`, 'u');
  return !shaped.test(character);
}

/** Whether lines of a text may end between its letters, without a space. */
export function breaksBetweenLetters(text: string): boolean {
  return /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u.test(text);
}
