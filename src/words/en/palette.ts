import { expectedNumber } from './expected.js';
import type { ExpectedNumber } from './expected.js';
import { named } from './named-file.js';

/** What a cell of a palette should have held, as data; `cellExpected` words it. */
export type CellExpected =
  | { readonly kind: keyof typeof plain }
  | (ExpectedNumber & { readonly kind: 'between' })
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
      return expectedNumber(expected);
    case 'at-most':
      return `at most ${expected.most} characters`;
    case 'size':
      return `a size we know (${expected.known.join(', ')}), or a diameterMm for this bead`;
    default:
      return plain[expected.kind];
  }
}

/** After the first fault of a palette. */
const moreFaults = ({ where, more = 0 }: { where: string; more?: number }) =>
  more === 0
    ? ''
    : ` ${more === 1 ? 'One more cell' : `${more} more cells`} cannot be used: rondure beads ${where} lists them all.`;

/** What can be wrong with one row of a palette. */
export const rowErrors = {
  'palette-bad-row': (f: {
    where: string;
    line: number;
    /** Undefined where it is the whole line. */
    column: string | undefined;
    got: string;
    expected: CellExpected;
    more?: number;
  }) =>
    `Line ${f.line} of ${named(f.where)}: ${f.column ?? 'the line'} is ${f.got === '' ? 'empty' : `“${f.got}”`}, expected ${cellExpected(f.expected)}.${moreFaults(f)}`,
  'palette-id-twice': (f: {
    where: string;
    line: number;
    id: string;
    firstLine: number;
    more?: number;
  }) =>
    `Line ${f.line} of ${named(f.where)} has the id “${f.id}” of line ${f.firstLine} again: every bead needs an id of its own.${moreFaults(f)}`,
};

/** One of them, as data. */
export type RowFault = {
  [C in keyof typeof rowErrors]: {
    readonly code: C;
    readonly facts: Parameters<(typeof rowErrors)[C]>[0];
  };
}[keyof typeof rowErrors];

/** The sentence for one of them. */
export const rowFaultSaid = ({ code, facts }: RowFault): string =>
  (rowErrors[code] as (facts: RowFault['facts']) => string)(facts);
