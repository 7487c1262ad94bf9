import type { CellExpected } from '../../../words/en/palette.js';
import { RondureError } from '../../errors.js';
import type { Column } from './columns.js';
import type { Table, TableRow } from './table-rows.js';

/** Characters that would hide or reorder text where it is shown later. */
const hidden = /[\p{Cc}\u202A-\u202E\u2066-\u2069\uFFFE\uFFFF]/u;

/** What may stand before or behind a number. */
const units: Partial<Record<Column, RegExp>> = {
  price: /^([$€£¥]|[a-z]{3}\b)|(\p{Sc}|\b[a-z]{3}|kr\.?)$/iu,
  grams: / ?g(r|ram|rams|rammes?)?\.?$/i,
  packGrams: / ?g(r|ram|rams|rammes?)?\.?$/i,
  diameterMm: / ?mm$/i,
};

/** Reads the cells of one row; every refusal names the line and the column. */
export interface RowReader {
  readonly line: number;
  /** The cell without spaces around it; '' where the row is short. */
  raw(column: Column): string;
  /** A text of at most `most` characters, undefined when empty. */
  text(column: Column, most: number): string | undefined;
  /** A number in a range, undefined when empty. */
  number(column: Column, least: number, most: number): number | undefined;
  /** An error for this row. */
  bad(column: Column, expected: CellExpected, got?: string): RondureError<'palette-bad-row'>;
}

/** Makes the function that gives a reader for each row of a table. */
export function rowReader(table: Table, where: string): (row: TableRow) => RowReader {
  const { at, header } = table.columns;
  const commaAllowed = table.decimalComma;
  return ({ line, cells }) => {
    const raw = (column: Column) => {
      const index = at.get(column);
      const text = index === undefined ? '' : (cells[index] ?? '').replace(/\s+/g, ' ').trim();
      // The apostrophe that keeps a spreadsheet from taking a cell for a formula.
      return table.format === 'csv' ? text.replace(/^'(?='*[=+\-@])/, '') : text;
    };
    const bad = (column: Column, expected: CellExpected, text = raw(column)) => {
      const got = text.replace(new RegExp(hidden, 'gu'), '').slice(0, 40);
      const named = header[at.get(column) ?? -1]
        ?.replace(/[\p{Cc}\s]+/gu, ' ')
        .trim()
        .slice(0, 40);
      const facts = { where, line, column: named || column, got, expected };
      return new RondureError('palette-bad-row', facts);
    };
    return {
      line,
      raw,
      bad,
      text(column, most) {
        const text = raw(column);
        if (text.length > most) throw bad(column, { kind: 'at-most', most });
        if (hidden.test(text)) throw bad(column, { kind: 'no-controls' });
        return text === '' ? undefined : text;
      },
      number(column, least, most) {
        const given = raw(column);
        if (given === '') return undefined;
        const unit = units[column];
        const text = (unit ? given.replace(unit, '') : given).replace('−', '-').trim();
        // Between commas only a quoted cell holds one; three digits behind it may be thousands.
        const comma = commaAllowed || !/,\d{3}$/.test(text);
        const form = comma ? /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/ : /^[+-]?(\d+(\.\d*)?|\.\d+)$/;
        const value = form.test(text) ? Number(text.replace(',', '.')) : NaN;
        if (!(value >= least && value <= most)) throw bad(column, { kind: 'between', least, most });
        return value + 0;
      },
    };
  };
}
