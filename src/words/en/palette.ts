/** What a cell of a palette should have held; stands after "expected" in its error. */
export const palette = {
  colour: 'a colour such as #d9b36a',
  labLightness: 'a number from 0 to 100',
  labAxis: 'a number from -160 to 160',
  number: (f: { least: number; most: number }) => `a number from ${f.least} to ${f.most}`,
  text: (most: number) => `at most ${most} characters`,
  noControls: 'plain text without hidden control characters',
  size: (known: readonly string[]) =>
    `a size we know (${known.join(', ')}), or a diameterMm for this bead`,
  quotes: 'a closing quotation mark',
  threeNumbers: 'red, green and blue as whole numbers from 0 to 255, then a name',
  bead: 'a record of one bead, or its colour',
  textOrNumber: 'a text or a number',
  wholeLine: 'the line',
};
