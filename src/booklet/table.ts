import type { Surface } from '../core/pages/surface/surface.js';
import { drawText, textWidth } from '../core/pages/surface/text.js';
import type { TextStyle } from '../core/pages/surface/text.js';
import { sides } from '../words/pages/pairs.js';
import type { Flow } from './flow.js';
import { lineMm, linesOf, quiet, readOn } from './look.js';
import type { Look } from './look.js';
import type { StructureNode } from './structure.js';

/** One column of a table. */
export interface Column {
  readonly head: string;
  readonly widthMm: number;
  readonly end?: boolean;
}

/** Lines of text; those of a second language stand below those of the first. */
export interface TextCell {
  readonly lines: readonly string[];
  readonly style: TextStyle;
  /** Where the second language begins. */
  readonly second?: number | undefined;
  /** Thin lines between words, by line: millimetres from the beginning of its text. */
  readonly dividers?: readonly (readonly number[])[];
  /** So many boxes to tick stand before it. */
  readonly boxes?: number;
}

/** One cell: text, or something that is drawn from its left, top corner. */
export type TableCell =
  | TextCell
  | {
      readonly heightMm: number;
      /** What of it is no part of the document: chips and boxes. */
      readonly ornament?: (surface: Surface, x: number, y: number) => void;
      readonly draw: (surface: Surface, x: number, y: number) => void;
    };

const gapMm = 3;
/** Between boxes of the same line. */
const betweenBoxesMm = 0.8;
/** Below a table, and before what belongs to its last row. */
const belowTableMm = 3;
const belowRowMm = 1.6;

/** Rows of no more lines stay whole; of a longer one this many stay together at each end. */
const wholeLines = 8;
const leastLines = 2;

/** The width that text has in a column. */
export const roomIn = ({ widthMm }: Pick<Column, 'widthMm'>): number => widthMm - gapMm;

/** A text as a cell of a column. */
export function textCell(
  text: string,
  style: TextStyle,
  column: Pick<Column, 'widthMm'>,
): TextCell {
  const [first, second] = sides(text).map((one) => linesOf(one, style, roomIn(column)));
  if (second === undefined) return { lines: first, style };
  return { lines: [...first, ...second], style, second: first.length };
}

/** Side of a box to tick, and what it takes with the gap after it. */
export const boxMm = ({ cell }: Look): number => 0.76 * cell.sizeMm;
/** What boxes of the same line take, close together, with the gap after them. */
export const boxesMm = (look: Look, boxes: number): number =>
  boxes === 0 ? 0 : boxes * boxMm(look) + (boxes - 1) * betweenBoxesMm + 1.6;

/** A box to tick, its right half on a baseline. */
function drawBox(surface: Surface, look: Look, left: number, base: number): void {
  const side = boxMm(look);
  const [top, right] = [base - side + 0.15, left + side];
  const box = [left, top, right, top, right, top + side, left, top + side];
  surface.strokePath([box], { stroke: quiet, widthMm: 0.25, closed: true });
}

/** So many of them close together. */
export function drawBoxes(
  surface: Surface,
  look: Look,
  { left, base, boxes }: { left: number; base: number; boxes: number },
): void {
  for (let n = 0; n < boxes; n++) {
    drawBox(surface, look, left + n * (boxMm(look) + betweenBoxesMm), base);
  }
}

const headStyleOf = ({ small, fonts, tint }: Look): TextStyle => ({
  ...small,
  face: fonts.bold,
  ink: tint.accent,
  byWords: true,
});

/** How far down smaller letters are moved, so that all in a row stand on one line, millimetres. */
function dropMm(cell: TextCell, row: readonly TableCell[]): number {
  const steps = row.map((one) => ('lines' in one ? lineMm(one.style) : 0));
  return Math.max(0, 0.78 * (Math.max(...steps) - lineMm(cell.style)));
}

/** Height of what stands in a row, millimetres. */
const highIn = (row: readonly TableCell[]): number =>
  Math.max(
    ...row.map((cell) =>
      'lines' in cell
        ? cell.lines.length * lineMm(cell.style) + (cell.lines.length > 0 ? dropMm(cell, row) : 0)
        : cell.heightMm,
    ),
  );

