import type { FurtherFont } from '../../core/pages/surface/font.js';
import type { Edition } from '../../booklet/facts.js';
import type { PrintPaper } from '../../core/pages/surface/print-sheet.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { PhotoJpeg } from '../../node/read/read-photo.js';
import { packageVersion } from '../../node/package-version.js';
import { languageNames, languages, wordsIn } from '../../words/index.js';
import type { Language, LanguageChoice } from '../../words/index.js';

/** What a booklet is made with besides its pattern. */
export interface BookletWish {
  readonly paper: PrintPaper;
  readonly languages: LanguageChoice;
  readonly fonts: readonly FurtherFont[];
  readonly author?: string | undefined;
  readonly licence?: string | undefined;
  readonly contact?: string | undefined;
  readonly time?: string | undefined;
  readonly photo?: PhotoJpeg | undefined;
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
    import('../../booklet/booklet-pdf.js'),
    import('../../node/font/fonts.js'),
    wordsIn(languages),
  ]);
  const lettering = await fontsForPages(languages[0], fonts);
  const version = packageVersion();
  return bookletPdf({ pattern, ...said, languages, fonts: lettering, version, ...rest }, paper);
}

/** Pictures and texts for a shop's page, in every language. */
export async function makeListing(
  pattern: Pattern,
  { languages: pageLanguages, paper, fonts: own, ...rest }: BookletWish,
  pages: number,
): Promise<Map<string, Uint8Array | string>> {
  const [{ listingPictures, listingText }, { fontsForPages }, { listingFiles }] = await Promise.all(
    [
      import('../../booklet/listing.js'),
      import('../../node/font/fonts.js'),
      import('../../node/output/listing-files.js'),
    ],
  );
  const fonts = await fontsForPages(pageLanguages[0], own);
  const version = packageVersion();
  const factsIn = async (language: Language) => {
    const said = await wordsIn([language]);
    return { pattern, ...said, languages: [language] as const, fonts, version, ...rest };
  };
  const file = {
    pages,
    paper: { a4: 'A4', letter: 'Letter' }[paper],
    languages: pageLanguages.map((language) => languageNames[language]).join(', '),
  };
  const texts = new Map<string, string>();
  for (const language of languages) {
    texts.set(language, listingText(await factsIn(language), file));
  }
  return listingFiles(listingPictures(await factsIn(pageLanguages[0])), texts);
}
