import type { CellExpected } from '../../../words/en/palette.js';
import type { Column, Columns } from './columns.js';

/** The kinds of file a palette can be. */
export type PaletteFormat = 'csv' | 'json' | 'gpl';

/** A row of a palette as text, and the line on which it starts, from 1. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** What was wrong with the row before its cells could be looked at. */
  readonly problem?: {
    readonly column: Column;
    readonly got: string;
    readonly expected: CellExpected;
  };
}

/** A palette cut into cells. */
export interface Table {
  readonly format: PaletteFormat;
  readonly columns: Columns;
  /** Whether 2,15 is a number here. */
  readonly decimalComma: boolean;
  /** Rows with something in them, without the line of names. */
  readonly rows: readonly TableRow[];
}
