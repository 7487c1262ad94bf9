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
  | 'count'
  | 'price'
  | 'packGrams'
  | 'jar'
  | 'sample';

/** Other ways to write a column's name; capitals, spaces and `_ . ( ) * / -` do not count. */
const spellings: Record<Column, readonly string[]> = {
  id: ['id', 'code', 'beadid', 'article'],
  name: ['name', 'bead', 'colourname', 'colorname', 'beadname', 'description'],
  hex: [
    'hex',
    'colour',
    'color',
    'rgb',
    'hexcolour',
    'hexcolor',
    'hexcode',
    'html',
    'colourcode',
    'colorcode',
    'hexvalue',
  ],
  L: ['l', 'labl', 'lightness'],
  a: ['a', 'laba'],
  b: ['b', 'labb'],
  finish: ['finish', 'surface'],
  size: ['size', 'beadsize'],
  diameterMm: ['diametermm', 'diameter', 'mm'],
  beadsPerGram: ['beadspergram', 'pergram', 'beadsg', 'beadspergramme'],
  grams: ['grams', 'gram', 'g', 'stock', 'stockgrams', 'gramsinstock', 'grammes'],
  count: ['count', 'beadcount', 'beadsinstock', 'countinstock', 'stockcount', 'pieces'],
  price: ['price', 'packprice', 'priceperpack'],
  jar: ['jar', 'box', 'tube', 'drawer', 'number', 'no', 'nr'],
  packGrams: ['packgrams', 'pack', 'packet', 'packetgrams', 'gramsperpack', 'packsize'],
  sample: ['sample', 'samplecolour', 'samplecolor'],
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
  /** A column that was not taken for ids, since several beads share a cell of it. */
  readonly shared?: string;
}

/**
 * Where no column is the id, the one of the jars or numbers is, if it tells every bead from every
 * other; two beads in one box are not the same bead.
 *
 * @param guessed the id was guessed, since no line names the columns
 */
export function withJarsAsIds(
  columns: Columns,
  rows: readonly (readonly string[])[],
  guessed: boolean,
): Columns {
  const { header } = columns;
  const at = new Map(columns.at);
  const jar = guessed ? at.get('id') : at.get('jar');
  if (jar === undefined) return columns;
  const named = header[jar]?.trim() ?? String(jar + 1);
  at.delete('jar');
  if (!guessed && at.has('id')) {
    return { ...columns, at, ignored: [...columns.ignored, named] };
  }
  const cells = rows.map((row) => (row[jar] ?? '').trim().toLowerCase());
  if (cells.every((cell) => cell !== '') && new Set(cells).size === cells.length) {
    return { ...columns, at: at.set('id', jar) };
  }
  at.delete('id');
  return { ...columns, at, shared: named };
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
 * Columns of rows without names that we know: the colours stand where most rows hold one (the last
 * such place, since an id of digits may look like a colour too). What stands before is the id, or id
 * and name; a single text beside it is the name. When only the first row holds no colour there, it
 * is taken for names in another language, and those columns that we can guess are read.
 */
export function columnsWithoutHeader(rows: readonly (readonly string[])[]): Columns | undefined {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  let hex = -1;
  let most = 0;
  for (let index = 0; index < Math.min(width, 200); index++) {
    const count = rows.reduce((sum, row) => sum + (isHex(row[index] ?? '') ? 1 : 0), 0);
    if (count >= most && count > 0) [hex, most] = [index, count];
  }
  if (hex < 0 || most * 2 < rows.length) return undefined;
  const at = new Map<Column, number>([['hex', hex]]);
  const [first] = rows;
  if (most >= 2 && !isNaming(first, hex)) return withoutNames(at, width, hex);
  if (most < 2 && rows.length > 1) return undefined;
  if (most < 2) return withoutNames(at, width, hex);
  const ignored: string[] = [];
  first.forEach((cell, index) => {
    const column = columnNamed(cell);
    if (index === hex) return;
    if (column && !at.has(column)) at.set(column, index);
    else if (cell.trim() !== '') ignored.push(cell.trim());
  });
  return { at, ignored, header: first };
}

/** A first row of words only, where a colour would stand. */
function isNaming(row: readonly string[], hex: number): boolean {
  return row.every((cell) => !/\d|#/.test(cell)) && /\p{L}/u.test(row[hex] ?? '');
}

function withoutNames(at: Map<Column, number>, width: number, hex: number): Columns {
  const others = [...Array(width).keys()].filter((index) => index !== hex);
  if (others.length === 1) at.set('name', others[0]);
  if (others.length >= 2) at.set('id', others[0]).set('name', others[1]);
  const ignored = others.slice(2).map((index) => String(index + 1));
  return { at, ignored, header: [] };
}
