import { RondureError, warning } from '../../errors.js';
import type { Warning } from '../../errors.js';
import type { Bead } from '../bead.js';
import { refuseLongText } from '../../input-limits.js';
import { middleDiameter, panelSize, withDefaults } from './fill.js';
import { readRows } from './rows.js';
import type { Row, RowProblem } from './rows.js';
import { readTable } from './table.js';
import { mostBeads, tooManyBeads } from './too-long.js';
import type { PaletteFormat } from './table-rows.js';

/** Longer than any palette of so many beads. */
const mostMegabytes = 8;

/** A palette as read: the beads of one size. */
export interface Palette {
  /** In the order of the file. */
  readonly beads: Bead[];
  /** The bead size of the panel. */
  readonly size: string;
  /** Diameter that the panel is planned with: the middle one of the beads (the lower of two). */
  readonly diameterMm: number;
  /** What was passed over or filled in. */
  readonly notes: Warning[];
}

/**
 * Reads a palette: CSV (comma, semicolon or tab; a first line of column names, or rows that each
 * hold a colour), JSON or a GIMP palette. Only the colour is needed, as hex or as L, a, b (D65, 2°); what is missing is
 * filled from the trade table and told in `filled`. Beads of another size than the panel's are left
 * out; its size is `options.size`, or else the commonest in the palette, or else 11/0.
 *
 * @param where how to name the palette in an error
 * @throws RondureError `palette-empty`, `palette-no-colour-column`, `palette-bad-row`,
 *   `palette-id-twice`, `palette-too-long`, `palette-no-bead-of-size`, `size-unknown`,
 *   `palette-not-json`, `palette-no-beads-in-json`
 */
export function readPalette(text: string, where: string, options: { size?: string } = {}): Palette {
  const { rows, problems, notes } = rowsAndNotes(text, where);
  if (problems.length > 0) throw withCount(problems);
  const chosen = ofOneSize(rows, where, options.size, notes);
  return { ...chosen, diameterMm: middleDiameter(chosen.beads), notes };
}

/** The first fault, which tells how many there are. */
function withCount([first, ...more]: readonly RowProblem[]): RowProblem {
  if (more.length === 0) return first;
  return first.code === 'palette-bad-row'
    ? new RondureError(first.code, { ...first.facts, more: more.length })
    : new RondureError(first.code, { ...first.facts, more: more.length });
}

/** A palette looked through: what can be used of it, and all that is wrong. */
export interface PaletteSurvey {
  /** What kind of file it is. */
  readonly format: PaletteFormat;
  /** Beads of the rows that can be used. */
  readonly beads: Bead[];
  /** Every fault of every row, by line. */
  readonly problems: RowProblem[];
  /** What was passed over or filled in. */
  readonly notes: Warning[];
}

/**
 * Reads what can be read of a palette and gathers every fault instead of stopping at the first.
 * Beads of all sizes are kept unless a size is wished.
 *
 * @throws RondureError as `readPalette`, but for `palette-id-twice` and faults of single rows
 */
export function surveyPalette(
  text: string,
  where: string,
  options: { size?: string } = {},
): PaletteSurvey {
  const { format, rows, problems, notes } = rowsAndNotes(text, where);
  problems.sort((one, other) => one.facts.line - other.facts.line);
  const beads =
    options.size !== undefined && rows.length > 0
      ? ofOneSize(rows, where, options.size, notes).beads
      : withDefaults(rows, panelSize(rows, options.size));
  return { format, beads, problems, notes };
}

function rowsAndNotes(text: string, where: string) {
  refuseLongText(text, where, mostMegabytes);
  const table = readTable(text, where);
  if (table.rows.length > mostBeads) throw tooManyBeads(where);
  const notes: Warning[] = [];
  const { ignored, shared } = table.columns;
  if (shared !== undefined)
    notes.push(warning('palette-jars-shared', { column: shared.slice(0, 30) }));
  if (ignored.length > 0) {
    const columns = ignored.slice(0, 8).map((name) => name.slice(0, 30));
    notes.push(warning('palette-columns-ignored', { columns }));
  }
  return { format: table.format, ...readRows(table, where), notes };
}

function ofOneSize(
  rows: readonly Row[],
  where: string,
  wish: string | undefined,
  notes: Warning[],
): { beads: Bead[]; size: string } {
  const size = panelSize(rows, wish);
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
  return { beads, size };
}
