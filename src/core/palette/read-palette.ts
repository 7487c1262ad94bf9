import { formatHex, parseHex } from '../colour/hex.js';
import { hexToLab65, lab65ToHex } from '../colour/lab.js';
import { RondureError, warning } from '../errors.js';
import type { Warning } from '../errors.js';
import type { Bead } from '../bead.js';
import { en } from '../../words/index.js';
import type { Words } from '../../words/index.js';
import { rowReader } from './cells.js';
import type { RowReader } from './cells.js';
import { beadSizes, defaultSize, findSize, parseSize } from './sizes.js';
import { readTable } from './table.js';
import { millionth } from '../units.js';

const mostBeads = 10_000;

/** A palette as read: the beads of one size. */
export interface Palette {
  /** In the order of the file. */
  readonly beads: Bead[];
  /** The bead size of the panel. */
  readonly size: string;
  /** Diameter that the panel is planned with: the middle one of the beads (the lower of two). */
  readonly diameterMm: number;
  readonly notes: Warning[];
}

interface Row extends Partial<Omit<Bead, 'lab' | 'hex' | 'filled'>> {
  line: number;
  hex: string;
  lab: readonly [number, number, number];
}

/**
 * Reads a palette from CSV: comma, semicolon or tab; a first line of column names, or rows that
 * each hold a colour. Only the colour is needed, as hex or as L, a, b (D65, 2°); what is missing is
 * filled from the trade table and told in `filled`. Beads of another size than the panel's are left
 * out; its size is `options.size`, or else the commonest in the palette, or else 11/0.
 *
 * @param where how to name the palette in an error
 * @throws RondureError `palette-empty`, `palette-no-colour-column`, `palette-bad-row`,
 *   `palette-id-twice`, `palette-too-long`, `palette-no-bead-of-size`, `size-unknown`
 */
export function readPalette(
  text: string,
  where: string,
  options: { size?: string } = {},
  words: Words = en,
): Palette {
  const table = readTable(text, where, words);
  if (table.rows.length > mostBeads) {
    throw new RondureError('palette-too-long', { where, most: mostBeads });
  }
  const read = rowReader(table, where, words);
  const rows = table.rows.map((row) => rowOf(read(row), words));
  refuseDoubleIds(rows, where);
  const notes: Warning[] = [];
  const { ignored } = table.columns;
  if (ignored.length > 0) {
    const columns = ignored.slice(0, 8).map((name) => name.slice(0, 30));
    notes.push(warning('palette-columns-ignored', { columns }));
  }
  const size = panelSize(rows, options.size);
  const fits = rows.map((row) => (row.size ?? size) === size);
  const others = [...new Set(rows.flatMap((row) => row.size ?? []))].filter((s) => s !== size);
  const beads = withDefaults(rows, size).filter((_, index) => fits[index]);
  if (beads.length === 0) {
    throw new RondureError('palette-no-bead-of-size', { where, size, found: others });
  }
  if (beads.length < rows.length) {
    const count = rows.length - beads.length;
    notes.push(warning('palette-sizes-left-out', { count, size, others }));
  }
  return { beads, size, diameterMm: middleDiameter(beads), notes };
}

function rowOf(row: RowReader, words: Words): Row {
  const diameterMm = row.number('diameterMm', 0.1, 50);
  return {
    line: row.line,
    ...colourOf(row, words),
    ...defined({
      id: row.text('id', 200),
      name: row.text('name', 200),
      finish: row.text('finish', 80),
      size: sizeText(row, diameterMm, words),
      diameterMm,
      beadsPerGram: row.number('beadsPerGram', 0.01, 100_000),
      grams: row.number('grams', 0, 1_000_000),
      price: row.number('price', 0, 1_000_000),
      packGrams: row.number('packGrams', 0.01, 1_000_000),
    }),
  };
}