/** Height of a table on one page, millimetres. */
export function tableMm(
  { look }: Flow,
  columns: readonly Column[],
  rows: readonly (readonly TableCell[])[],
  padMm = 0.9,
): number {
  const head = headStyleOf(look);
  const lines = Math.max(...columns.map((one) => textCell(one.head, head, one).lines.length));
  const rowsMm = rows.map((row) => highIn(row) + 2 * padMm);
  return lines * lineMm(head) + 1.6 + rowsMm.reduce((sum, one) => sum + one, 0);
}

/**
 * A table that goes on over pages, its head on each; long rows break between lines.
 *
 * @param left where it begins on the page, its right end lying where its columns end
 */
export function drawTable(
  flow: Flow,
  columns: readonly Column[],
  rows: readonly (readonly TableCell[])[],
  {
    left = flow.look.left,
    rowHeads = false,
    whole = false,
    together,
    sum = false,
    padMm = 0.9,
    endMm = 0,
  }: {
    left?: number;
    /** Whether the first cell of a row is its head. */
    rowHeads?: boolean;
    /** Whether it stays on one page where one can hold it. */
    whole?: boolean;
    /** How many rows that follow one another stay on one page: all numbers, in order. */
    together?: readonly number[];
    /** Whether the last row sums up the others: it stays with two of them. */
    sum?: boolean;
    /** Above and below what stands in a row. */
    padMm?: number;
    /** Room for what must stand below the last row, on the same page. */
    endMm?: number;
  } = {},
): void {
  const { look } = flow;
  const right = left + columns.reduce((sum, { widthMm }) => sum + widthMm, 0);
  const headStyle = headStyleOf(look);
  const heads = columns.map((column) => textCell(column.head, headStyle, column));
  const headMm = Math.max(...heads.map(({ lines }) => lines.length)) * lineMm(headStyle) + 1.6;
  const lefts = columns.map((_, n) =>
    columns.slice(0, n).reduce((sum, { widthMm }) => sum + widthMm, left),
  );
  let table: StructureNode | undefined;

  /** Lines from one up to another of a cell, as part of the document or not. */
  function setCell(
    { lines, style, second, dividers, boxes = 0 }: TextCell,
    [from, to]: readonly [number, number],
    n: number,
    top: number,
    node: StructureNode | undefined,
  ): void {
    const step = lineMm(style);
    const end = lefts[n] + columns[n].widthMm - 1;
    const begin = lefts[n] + 1 + boxesMm(look, boxes);
    const spaced = readOn(lines);
    const baseOf = (k: number) => top + (k - from + 0.78) * step;
    if (boxes > 0 && from === 0) {
      flow.draw((surface) =>
        drawBoxes(surface, look, { left: lefts[n] + 1, base: baseOf(0), boxes }),
      );
    }
    if (dividers) {
      const marks = dividers.slice(from, to).flatMap((places, k) =>
        places.map((x) => {
          const base = baseOf(from + k);
          return [begin + x, base + 0.9, begin + x, base - 0.76 * style.sizeMm];
        }),
      );
      flow.draw((surface) => {
        if (marks.length > 0) surface.strokePath(marks, { stroke: '#767676', widthMm: 0.25 });
      });
    }
    const part = (first: number, last: number, of: StructureNode | undefined) => {
      if (first >= last) return;
      flow.draw((surface) => {
        for (let k = first; k < last; k++) {
          const x = columns[n].end ? end - textWidth(lines[k], style) : begin;
          drawText(surface, spaced[k], style, x, baseOf(k));
        }
      }, of);
    };
    if (second === undefined) return part(from, to, node);
    const [one, other] = flow.languages;
    part(from, Math.min(to, second), node?.add('P', { language: one }));
    part(Math.max(from, second), to, node?.add('P', { language: other }));
  }
  function drawHead(): void {
    const [top, bottom] = [flow.y, flow.y + headMm];
    flow.draw((surface) => {
      const ring = [left, top, right, top, right, bottom, left, bottom];
      surface.fillPath([ring], { fill: look.tint.pale });
    });
    // Only the first time is it a part of the table; later it helps the eye.
    const row = table === undefined ? (table = flow.section.add('Table')).add('TR') : undefined;
    heads.forEach((cell, n) => {
      const node = row?.add('TH', { scope: 'Column' });
      setCell(cell, [0, cell.lines.length], n, top + 0.8, node);
    });
    flow.y = bottom;
  }
  function rule(): void {
    const y = flow.y;
    flow.draw((surface) => {
      surface.strokePath([[left, y, right, y]], { stroke: look.tint.rule, widthMm: 0.2 });
    });
  }
  const rowMm = (row: readonly TableCell[]) => highIn(row) + 2 * padMm;
  const allMm = headMm + rows.reduce((sum, row) => sum + rowMm(row), 0);
  const pageMm = flow.bottom - look.top - 14;
  // A short table stays whole; of a longer one the head stays with two rows.
  const heldMm =
    whole && allMm <= 0.8 * pageMm
      ? allMm
      : headMm + rows.slice(0, 2).reduce((sum, row) => sum + rowMm(row), 0);
  if (!flow.fits(Math.min(heldMm, 0.8 * pageMm))) flow.next();
  drawHead();
  const groupFrom = new Map<number, number>();
  let begin = 0;
  for (const many of together ?? []) {
    groupFrom.set(
      begin,
      rows.slice(begin, begin + many).reduce((sum, row) => sum + rowMm(row), 0),
    );
    begin += many;
  }
  for (const [place, row] of rows.entries()) {
    const withSum = sum && place === Math.max(0, rows.length - 3) ? rows.slice(place) : [];
    const sumMm = withSum.reduce((high, one) => high + rowMm(one), 0);
    const groupMm = groupFrom.get(place) ?? sumMm;
    if (groupMm <= pageMm / 2 && !flow.fits(groupMm)) {
      flow.next();
      drawHead();
    }
    const most = Math.max(...row.map((cell) => ('lines' in cell ? cell.lines.length : 1)));
    const belowMm = endMm > 0 && place === rows.length - 1 ? belowRowMm + endMm : 0;
    const whole = rowMm(row) + belowMm;
    const step = Math.max(...row.map((cell) => ('lines' in cell ? lineMm(cell.style) : 0)));
    if (!flow.fits(whole) && (most <= wholeLines || !flow.fits(leastLines * step + 2 * padMm))) {
      flow.next();
      drawHead();
    }
    const node = table!.add('TR');
    const cells = row.map((_, n) =>
      rowHeads && n === 0 ? node.add('TH', { scope: 'Row' }) : node.add('TD'),
    );
    let from = 0;
    while (from < most) {
      const roomOver = (mm: number) =>
        Math.floor((flow.bottom - flow.y - 2 * padMm - mm + 1e-6) / step);
      const rest = most - from;
      // The last lines of a long row are not left alone on the next page.
      const ends = step === 0 || rest <= roomOver(belowMm) || rest <= leastLines;
      const here = ends ? rest : Math.min(roomOver(0), rest - leastLines);
      const top = flow.y + padMm;
      let high = 0;
      for (const [n, cell] of row.entries()) {
        if ('lines' in cell) {
          const to = Math.min(cell.lines.length, from + here);
          const drop = dropMm(cell, row);
          setCell(cell, [Math.min(from, to), to], n, top + drop, cells[n]);
          high = Math.max(high, (to - Math.min(from, to)) * lineMm(cell.style) + drop);
        } else if (from === 0) {
          const { ornament } = cell;
          if (ornament) flow.draw((surface) => ornament(surface, lefts[n], top));
          flow.draw((surface) => cell.draw(surface, lefts[n], top), cells[n]);
          high = Math.max(high, cell.heightMm);
        }
      }
      from += here;
      flow.y = top + high + padMm;
      if (!together || groupFrom.has(place + 1) || place === rows.length - 1) rule();
      if (from < most) {
        flow.next();
        drawHead();
      }
    }
  }
  flow.y += endMm > 0 ? belowRowMm : belowTableMm;
}
