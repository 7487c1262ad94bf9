import type { FontChoice, FurtherFont, LineBreaks } from './font.js';

/** What the bundled Japanese and Chinese fonts were cut down to: see fonts/README.md. */
const eastern =
  /[·—‘’“”‥…※\u2190-\u2193\u2460-\u2473\u25a0-\u26ff\u3000-\u9fff\uf900-\ufaff\ufe30-\ufe4f\uff00-\uffef]/u;

/** The bundled fonts besides Noto Sans, by the end of their file's name. */
export type EasternFont = 'JP' | 'SC';
export const easternFonts: readonly EasternFont[] = ['JP', 'SC'];

/** Whether a text has characters that only they have, and so may want them. */
export const wantsEastern = (text: string): boolean =>
  /[\u3000-\u9fff\uf900-\ufaff\uff00-\uffef]/u.test(text);

/** One of them, read when a character asks for it. */
export function easternFont(
  name: EasternFont,
  read: (name: EasternFont) => ReturnType<FurtherFont['read']>,
  first = false,
): FurtherFont {
  return {
    name: name.toLowerCase(),
    first,
    mayHave: (character) => eastern.test(character),
    read: () => read(name),
  };
}

/**
 * The fonts beside Noto Sans for pages in a language, and the user's own for what they lack.
 *
 * @param language BCP 47; Japanese and Chinese want punctuation and characters of their own form
 * @param read gives the bytes of an eastern font
 */
export function fontChoiceForPages(
  language: string,
  own: readonly FurtherFont[],
  read: (name: EasternFont) => ReturnType<FurtherFont['read']>,
  lineBreaks: LineBreaks,
): FontChoice {
  const first = ({ ja: 'JP', zh: 'SC' } as const)[language.slice(0, 2)];
  const east = easternFonts
    .map((name) => easternFont(name, read, name === first))
    .sort((a, b) => Number(b.first) - Number(a.first));
  return { further: [...east, ...own], canAdd: true, lineBreaks };
}
