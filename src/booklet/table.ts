import type { Surface } from '../core/draw/surface.js';
import { drawText, textWidth } from '../core/draw/text.js';
import type { TextStyle } from '../core/draw/text.js';
import { sides } from '../words/pages/pairs.js';
import type { Flow } from './flow.js';
import { accent, lineMm, linesOf, pale, readOn } from './look.js';
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
}

/** One cell: text, or something that is drawn from its left, top corner. */
export type TableCell =
  | TextCell
  | {
      readonly heightMm: number;
      readonly draw: (surface: Surface, x: number, y: number) => void;
    };

const gapMm = 3;
const padMm = 0.9;
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

/** A table that goes on over pages, its head on each; long rows break between lines. */
export function drawTable(
  flow: Flow,
  columns: readonly Column[],
  rows: readonly (readonly TableCell[])[],
): void {
  const { look } = flow;
  const headStyle = { ...look.small, face: look.fonts.bold, ink: accent };
  const heads = columns.map((column) => textCell(column.head, headStyle, column));
  const headMm = Math.max(...heads.map(({ lines }) => lines.length)) * lineMm(headStyle) + 1.6;
  const lefts = columns.map((_, n) =>
    columns.slice(0, n).reduce((sum, { widthMm }) => sum + widthMm, look.left),
  );
  let table: StructureNode | undefined;

  /** Lines from one up to another of a cell, as part of the document or not. */
  function setCell(
    { lines, style, second }: TextCell,
    [from, to]: readonly [number, number],
    n: number,
    top: number,
    node: StructureNode | undefined,
  ): void {
    const step = lineMm(style);
    const right = lefts[n] + columns[n].widthMm - 1;
    const spaced = readOn(lines);
    const part = (first: number, last: number, of: StructureNode | undefined) => {
      if (first >= last) return;
      flow.draw((surface) => {
        for (let k = first; k < last; k++) {
          const y = top + (k - from + 0.78) * step;
          const x = columns[n].end ? right - textWidth(lines[k], style) : lefts[n] + 1;
          drawText(surface, spaced[k], style, x, y);
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
      const ring = [look.left, top, look.right, top, look.right, bottom, look.left, bottom];
      surface.fillPath([ring], { fill: pale });
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
      surface.strokePath([[look.left, y, look.right, y]], { stroke: '#b9c6ca', widthMm: 0.2 });
    });
  }
  const heightOf = (cell: TableCell) =>
    'lines' in cell ? cell.lines.length * lineMm(cell.style) : cell.heightMm;

  if (!flow.fits(headMm + (rows[0] ? Math.max(...rows[0].map(heightOf)) : 0))) flow.next();
  drawHead();
  for (const row of rows) {
    const most = Math.max(...row.map((cell) => ('lines' in cell ? cell.lines.length : 1)));
    const whole = Math.max(...row.map(heightOf)) + 2 * padMm;
    const step = Math.max(...row.map((cell) => ('lines' in cell ? lineMm(cell.style) : 0)));
    if (!flow.fits(whole) && (most <= wholeLines || !flow.fits(leastLines * step + 2 * padMm))) {
      flow.next();
      drawHead();
    }
    const node = table!.add('TR');
    const cells = row.map(() => node.add('TD'));
    let from = 0;
    while (from < most) {
      const room = Math.floor((look.bottom - flow.y - 2 * padMm + 1e-6) / step);
      const rest = most - from;
      // The last lines of a long row are not left alone on the next page.
      const here = rest <= room || step === 0 ? rest : Math.min(room, rest - leastLines);
      const top = flow.y + padMm;
      let high = 0;
      for (const [n, cell] of row.entries()) {
        if ('lines' in cell) {
          const to = Math.min(cell.lines.length, from + here);
          setCell(cell, [Math.min(from, to), to], n, top, cells[n]);
          high = Math.max(high, (to - Math.min(from, to)) * lineMm(cell.style));
        } else if (from === 0) {
          flow.draw((surface) => cell.draw(surface, lefts[n], top), cells[n]);
          high = Math.max(high, cell.heightMm);
        }
      }
      from += here;
      flow.y = top + high + padMm;
      rule();
      if (from < most) {
        flow.next();
        drawHead();
      }
    }
  }
  flow.y += 3;
}