/** Measured L, a, b win over the hex, which then only serves to draw. */
function colourOf(row: RowReader, words: Words): Pick<Row, 'hex' | 'lab'> {
  const given = row.raw('hex');
  const rgb = parseHex(given);
  if (given !== '' && !rgb) throw row.bad('hex', words.palette.colour);
  const L = row.number('L', 0, 100, words.palette.labLightness);
  const a = row.number('a', -160, 160, words.palette.labAxis);
  const b = row.number('b', -160, 160, words.palette.labAxis);
  const hex = rgb && formatHex(...rgb);
  if (L !== undefined || a !== undefined || b !== undefined) {
    if (L === undefined) throw row.bad('L', words.palette.labLightness);
    if (a === undefined) throw row.bad('a', words.palette.labAxis);
    if (b === undefined) throw row.bad('b', words.palette.labAxis);
    const lab = [millionth(L), millionth(a), millionth(b)] as const;
    return { lab, hex: hex ?? lab65ToHex(L, a, b) };
  }
  if (hex === undefined) throw row.bad('hex', words.palette.colour);
  return { hex, lab: hexToLab65(hex) };
}

/** A size that we do not know is kept as it is when the diameter stands beside it. */
function sizeText(row: RowReader, diameterMm: number | undefined, words: Words) {
  const given = row.text('size', 40);
  if (given === undefined) return undefined;
  const known = findSize(given);
  if (known) return known.name;
  if (diameterMm !== undefined) return given;
  throw row.bad('size', words.palette.size(beadSizes.map(({ name }) => name)));
}

function refuseDoubleIds(rows: readonly Row[], where: string): void {
  const seen = new Map<string, number>();
  for (const { id, line } of rows) {
    if (id === undefined) continue;
    const firstLine = seen.get(id);
    if (firstLine !== undefined) {
      throw new RondureError('palette-id-twice', { where, line, id: id.slice(0, 40), firstLine });
    }
    seen.set(id, line);
  }
}

/** Ties go to the size that comes first in the palette. */
function panelSize(rows: readonly Row[], wish: string | undefined): string {
  if (wish !== undefined) {
    const own = rows.find(({ size }) => size === wish.trim());
    return own?.size ?? parseSize(wish);
  }
  const counts = new Map<string, number>();
  for (const { size } of rows) if (size) counts.set(size, (counts.get(size) ?? 0) + 1);
  let best = defaultSize;
  let most = 0;
  for (const [size, count] of counts) {
    if (count > most) [best, most] = [size, count];
  }
  return best;
}

/** Fills what a row leaves open; a row number that is already someone's id is avoided. */
function withDefaults(rows: readonly Row[], panelSizeName: string): Bead[] {
  const taken = new Set(rows.map(({ id }) => id));
  return rows.map((row, index) => {
    const number = String(index + 1);
    const id = row.id ?? (taken.has(number) ? `row-${number}` : number);
    const size = row.size ?? panelSizeName;
    const known = findSize(size);
    const filled: Bead['filled'][number][] = [];
    if (row.id === undefined) filled.push('id');
    if (row.name === undefined) filled.push('name');
    if (row.size === undefined) filled.push('size');
    if (row.diameterMm === undefined && known) filled.push('diameterMm');
    if (row.beadsPerGram === undefined && known) filled.push('beadsPerGram');
    const { hex, lab, finish, grams, price, packGrams } = row;
    return {
      id,
      name: row.name ?? row.id ?? hex,
      hex,
      lab,
      size,
      ...defined({
        finish,
        grams,
        price,
        packGrams,
        diameterMm: row.diameterMm ?? known?.diameterMm,
        beadsPerGram: row.beadsPerGram ?? known?.beadsPerGram,
      }),
      filled,
    };
  });
}

function middleDiameter(beads: readonly Bead[]): number {
  const sorted = beads.flatMap(({ diameterMm }) => diameterMm ?? []).sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)];
}

/** Without the keys that have no value. */
function defined<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  const kept = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(kept) as { [K in keyof T]?: Exclude<T[K], undefined> };
}
