import { drawText } from '../core/draw/text.js';
import type { TextStyle } from '../core/draw/text.js';
import type { Flow } from './flow.js';
import { accent, lineMm, linesOf, pale } from './look.js';
import type { PdfSurface } from './pdf-surface.js';

/** One column of a table. */
export interface Column {
  readonly head: string;
  readonly widthMm: number;
  readonly end?: boolean;
}

/** One cell: lines of text, or something that is drawn from its left, top corner. */
export type TableCell =
  | { readonly lines: readonly string[]; readonly style: TextStyle }
  | {
      readonly heightMm: number;
      readonly draw: (surface: PdfSurface, x: number, y: number) => void;
    };

const gapMm = 3;
const padMm = 0.9;
/** Rows of no more lines stay whole; of a longer one this many stay together at each end. */
const wholeLines = 8;
const leastLines = 2;

/** The width that text has in a column. */
export const roomIn = ({ widthMm }: Pick<Column, 'widthMm'>): number => widthMm - gapMm;

/** A table that goes on over pages, its head on each; long rows break between lines. */
export function drawTable(
  flow: Flow,
  columns: readonly Column[],
  rows: readonly (readonly TableCell[])[],
): void {
  const { look } = flow;
  const head = { ...look.small, face: look.fonts.bold, ink: accent };
  const heads = columns.map((column) => linesOf(column.head, head, roomIn(column)));
  const headMm = Math.max(...heads.map((lines) => lines.length)) * lineMm(head) + 1.6;
  const lefts = columns.map((_, n) =>
    columns.slice(0, n).reduce((sum, { widthMm }) => sum + widthMm, look.left),
  );

  function setLines(lines: readonly string[], style: TextStyle, n: number, top: number): void {
    const step = lineMm(style);
    const right = lefts[n] + columns[n].widthMm - 1;
    flow.draw((surface) => {
      lines.forEach((line, k) => {
        const y = top + (k + 0.78) * step;
        if (columns[n].end) drawText(surface, line, style, right, y, 'end');
        else drawText(surface, line, style, lefts[n] + 1, y);
      });
    });
  }
  function drawHead(): void {
    const [top, bottom] = [flow.y, flow.y + headMm];
    flow.draw((surface) => {
      const ring = [look.left, top, look.right, top, look.right, bottom, look.left, bottom];
      surface.fillPath([ring], { fill: pale });
    });
    heads.forEach((lines, n) => setLines(lines, head, n, top + 0.8));
    flow.y = bottom;
  }
  function rule(): void {
    const y = flow.y;
    flow.draw((surface) => {
      surface.strokePath([[look.left, y, look.right, y]], { stroke: '#b9c6ca', widthMm: 0.2 });
    });
  }
  const heightOf = (cell: TableCell, from = 0) =>
    'lines' in cell ? (cell.lines.length - from) * lineMm(cell.style) : cell.heightMm;

  if (!flow.fits(headMm + (rows[0] ? Math.max(...rows[0].map((cell) => heightOf(cell))) : 0)))
    flow.next();
  drawHead();
  for (const row of rows) {
    const most = Math.max(...row.map((cell) => ('lines' in cell ? cell.lines.length : 1)));
    const whole = Math.max(...row.map((cell) => heightOf(cell))) + 2 * padMm;
    const step = Math.max(...row.map((cell) => ('lines' in cell ? lineMm(cell.style) : 0)));
    if (!flow.fits(whole) && (most <= wholeLines || !flow.fits(leastLines * step + 2 * padMm))) {
      flow.next();
      drawHead();
    }
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
          const lines = cell.lines.slice(from, from + here);
          setLines(lines, cell.style, n, top);
          high = Math.max(high, lines.length * lineMm(cell.style));
        } else if (from === 0) {
          flow.draw((surface) => cell.draw(surface, lefts[n], top));
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
