/** A number that was expected, as data; `expectedNumber` words it. */
export interface ExpectedNumber {
  readonly kind: 'whole' | 'between';
  readonly least: number;
  readonly most: number;
}

/** A number that was expected, to stand at the end of an error's sentence. */
export const expectedNumber = ({ kind, least, most }: ExpectedNumber): string =>
  kind === 'whole' ? expected.wholeBetween(least, most) : expected.between(least, most);

/** What was expected instead: stand at the end of an error's sentence. */
export const expected = {
  wholeBetween: (least: number, most: number) => `a whole number from ${least} to ${most}`,
  between: (least: number, most: number) => `a number from ${least} to ${most}`,
  length: 'a length such as 90, 90mm, 9cm or 3.5in',
  lengthBetween: (least: number, most: number) =>
    `a length from ${least} to ${most} mm, such as 5, 5mm or 0.5cm`,
  shift: 'two numbers in millimetres such as 3,-2',
  title: '1 to 200 letters on one line',
  back: 'a picture, plain: and a bead such as plain:op-07, or same',
  background: 'a colour such as ffffff or white, a bead of the palette, bare or auto',
  /** Why two options cannot stand together. */
  contradictions: {
    backPlacing: 'the back has no picture',
    size: 'both set the size',
    spelling: 'they are one option in two spellings',
    thickness: 'both say how thick the thread is',
    printing: 'one prints, the other does not',
    paper: 'what is on paper is a drawing',
    ditherStock: 'dithering spends beads as the shades fall, and cannot keep to what a jar holds',
    tidy: 'tidying takes away the single beads that dithering strews in; choose one of the two',
    edges:
      'dithering lives by contrast between neighbours that the picture has not; choose one of the two',
    ink: 'it is about the outlines of drawings, and --paper has a rule of its own for lines',
    input: 'standard input can be read once only',
  },
};
