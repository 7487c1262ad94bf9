import type { FurtherFont } from '../core/draw/font.js';
import type { Edition } from '../booklet/parts/facts.js';
import type { PrintPaper } from '../core/draw/print-sheet.js';
import type { Pattern } from '../core/pattern/schema.js';
import { packageVersion } from '../node/package-version.js';
import { wordsIn } from '../words/index.js';
import type { LanguageChoice } from '../words/index.js';

/** What a booklet is made with besides its pattern. */
export interface BookletWish {
  readonly paper: PrintPaper;
  readonly languages: LanguageChoice;
  readonly fonts: readonly FurtherFont[];
  readonly author?: string | undefined;
  readonly licence?: string | undefined;
  readonly date?: string | undefined;
  readonly edition: Edition;
}

/** What holds where nothing is said. */
export const plainBooklet: BookletWish = {
  paper: 'a4',
  languages: ['en-GB'],
  fonts: [],
  edition: {},
};

/** Draws a booklet; its modules are loaded only now. */
export async function makeBooklet(
  pattern: Pattern,
  { fonts, languages, paper, ...rest }: BookletWish,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const [{ bookletPdf }, { fontsForPages }, said] = await Promise.all([
    import('../booklet/booklet-pdf.js'),
    import('../node/fonts.js'),
    wordsIn(languages),
  ]);
  const lettering = await fontsForPages(languages[0], fonts);
  const version = packageVersion();
  return bookletPdf({ pattern, ...said, languages, fonts: lettering, version, ...rest }, paper);
}
