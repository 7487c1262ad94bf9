/** What a column of a palette can hold. */
export type Column =
  | 'id'
  | 'name'
  | 'hex'
  | 'L'
  | 'a'
  | 'b'
  | 'finish'
  | 'size'
  | 'diameterMm'
  | 'beadsPerGram'
  | 'grams'
  | 'price'
  | 'packGrams';

/** Other ways to write a column's name; capitals, spaces and `_ . ( ) * / -` do not count. */
const spellings: Record<Column, readonly string[]> = {
  id: ['id', 'code', 'number', 'no', 'nr', 'beadid', 'article'],
  name: ['name', 'colourname', 'colorname', 'beadname', 'description'],
  hex: ['hex', 'colour', 'color', 'rgb', 'hexcolour', 'hexcolor', 'hexcode', 'html'],
  L: ['l', 'labl', 'lightness'],
  a: ['a', 'laba'],
  b: ['b', 'labb'],
  finish: ['finish', 'surface'],
  size: ['size', 'beadsize'],
  diameterMm: ['diametermm', 'diameter', 'mm'],
  beadsPerGram: ['beadspergram', 'pergram', 'beadsg', 'beadspergramme'],
  grams: ['grams', 'gram', 'g', 'stock', 'stockgrams', 'gramsinstock', 'grammes'],
  price: ['price', 'packprice', 'priceperpack'],
  packGrams: ['packgrams', 'pack', 'packet', 'packetgrams', 'gramsperpack', 'packsize'],
};

const byName = new Map<string, Column>();
for (const [column, names] of Object.entries(spellings) as [Column, readonly string[]][]) {
  for (const name of names) byName.set(name, column);
}

/** Which column a cell of the first line names, if any. */
export function columnNamed(cell: string): Column | undefined {
  return byName.get(cell.toLowerCase().replace(/[\s_.()*/-]/g, ''));
}

/** Where each column stands in a row. */
export interface Columns {
  readonly at: ReadonlyMap<Column, number>;
  /** Names in the first line that mean nothing to us. */
  readonly ignored: readonly string[];
  /** The first line as it was written, or nothing. */
  readonly header: readonly string[];
}

/**
 * Reads a line of column names. Where two columns give colours, one named `hex` is the colour and
 * one named colour or color is the name. Undefined if the line names no colour.
 */
export function columnsOfHeader(cells: readonly string[]): Columns | undefined {
  const at = new Map<Column, number>();
  const ignored: string[] = [];
  cells.forEach((cell, index) => {
    const column = columnNamed(cell);
    if (column && !at.has(column)) at.set(column, index);
    else if (cell.trim() !== '') ignored.push(cell.trim());
  });
  const exact = cells.findIndex((cell) => cell.trim().toLowerCase() === 'hex');
  const other = at.get('hex');
  if (exact >= 0 && other !== undefined && other !== exact) {
    at.set('hex', exact);
    const names = at.has('name') ? [cells[other].trim()] : [];
    if (!at.has('name')) at.set('name', other);
    return {
      at,
      ignored: [...ignored.filter((cell) => cell !== cells[exact].trim()), ...names],
      header: cells,
    };
  }
  if (exact >= 0 && !at.has('name')) {
    const named = cells.findIndex((cell, index) => index !== exact && columnNamed(cell) === 'hex');
    if (named >= 0) {
      at.set('name', named);
      return { at, ignored: ignored.filter((cell) => cell !== cells[named].trim()), header: cells };
    }
  }
  const hasLab = at.has('L') && at.has('a') && at.has('b');
  return at.has('hex') || hasLab ? { at, ignored, header: cells } : undefined;
}

/** Whether a cell is a colour: `#d9b36a`, `d9b36a`, `#db6`. */
export function isHex(cell: string): boolean {
  return /^\s*(#[0-9a-f]{3}|#?[0-9a-f]{6})\s*$/i.test(cell);
}

/**
 * Columns of rows without names: every row must hold a colour in the same place. What stands before
 * it is the id, or id and name; a single text after it is the name.
 */
export function columnsWithoutHeader(rows: readonly (readonly string[])[]): Columns | undefined {
  const width = Math.max(0, ...rows.map((row) => row.length));
  // A row of digits may look like a colour too (an id 100200), so the last such column is taken.
  for (let hex = width - 1; hex >= 0; hex--) {
    if (!rows.every((row) => isHex(row[hex] ?? ''))) continue;
    const at = new Map<Column, number>([['hex', hex]]);
    const others = [...Array(width).keys()].filter((index) => index !== hex);
    if (others.length === 1) at.set('name', others[0]);
    if (others.length >= 2) at.set('id', others[0]).set('name', others[1]);
    return { at, ignored: [], header: [] };
  }
  return undefined;
}
