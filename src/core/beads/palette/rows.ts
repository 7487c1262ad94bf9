import { formatHex } from '../../colour/hex.js';
import { hexToLab65, lab65ToHex } from '../../colour/lab.js';
import { RondureError } from '../../errors.js';
import type { Bead } from '../bead.js';
import { rowReader } from './cells.js';
import type { RowReader } from './cells.js';
import { parseColour } from './colour-cell.js';
import { defined } from './defined.js';
import { beadSizes, findSize } from './sizes.js';
import type { Table } from './table-rows.js';
import { millionth } from '../../units.js';

/** A row of a palette that can be used: what it says, nothing filled in yet. */
export interface Row extends Partial<Omit<Bead, 'lab' | 'hex' | 'filled'>> {
  line: number;
  hex: string;
  lab: readonly [number, number, number];
}

/** Why a row cannot be used. */
export type RowProblem = RondureError<'palette-bad-row'> | RondureError<'palette-id-twice'>;

/** Reads every row; one with several faults gives a problem for each, and no row. */
export function readRows(table: Table, where: string): { rows: Row[]; problems: RowProblem[] } {
  const read = rowReader(table, where);
  const rows: Row[] = [];
  const problems: RowProblem[] = [];
  for (const given of table.rows) {
    const row = read(given);
    const before = problems.length;
    const { problem } = given;
    if (problem) problems.push(row.bad(problem.column, problem.expected, problem.got));
    const made = problem ? undefined : rowOf(row, problems);
    if (made && problems.length === before) rows.push(made);
  }
  const twice = doubleIds(rows, where);
  return {
    rows: rows.filter((row) => !twice.has(row)),
    problems: [...problems, ...twice.values()],
  };
}

function rowOf(row: RowReader, problems: RowProblem[]): Row | undefined {
  /** Keeps a cell's fault and goes on, so that all faults of a row are told at once. */
  const take = <T>(read: () => T): T | undefined => {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof RondureError) || error.code !== 'palette-bad-row') throw error;
      problems.push(error as RowProblem);
      return undefined;
    }
  };
  const colour = take(() => colourOf(row));
  const diameterMm = take(() => row.number('diameterMm', 0.1, 50));
  const rest = defined({
    id: take(() => row.text('id', 200)),
    name: take(() => row.text('name', 200)),
    finish: take(() => row.text('finish', 80)),
    size: take(() => sizeText(row, diameterMm)),
    diameterMm,
    beadsPerGram: take(() => row.number('beadsPerGram', 0.01, 100_000)),
    grams: take(() => row.number('grams', 0, 1_000_000)),
    count: take(() => row.number('count', 0, 100_000_000)),
    price: take(() => row.number('price', 0, 1_000_000)),
    packGrams: take(() => row.number('packGrams', 0.01, 1_000_000)),
    sample: take(() =>
      row.text('sample', 80)?.toLowerCase() === 'yes' ? (true as const) : undefined,
    ),
  });
  return colour && { line: row.line, ...colour, ...rest };
}

/** Least and most of L, and of a and b. */
const labLightness = [0, 100] as const;
const labAxis = [-160, 160] as const;
const between = ([least, most]: readonly [number, number]) =>
  ({ kind: 'between', least, most }) as const;

/** Measured L, a, b win over the hex, which then only serves to draw. */
function colourOf(row: RowReader): Pick<Row, 'hex' | 'lab'> {
  const given = row.raw('hex');
  const rgb = parseColour(given);
  if (given !== '' && !rgb) throw row.bad('hex', { kind: 'colour' });
  const L = row.number('L', ...labLightness);
  const a = row.number('a', ...labAxis);
  const b = row.number('b', ...labAxis);
  const hex = rgb && formatHex(...rgb);
  if (L !== undefined || a !== undefined || b !== undefined) {
    if (L === undefined) throw row.bad('L', between(labLightness));
    if (a === undefined) throw row.bad('a', between(labAxis));
    if (b === undefined) throw row.bad('b', between(labAxis));
    const lab = [millionth(L), millionth(a), millionth(b)] as const;
    return { lab, hex: hex ?? lab65ToHex(L, a, b) };
  }
  if (hex === undefined) throw row.bad('hex', { kind: 'colour' });
  return { hex, lab: hexToLab65(hex) };
}

/** A size that we do not know is kept as it is when the diameter stands beside it. */
function sizeText(row: RowReader, diameterMm: number | undefined) {
  const given = row.text('size', 40);
  if (given === undefined) return undefined;
  const known = findSize(given);
  if (known) return known.name;
  if (diameterMm !== undefined) return given;
  throw row.bad('size', { kind: 'size', known: beadSizes.map(({ name }) => name) });
}

function doubleIds(rows: readonly Row[], where: string): Map<Row, RowProblem> {
  const seen = new Map<string, number>();
  const twice = new Map<Row, RowProblem>();
  for (const row of rows) {
    const { id, line } = row;
    if (id === undefined) continue;
    const firstLine = seen.get(id);
    if (firstLine === undefined) {
      seen.set(id, line);
    } else {
      const facts = { where, line, id: id.slice(0, 40), firstLine };
      twice.set(row, new RondureError('palette-id-twice', facts));
    }
  }
  return twice;
}

/** Lab is kept to 1e-6 wherever it is made. */
