import Papa from 'papaparse';
import { RondureError } from '../../errors.js';
import { columnsOfHeader, columnsWithoutHeader, isHex, withJarsAsIds } from './columns.js';
import { gplTable, isGpl } from './gpl.js';
import { withRgbJoined } from './colour-cell.js';
import { isJson, jsonTable } from './json-table.js';
import { refuseManyLines } from './too-long.js';
import type { Table, TableRow } from './table-rows.js';

const separators = [',', ';', '\t'] as const;
type Separator = (typeof separators)[number];

/**
 * Cuts a palette into rows and columns; its content decides whether it is a GIMP palette, JSON or
 * CSV.
 *
 * @throws RondureError `palette-empty`, `palette-not-text`, `palette-no-colour-column`, `palette-bad-row`,
 *   `palette-not-json`, `palette-no-beads-in-json`, `palette-too-long`
 */
export function readTable(text: string, where: string): Table {
  const plain = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  if (plain.trim() === '') throw new RondureError('palette-empty', { where });
  const kind = notText(plain);
  if (kind) throw new RondureError('palette-not-text', { where, kind });
  const table = isJson(plain) ? jsonTable(plain, where) : lineTable(plain, where);
  if (table.rows.length === 0) throw new RondureError('palette-empty', { where });
  const cells = table.rows.map((row) => row.cells);
  const guessed = table.format === 'csv' && table.columns.header.length === 0;
  return { ...table, columns: withJarsAsIds(table.columns, cells, guessed) };
}

/** A row a line; what a program writes as JSON may have many lines a bead. */
function lineTable(text: string, where: string): Table {
  refuseManyLines(text, where);
  return isGpl(text) ? gplTable(text) : csvTable(text.replace(/^sep=.\n/i, '\n'), where);
}

/** The separator is the one that makes sense of most columns: comma, semicolon or tab. */
function csvTable(text: string, where: string): Table {
  let best: { table: Table; separator: Separator } | undefined;
  for (const separator of separators) {
    const table = tableWith(text, separator);
    if (table && table.columns.at.size > (best?.table.columns.at.size ?? 0)) {
      best = { table, separator };
    }
  }
  if (!best) {
    const first = text.split('\n').find((line) => line.trim() !== '') ?? '';
    throw new RondureError('palette-no-colour-column', { where, found: firstCells(first) });
  }
  const open = best.table.rows.length === 0 ? undefined : openQuote(text, best.separator);
  if (open !== undefined) {
    const expected = { kind: 'closing-quote' } as const;
    const facts = { where, line: open, column: undefined, got: '"', expected };
    throw new RondureError('palette-bad-row', facts);
  }
  return best.table;
}

function tableWith(text: string, separator: Separator): Table | undefined {
  const rows = fromNames(rowsOf(text, separator));
  if (rows.length === 0) return undefined;
  const rest = { format: 'csv' as const, decimalComma: separator !== ',' };
  const named = columnsOfHeader(rows[0].cells);
  if (named) return { ...rest, columns: named, rows: rows.slice(1) };
  const columns = columnsWithoutHeader(rows.map((row) => row.cells));
  return columns && { ...rest, columns, rows: columns.header.length > 0 ? rows.slice(1) : rows };
}

/** Lines that may stand above the names of the columns: a title, a date. */
const mostTitleLines = 10;

/** The rows from the line of names on, red, green and blue joined; all of them when no line names a colour. */
function fromNames(rows: TableRow[]): TableRow[] {
  const last = Math.min(mostTitleLines, rows.length - 1);
  for (let n = 0; n <= last; n++) {
    if (rows[n].cells.some(isHex)) break;
    const rest = rows.slice(n);
    const joined = withRgbJoined(rest.map(({ cells }) => cells));
    if (joined) return rest.map((row, k) => ({ ...row, cells: joined[k] }));
    if (columnsOfHeader(rows[n].cells)) return rest;
  }
  return rows;
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

/** Files that are given as a palette by mistake. */
type NotText = 'spreadsheet' | 'pdf' | 'page' | 'richText' | 'picture';

/**
 * What a file is, if its first characters say that it is no list in plain text: a zip (as today's
 * spreadsheets are) or an older compound file, PDF, HTML or XML, rich text, PNG, JPEG or GIF.
 */
function notText(text: string): NotText | undefined {
  const start = text.slice(0, 200).trimStart();
  if (start.startsWith('PK\u0003\u0004') || start.startsWith('ÐÏ\u0011à')) return 'spreadsheet';
  if (start.startsWith('%PDF')) return 'pdf';
  if (/^<(!doctype|html|\?xml|table|svg)\b/i.test(start)) return 'page';
  if (start.startsWith('{\\rtf')) return 'richText';
  if (/^(‰PNG|ÿØÿ|GIF8)/.test(start)) return 'picture';
  return undefined;
}
