import Papa from 'papaparse';

/** One cell; undefined stays empty. */
export type Cell = string | number | undefined;

/** As OWASP lists them under "CSV Injection". */
const formula = /^'*[=+\-@\t\r]/;

/**
 * A CSV text with header: comma, LF, a newline at the end, quotes where needed (RFC 4180, but for
 * the line end). A cell that a spreadsheet would take for a formula gets an apostrophe before it, and
 * so does one that has apostrophes before such a beginning, so that one can be taken away again.
 */
export function csvText(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const table = [[...header], ...rows.map((row) => [...row])];
  return `${Papa.unparse(table, { newline: '\n', escapeFormulae: formula })}\n`;
}
