/** What differs between the Englishes of makers: spelling, and two sets of crochet terms. */
export interface English {
  readonly language: 'en-GB' | 'en-US';
  readonly colour: string;
  readonly colours: string;
  readonly grey: string;
  readonly centre: string;
  readonly anticlockwise: string;
  readonly licence: string;
  readonly metre: string;
  readonly metres: string;
  readonly millimetre: string;
  readonly callipers: string;
  /** The stitch of every panel, in full. */
  readonly stitch: string;
  /** Its abbreviation and what that means. */
  readonly sign: readonly [string, string];
}

const british = {
  language: 'en-GB',
  colour: 'colour',
  colours: 'colours',
  grey: 'grey',
  centre: 'centre',
  anticlockwise: 'anticlockwise',
  licence: 'Licence',
  metre: 'metre',
  metres: 'metres',
  millimetre: 'millimetre',
  callipers: 'callipers',
} as const;

/** UK spelling, both sets of terms: for the command line and the text files. */
export const bothEnglish: English = {
  ...british,
  stitch: 'single crochet in US terms, which is double crochet in UK terms',
  sign: ['sc, dc', 'single crochet in US terms is double crochet in UK terms'],
};

/** UK spelling and terms (Craft Yarn Council, differences of US and UK terms, second-hand). */
export const ukEnglish: English = {
  ...british,
  stitch: 'double crochet (dc) in UK terms, which is single crochet in US terms',
  sign: ['dc', 'double crochet, a UK term; in US terms single crochet (sc)'],
};

/** US spelling and terms. */
export const usEnglish: English = {
  language: 'en-US',
  colour: 'color',
  colours: 'colors',
  grey: 'gray',
  centre: 'center',
  anticlockwise: 'counterclockwise',
  licence: 'License',
  metre: 'meter',
  metres: 'meters',
  millimetre: 'millimeter',
  callipers: 'calipers',
  stitch: 'single crochet (sc) in US terms, which is double crochet in UK terms',
  sign: ['sc', 'single crochet, a US term; in UK terms double crochet (dc)'],
};
