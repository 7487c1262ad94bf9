import { boxOf, drawLiningPiece } from './lining-piece.js';
import type { LiningSheet } from './lining-piece.js';
import { liningNoteParts, liningNotes } from './lining-notes.js';
import { rulerHeightMm, rulerPart, testSquarePart, testSquaresMm } from '../surface/print-check.js';
import { printPapers, safeArea, safeAreaOf } from '../surface/print-sheet.js';
import type { Area, PrintPaper } from '../surface/print-sheet.js';
import type { PagePart } from '../surface/page-part.js';
import type { Surface } from '../surface/surface.js';
import { drawText, mmPerPoint, shortened, textWidth } from '../surface/text.js';

/** Neighbouring sheets show this much of the same. */
const overlapMm = 12;
const spaceMm = 5;
const headMm = 8;
const squares = { widthMm: testSquaresMm[1], heightMm: testSquaresMm[0] + testSquaresMm[1] + 6 };

/** One sheet of a template. */
export interface LiningPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly parts: readonly PagePart[];
}

/**
 * The sheets of a template for one paper: one sheet where notes, squares, ruler and piece have
 * room together, else the piece on sheets of its own, tiled with an overlap when it must be.
 */
export function liningPages(sheet: LiningSheet, paper: PrintPaper): LiningPage[] {
  const page = printPapers[paper];
  // The squares tell whether the print is true: the ruler gives way before the sheet is parted.
  const whole = together(sheet, page) ?? (sheet.drawn && together(sheet, page, { ruled: false }));
  return whole ? [whole] : apart(sheet, page);
}

/** The same on one sheet, of that paper or as large as it must be. */
export function liningOnePage(sheet: LiningSheet, paper: PrintPaper): LiningPage {
  const page = printPapers[paper];
  const whole = together(sheet, page);
  if (whole) return whole;
  const box = boxOf(sheet.lining.cut);
  const { left, top: border } = safeAreaOf(page);
  const wide = Math.max(safeArea.widthMm, box.right - box.left);
  const widthMm = Math.ceil(10 * (wide + 2 * left)) / 10;
  const area = { left, top: border, right: left + wide };
  const notes = liningNoteParts(sheet, liningNotes(sheet), placeOf(area));
  const top = notes.end + spaceMm;
  const pieceTop = top + testSquaresMm[1] + spaceMm;
  const bottom = pieceTop + box.bottom - box.top + spaceMm + rulerHeightMm;
  return {
    widthMm,
    heightMm: Math.ceil(10 * (bottom + border)) / 10,
    parts: [
      ...notes.parts,
      ...squaresInRow(sheet, area.left, top),
      pieceAt(sheet, widthMm / 2 - (box.left + box.right) / 2, pieceTop - box.top),
      ruler(sheet, { ...area, bottom }),
    ],
  };
}

/** Where a sheet is drawn: what every paper has room for, and more where other pages take it. */
function areaOf({ drawn }: LiningSheet, page: { widthMm: number; heightMm: number }): Area {
  const safe = safeAreaOf(page);
  if (!drawn) return safe;
  const { top, bottom } = drawn.page;
  return { ...safe, top: Math.min(safe.top, top), bottom: Math.max(safe.bottom, bottom) };
}

function together(
  sheet: LiningSheet,
  page: { widthMm: number; heightMm: number },
  { ruled = true } = {},
): LiningPage | undefined {
  const area = areaOf(sheet, page);
  const box = boxOf(sheet.lining.cut);
  const notes = liningNoteParts(sheet, liningNotes(sheet), placeOf(area));
  const top = notes.end + spaceMm;
  const room = area.bottom - (ruled ? rulerHeightMm + spaceMm : 0) - top;
  const right = area.right - squares.widthMm - 2 * spaceMm;
  const [wide, high] = [box.right - box.left, box.bottom - box.top];
  if (wide > right - area.left || Math.max(high, squares.heightMm) > room) return undefined;
  const x = (area.left + right) / 2 - (box.left + box.right) / 2;
  const y = top + room / 2 - (box.top + box.bottom) / 2;
  const squaresTop = top + (room - squares.heightMm) / 2;
  const squaresLeft = area.right - squares.widthMm;
  return {
    ...page,
    parts: [
      ...notes.parts,
      pieceAt(sheet, x, y),
      square(sheet, 0, squaresLeft, squaresTop),
      square(sheet, 1, squaresLeft, squaresTop + testSquaresMm[0] + 6),
      ...(ruled ? [ruler(sheet, area)] : []),
    ],
  };
}

