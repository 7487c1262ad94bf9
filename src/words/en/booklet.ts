import { pages } from './pages.js';

const paperName = { a4: 'A4', letter: 'Letter' } as const;

/** Words of `booklet`: the command, and what stands on its pages. */
export const booklet = {
  ...pages.booklet,
  about: 'make a booklet of a pattern, as a PDF to print or to sell',
  examples: `Examples:
  rondure chart fixtures/kingfisher.svg --rounds 12 -o bird
  rondure booklet bird/pattern.json -o bird.pdf
  rondure booklet bird/pattern.json --language cs,en-GB --large -o both.pdf
  rondure booklet bird/pattern.json --author "A. Maker" --listing shop -o b.pdf
`,
  options: {
    output: 'the new file: its name ends in .pdf',
    among: 'make booklet.pdf too: everything on pages to print (A4)',
    paper: 'paper to print on',
    print: 'colour, or grey for a black-and-white printer: a fill and a letter for every bead',
    large: 'large print: 18 points, larger beads, more pages',
    hand: 'hand that the edition is for; the other hand than the pattern’s mirrors the picture',
    handDefault: 'the pattern’s own',
    author: 'who made the pattern, for the cover and the last page',
    authorDefault: 'no author is named',
    licence: 'what a buyer may do with the pattern, for the last page',
    licenceDefault: 'none is stated',
    contact: 'where corrections go to, for the last page: an address',
    contactDefault: 'none is printed',
    time: 'how long the work takes, for the cover, in your own words',
    timeDefault: 'none is printed',
    photo: 'your own photograph of the finished piece, for the cover',
    photoDefault: 'the piece is drawn',
    listing: 'a folder too, with pictures and texts in every language for a shop’s page',
    listingDefault: 'none is made',
    date: 'day of this edition, YYYY-MM-DD',
    dateDefault: 'no date is printed',
    language:
      'language of the pages: cs de en-GB en-US es fr it ja pl ru tr uk zh; two with a comma stand side by side',
    languageDefault: 'en-GB',
    font: 'your own .ttf or .otf for letters that the bundled fonts lack; may be given again',
    fontDefault: 'Literata and Noto Sans: Latin, Greek, Cyrillic, Japanese, Chinese',
    force: 'replace an earlier booklet of this name',
  },
  listed: (f: { dir: string }) => `${f.dir}: pictures and texts for a shop’s page.`,
  made: (f: { file: string; pages: number; paper: 'a4' | 'letter' }) =>
    `${f.file}: a booklet of ${f.pages === 1 ? '1 page' : `${f.pages} pages`}, ${paperName[f.paper]}. Print at 100 %, scaling off: the lining template is at true size.`,
};
