import { formatHex } from '../../colour/hex.js';
import type { Column } from './columns.js';
import type { Table, TableRow } from './table-rows.js';

/** Whether a text is a GIMP palette: its first line says so. */
export function isGpl(text: string): boolean {
  return /^\s*GIMP Palette\s*(\n|$)/.test(text);
}

/**
 * Reads a GIMP palette: a line `GIMP Palette`, lines such as `Name: sea` and `Columns: 8`, comments
 * with `#`, and a line of red, green, blue (0 to 255) and a name for each colour. The fourth number
 * of palettes with `Channels: RGBA` is passed over. (The GIMP manual, "Palettes"; the file's form
 * from memory, unchecked.)
 */
export function gplTable(text: string): Table {
  const rows: TableRow[] = [];
  let numbers = 3;
  text.split('\n').forEach((given, index) => {
    const line = given.trim();
    if (/^Channels:\s*RGBA/i.test(line)) numbers = 4;
    if (line === '' || line.startsWith('#') || isGpl(line)) return;
    if (/^(Name|Columns|Channels):/i.test(line)) return;
    rows.push({ line: index + 1, ...cellsOf(line, numbers) });
  });
  const at = new Map<Column, number>([
    ['hex', 0],
    ['name', 1],
  ]);
  return { format: 'gpl', columns: { at, ignored: [], header: [] }, decimalComma: false, rows };
}

function cellsOf(line: string, numbers: number): Omit<TableRow, 'line'> {
  const form = new RegExp(
    `^(\\d{1,3})\\s+(\\d{1,3})\\s+(\\d{1,3})${numbers === 4 ? '\\s+\\d{1,3}' : ''}(?:\\s+(.*))?$`,
  );
  const parts = form.exec(line);
  const rgb = (parts ?? []).slice(1, 4).map(Number);
  if (!parts || rgb.some((value) => value > 255)) {
    const expected = { kind: 'three-numbers' } as const;
    const problem = { column: 'hex', got: line, expected } as const;
    return { cells: [], problem };
  }
  // GIMP writes Untitled where a colour has no name.
  const name = (parts[4] as string | undefined) ?? '';
  const [r, g, b] = rgb;
  return { cells: [formatHex(r, g, b), /^untitled$/i.test(name.trim()) ? '' : name] };
}