function apart(sheet: LiningSheet, page: { widthMm: number; heightMm: number }): LiningPage[] {
  const area = safeAreaOf(page);
  const box = boxOf(sheet.lining.cut);
  const window = { ...area, top: area.top + headMm, bottom: area.bottom - rulerHeightMm - 4 };
  const [wide, high] = [window.right - window.left, window.bottom - window.top];
  const columns = tilesFor(box.right - box.left + 2, wide);
  const rows = tilesFor(box.bottom - box.top + 2, high);
  const notes = liningNoteParts(sheet, liningNotes(sheet, { rows, columns }), placeOf(area));
  const cover: LiningPage = {
    ...page,
    parts: [
      ...notes.parts,
      ...squaresInRow(sheet, area.left, notes.end + spaceMm),
      ruler(sheet, area),
    ],
  };
  // Grid: the tiles laid out with their overlap, the piece in the middle.
  const gridWide = columns * wide - (columns - 1) * overlapMm;
  const gridHigh = rows * high - (rows - 1) * overlapMm;
  // An even number of sheets side by side joins in the middle of the piece.
  const join = {
    x: columns % 2 === 0 ? (box.left + box.right) / 2 : undefined,
    y: rows % 2 === 0 ? (box.top + box.bottom) / 2 : undefined,
    clearMm: overlapMm / 2 + 3,
  };
  const tiles = Array.from({ length: rows * columns }, (_, n): LiningPage => {
    const [row, column] = [Math.floor(n / columns), n % columns];
    const left = window.left - column * (wide - overlapMm);
    const top = window.top - row * (high - overlapMm);
    const grid = { rows, columns, left, top, wide, high };
    const head: PagePart = {
      as: 'title',
      draw(surface) {
        const style = { face: sheet.fonts.bold, sizeMm: 12 * mmPerPoint };
        const said = sheet.words.lining;
        const where = said.sheet({ row: row + 1, column: column + 1, rows, columns });
        const rest = `  ·  ${where}`;
        const room = area.right - area.left - textWidth(rest, style);
        const line = `${shortened(said.title(sheet), style, room)}${rest}`;
        drawText(surface, line, style, area.left, area.top + 4.4);
      },
    };
    const piece: PagePart = {
      as: 'picture',
      alt: sheet.words.booklet.alt.lining,
      window,
      draw(surface) {
        const x = left + gridWide / 2 - (box.left + box.right) / 2;
        const y = top + gridHigh / 2 - (box.top + box.bottom) / 2;
        drawLiningPiece(surface, sheet, x, y, join);
        drawJoins(surface, grid);
      },
    };
    return { ...page, parts: [head, piece, ruler(sheet, area)] };
  });
  return [cover, ...tiles];
}

/** Dotted lines along the middle of every overlap, with crosses that must lie on one another. */
function drawJoins(
  surface: Surface,
  grid: { rows: number; columns: number; left: number; top: number; wide: number; high: number },
): void {
  const { rows, columns, left, top, wide, high } = grid;
  if (rows * columns === 1) return;
  const right = left + columns * wide - (columns - 1) * overlapMm;
  const bottom = top + rows * high - (rows - 1) * overlapMm;
  const middles = (count: number, from: number, step: number) =>
    Array.from(
      { length: count - 1 },
      (_, k) => from + (k + 1) * (step - overlapMm) + overlapMm / 2,
    );
  const xs = middles(columns, left, wide);
  const ys = middles(rows, top, high);
  const lines = [
    ...xs.map((x) => Float64Array.of(x, top, x, bottom)),
    ...ys.map((y) => Float64Array.of(left, y, right, y)),
  ];
  surface.beginGroup('joins');
  surface.strokePath(lines, { stroke: '#000000', widthMm: 0.25, dashMm: [0.01, 1.5] });
  const crosses: Float64Array[] = [];
  const cross = (x: number, y: number) =>
    crosses.push(Float64Array.of(x - 4, y, x + 4, y), Float64Array.of(x, y - 4, x, y + 4));
  for (const x of xs)
    for (let y = top + overlapMm / 2; y < bottom; y += (high - overlapMm) / 4) cross(x, y);
  for (const y of ys)
    for (let x = left + overlapMm / 2; x < right; x += (wide - overlapMm) / 3) cross(x, y);
  surface.strokePath(crosses, { stroke: '#000000', widthMm: 0.25 });
  surface.endGroup();
}

function pieceAt(sheet: LiningSheet, x: number, y: number): PagePart {
  const alt = sheet.words.booklet.alt.lining;
  return { as: 'picture', alt, draw: (surface) => drawLiningPiece(surface, sheet, x, y) };
}

const square = (sheet: LiningSheet, which: 0 | 1, x: number, y: number): PagePart =>
  testSquarePart(sheet, which, { x, y }, sheet.words.lining.print);

const squaresInRow = (sheet: LiningSheet, left: number, top: number): PagePart[] => [
  square(sheet, 0, left, top),
  square(sheet, 1, left + testSquaresMm[0] + 2 * spaceMm, top),
];

const ruler = (sheet: LiningSheet, area: Omit<Area, 'top'>): PagePart =>
  rulerPart(sheet, area, sheet.words.lining.print);

const tilesFor = (size: number, tile: number): number =>
  Math.max(1, Math.ceil((size - overlapMm) / (tile - overlapMm) - 1e-9));

type Corner = Pick<Area, 'left' | 'top'>;

const placeOf = ({ left, top }: Corner) => ({ left, top, widthMm: safeArea.widthMm });
