/** A number that was expected, as data; `expectedNumber` words it. */
export interface ExpectedNumber {
  readonly kind: 'whole' | 'between';
  readonly least: number;
  readonly most: number;
}

/** What an option should have held, as data; `optionExpected` words it. */
export type OptionExpected =
  | ExpectedNumber
  | { readonly kind: keyof typeof plain }
  /** A length, in millimetres. */
  | { readonly kind: 'length-between'; readonly least: number; readonly most: number }
  /** How finely a ruler is read, in millimetres. */
  | { readonly kind: 'precision'; readonly most: number }
  | { readonly kind: 'one-of'; readonly choices: readonly string[] }
  | { readonly kind: 'languages'; readonly languages: readonly string[] }
  /** A place on a photograph of so many pixels. */
  | { readonly kind: 'inside-photograph'; readonly width: number; readonly height: number }
  /** The first stitch of a wedge of a swatch. */
  | { readonly kind: 'stitch-of-swatch'; readonly rounds: number; readonly wedges: number };

const between = (least: number, most: number) => `a number from ${least} to ${most}`;
const wholeBetween = (least: number, most: number) => `a whole number from ${least} to ${most}`;

/** What needs no further word. */
const plain = {
  length: 'a length such as 90, 90mm, 9cm or 3.5in',
  shift: 'two numbers in millimetres such as 3,-2',
  title: '1 to 200 letters on one line',
  back: 'a picture, plain: and a bead such as plain:op-07, or same',
  background: 'a colour such as ffffff or white, a bead of the palette, bare or auto',
  swap: 'a letter, an equals sign and a bead, such as A=op-07',
  merge: 'two letters with an equals sign between, such as B=C (B becomes C)',
  day: 'a day of the calendar written as YYYY-MM-DD, for instance 2026-03-14',
  turn: 'how far and which way, with or against the work: "24deg against", "5deg with", or in stitches "2.5st against"',
  points:
    'points such as "centre=512,480; rim1=512,60; 5/1=700,300" (rim and wedge, or round/wedge, = x,y), one of them the centre',
  'each-stitch-once': 'every stitch once',
  'name-of-pdf': 'a name that ends in .pdf',
  'name-of-pdf-or-svg': 'a name that ends in .pdf or .svg',
  'name-of-svg-or-pdf': 'a name that ends in .svg or .pdf',
  'name-of-list': 'the name of a file that ends in .txt or .csv',
};

/** A number that was expected, to stand at the end of an error's sentence. */
export const expectedNumber = ({ kind, least, most }: ExpectedNumber): string =>
  kind === 'whole' ? wholeBetween(least, most) : between(least, most);

/** What an option should have held; stands after “give” in its error. */
export function optionExpected(expected: OptionExpected): string {
  switch (expected.kind) {
    case 'whole':
    case 'between':
      return expectedNumber(expected);
    case 'length-between':
      return `a length from ${expected.least} to ${expected.most} mm, such as 5, 5mm or 0.5cm`;
    case 'precision':
      return `a precision above 0 and up to ${expected.most} mm`;
    case 'one-of':
      return expected.choices.join(', ');
    case 'languages':
      return `one of ${expected.languages.join(', ')}, or two different ones such as cs,en-GB`;
    case 'inside-photograph':
      return `points inside the photograph, which is ${expected.width} × ${expected.height} pixels`;
    case 'stitch-of-swatch':
      return `rounds from 1 to ${expected.rounds} and wedges from 1 to ${expected.wedges}`;
    default:
      return plain[expected.kind];
  }
}

/** Why two options cannot stand together; in brackets in the error that names both. */
export const contradictions = {
  'back-without-picture': 'the back has no picture',
  size: 'both set the size',
  spelling: 'they are one option in two spellings',
  thickness: 'both say how thick the thread is',
  printing: 'one prints, the other does not',
  'paper-is-drawing': 'what is on paper is a drawing',
  'dither-stock': 'dithering spends beads as the shades fall, and cannot keep to what a jar holds',
  'dither-tidy':
    'tidying takes away the single beads that dithering strews in; choose one of the two',
  'dither-edges':
    'dithering lives by contrast between neighbours that the picture has not; choose one of the two',
  ink: 'it is about the outlines of drawings, and --paper has a rule of its own for lines',
  input: 'standard input can be read once only',
  'frame-corner': 'only a squared frame has corners',
  'frame-hinge': 'it is measured for an oval frame',
  'frame-channel': 'only a glued frame has a channel',
  'frame-holes': 'only a sewn frame has holes',
  'two-leans': 'both give the lean',
  'guide-comes-first': 'the guide is made before anything is measured',
  'nothing-swapped': 'it says where beads are swapped, and nothing is',
  'shape-of-like': 'the way of working is that of the pattern',
  'two-palettes': 'both say where the colours come from',
  'grid-without-picture': 'it tells how beads lie in a picture, and no picture is given',
};
export type Contradiction = keyof typeof contradictions;
