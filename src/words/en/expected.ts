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
  background: 'a colour such as ffffff, a bead of the palette, or bare',
  /** In a pattern file, where the sentence begins with the place. */
  pattern: {
    finite: 'expected a finite number',
    aboveZero: 'expected a number above 0',
    zeroOrMore: 'expected 0 or more',
    atMost: (most: number) => `expected at most ${most}`,
    between: (least: number, most: number) => `expected a number from ${least} to ${most}`,
    frame: 'expected measurements of one frame that go together',
    hex: 'expected a colour as #rrggbb in small letters',
    letter: 'expected one letter from A to Z other than I and O',
    base64: 'expected base64',
    marks: "expected letters, '.' for bare, '_' for open",
  },
  /** Why two options cannot stand together. */
  contradictions: {
    size: 'both set the size',
    spelling: 'they are one option in two spellings',
    thickness: 'both say how thick the thread is',
    printing: 'one prints, the other does not',
    paper: 'what is on paper is a drawing',
    ditherStock: 'dithering spends beads as the shades fall, and cannot keep to what a jar holds',
    tidy: 'tidying takes away the single beads that dithering strews in; choose one of the two',
    ink: 'it is about the outlines of drawings, and --paper has a rule of its own for lines',
    input: 'standard input can be read once only',
  },
};
