import Papa from 'papaparse';
import { RondureError } from '../errors.js';
import type { Words } from '../../words/index.js';
import { columnsOfHeader, columnsWithoutHeader } from './columns.js';
import type { Columns } from './columns.js';

const separators = [',', ';', '\t'] as const;
type Separator = (typeof separators)[number];

/** A row of a palette as text, and the line on which it starts, from 1. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** A palette cut into cells. */
export interface Table {
  readonly separator: Separator;
  readonly columns: Columns;
  /** Rows with something in them, without the line of names. */
  readonly rows: readonly TableRow[];
}

/**
 * Cuts a palette into rows and columns. The separator is the one that makes sense of most columns:
 * comma, semicolon or tab.
 *
 * @throws RondureError `palette-empty`, `palette-no-colour-column`, `palette-bad-row`
 */
export function readTable(text: string, where: string, words: Words): Table {
  const plain = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  if (plain.trim() === '') throw new RondureError('palette-empty', { where });
  let best: Table | undefined;
  let bestScore = 0;
  for (const separator of separators) {
    const table = tableWith(plain, separator);
    const score = table ? table.columns.at.size : 0;
    if (table && score > bestScore) {
      best = table;
      bestScore = score;
    }
  }
  if (!best) {
    const first = plain.split('\n').find((line) => line.trim() !== '') ?? '';
    throw new RondureError('palette-no-colour-column', { where, found: firstCells(first) });
  }
  if (best.rows.length === 0) throw new RondureError('palette-empty', { where });
  const open = openQuote(plain, best.separator);
  if (open !== undefined) {
    const expected = words.palette.quotes;
    const facts = { where, line: open, column: words.palette.wholeLine, got: '"', expected };
    throw new RondureError('palette-bad-row', facts);
  }
  return best;
}

function tableWith(text: string, separator: Separator): Table | undefined {
  const rows = rowsOf(text, separator);
  if (rows.length === 0) return undefined;
  const named = columnsOfHeader(rows[0].cells);
  if (named) return { separator, columns: named, rows: rows.slice(1) };
  const columns = columnsWithoutHeader(rows.map((row) => row.cells));
  return columns && { separator, columns, rows };
}

function rowsOf(text: string, separator: Separator): TableRow[] {
  const rows: TableRow[] = [];
  let line = 1;
  let from = 0;
  Papa.parse<string[]>(text, {
    delimiter: separator,
    newline: '\n',
    step({ data, meta }) {
      if (data.some((cell) => cell.trim() !== '')) rows.push({ line, cells: data });
      for (let at = from; at < meta.cursor; at++) if (text[at] === '\n') line++;
      from = meta.cursor;
    },
  });
  return rows;
}

/** The line of a quotation mark that is opened and never closed. */
function openQuote(text: string, separator: Separator): number | undefined {
  const { errors } = Papa.parse<string[]>(text, { delimiter: separator, newline: '\n' });
  const missing = errors.find(({ code }) => code === 'MissingQuotes');
  if (!missing) return undefined;
  const upTo = Math.max(0, text.lastIndexOf('\n"', missing.index ?? 0) + 1);
  return text.slice(0, missing.index ?? upTo).split('\n').length;
}

/** The start of the first line for an error message: short, and without hidden characters. */
function firstCells(line: string): string[] {
  return line
    .slice(0, 200)
    .split(/[,;\t]/)
    .map((cell) =>
      cell
        .replace(/[\p{Cc}\uFFFD]/gu, '')
        .trim()
        .slice(0, 30),
    )
    .filter((cell) => cell !== '')
    .slice(0, 8);
}
