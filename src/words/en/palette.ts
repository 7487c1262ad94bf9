import { expected as numbers } from './expected.js';

/** What a cell of a palette should have held, as data; `cellExpected` words it. */
export type CellExpected =
  | { readonly kind: keyof typeof plain }
  | { readonly kind: 'between'; readonly least: number; readonly most: number }
  /** A text of so many characters. */
  | { readonly kind: 'at-most'; readonly most: number }
  /** A bead size, of those that are known, or a diameter beside it. */
  | { readonly kind: 'size'; readonly known: readonly string[] };

/** What needs no further word. */
const plain = {
  colour: 'a colour such as #d9b36a',
  'no-controls': 'plain text without hidden control characters',
  'closing-quote': 'a closing quotation mark',
  'three-numbers': 'red, green and blue as whole numbers from 0 to 255, then a name',
  bead: 'a record of one bead, or its colour',
  'text-or-number': 'a text or a number',
};

/** What a cell should have held; stands after "expected" in its error. */
export function cellExpected(expected: CellExpected): string {
  switch (expected.kind) {
    case 'between':
      return numbers.between(expected.least, expected.most);
    case 'at-most':
      return `at most ${expected.most} characters`;
    case 'size':
      return `a size we know (${expected.known.join(', ')}), or a diameterMm for this bead`;
    default:
      return plain[expected.kind];
  }
}
