import type { Fonts } from '../surface/font.js';
import { black, white } from '../panel/cells.js';
import { drawKeyMap } from '../panel/key-map.js';
import type { Box } from '../panel/panel-view.js';
import type { Surface } from '../surface/surface.js';
import { drawText, mmPerPoint, wrapped } from '../surface/text.js';
import { beside } from '../panel/tiles.js';
import type { Tile, Tiling } from '../panel/tiles.js';

/** What the sheets of an enlarged chart are drawn on. */
export interface SheetPage {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Where the drawing's page ends; a foot may stand below. */
  readonly bottomMm: number;
  /** Beads are at least this large, millimetres. */
  readonly leastBeadMm: number;
  readonly textPoints: number;
}

/** One sheet: what stands around its window, and what shows through it. */
export interface ChartSheet {
  readonly tile: Tile;
  readonly window: Box;
  readonly title: string;
  /** How large a bead is drawn. */
  readonly beadMm: number;
  draw(surface: Surface): void;
  drawInWindow(surface: Surface): void;
}

/** What stands around the window of a sheet. */
export interface Surround {
  readonly page: SheetPage;
  readonly fonts: Fonts;
  readonly tiling: Tiling;
  readonly title: (tile: Tile) => string;
  readonly notes: readonly string[];
  /** Closed rings for the map, in the drawing's millimetres. */
  readonly outlines: readonly ArrayLike<number>[];
}

/** As long as a number of sheets may be when a title is given room. */
export const mostSheets = 99;

const marginMm = 12;
const mapMm = 30;
const topMm = 10;

/** The part of a page through which a sheet shows its drawing, below the longest of its titles. */
export function sheetWindow(
  page: SheetPage,
  title: string,
  notes: readonly string[],
  fonts: Fonts,
): Box {
  const style = noteStyle(page, fonts);
  const lines = notes.flatMap((note) => wrapped(note, style, textMm(page))).length;
  const big = titleStyle(page, fonts);
  const titleLines = Math.max(2, wrapped(title, big, textMm(page)).length);
  const textHigh = 1.28 * (titleLines * big.sizeMm + lines * style.sizeMm) + 1;
  return {
    left: marginMm,
    top: topMm + Math.max(mapMm, textHigh) + 6.5,
    right: page.widthMm - marginMm,
    bottom: page.bottomMm - 6.5,
  };
}

const titleStyle = ({ textPoints }: SheetPage, { bold }: Fonts) => ({
  face: bold,
  sizeMm: 1.35 * textPoints * mmPerPoint,
});
const noteStyle = ({ textPoints }: SheetPage, { regular }: Fonts) => ({
  face: regular,
  sizeMm: textPoints * mmPerPoint,
});
/** Words stand beside the map. */
const textMm = ({ widthMm }: SheetPage): number => widthMm - 2 * marginMm - mapMm - 6;

/** Title and notes, the map, and which sheets lie around. */
export function drawSurround(surface: Surface, around: Surround, tile: Tile, window: Box): void {
  const { page, fonts, tiling, title, notes, outlines } = around;
  let y = topMm;
  const set = (text: string, style: ReturnType<typeof noteStyle>) => {
    for (const line of wrapped(text, style, textMm(page))) {
      drawText(surface, line, style, marginMm, y + 0.8 * style.sizeMm);
      y += 1.28 * style.sizeMm;
    }
  };
  set(title(tile), titleStyle(page, fonts));
  y += 1;
  for (const note of notes) set(note, noteStyle(page, fonts));
  if (tiling.tiles.length === 1) return;
  drawKeyMap(surface, tiling, tile, outlines, {
    left: page.widthMm - marginMm - mapMm,
    top: topMm,
    right: page.widthMm - marginMm,
    bottom: topMm + mapMm,
  });
  drawNeighbours(surface, around, tile, window);
}

/** A small triangle with the number of the sheet that lies there, on each side of the window. */
function drawNeighbours(
  surface: Surface,
  { fonts, page, tiling }: Surround,
  tile: Tile,
  window: Box,
): void {
  const style = { face: fonts.bold, sizeMm: page.textPoints * mmPerPoint };
  const middleX = (window.left + window.right) / 2;
  const middleY = (window.top + window.bottom) / 2;
  const cap = style.sizeMm * style.face.capHeight;
  const sides: [down: number, across: number, x: number, y: number][] = [
    [0, -1, window.left - 3, middleY],
    [0, 1, window.right + 3, middleY],
    [-1, 0, middleX - 3, window.top - 3.4],
    [1, 0, middleX - 3, window.bottom + 3.4],
  ];
  for (const [down, across, x, y] of sides) {
    const next = beside(tiling, tile, down, across);
    if (!next) continue;
    const [along, out] = [1.9, 1.9];
    const tip = [x + across * out, y + down * out];
    const base =
      down === 0
        ? [x - across * out, y - along, x - across * out, y + along]
        : [x - along, y - down * out, x + along, y - down * out];
    surface.fillPath([[...tip, ...base]], { fill: black });
    const number = String(next.number);
    if (down === 0) drawText(surface, number, style, x, y + along + 1.2 + cap, 'middle');
    else drawText(surface, number, style, x + along + 1.5, y + cap / 2);
  }
}

/** Where the neighbours' windows begin: dotted lines, seen on any bead. */
export function drawOverlaps(surface: Surface, tiling: Tiling, tile: Tile, window: Box): void {
  const toX = (value: number) => window.left + value - tile.box.left;
  const toY = (value: number) => window.top + value - tile.box.top;
  const lines: number[][] = [];
  const left = beside(tiling, tile, 0, -1);
  const right = beside(tiling, tile, 0, 1);
  const above = beside(tiling, tile, -1, 0);
  const below = beside(tiling, tile, 1, 0);
  for (const x of [left && toX(left.box.right), right && toX(right.box.left)]) {
    if (x !== undefined) lines.push([x, window.top, x, window.bottom]);
  }
  for (const y of [above && toY(above.box.bottom), below && toY(below.box.top)]) {
    if (y !== undefined) lines.push([window.left, y, window.right, y]);
  }
  if (lines.length === 0) return;
  surface.strokePath(lines, { stroke: white, widthMm: 0.7 });
  surface.strokePath(lines, { stroke: black, widthMm: 0.35, dashMm: [0.1, 1.4] });
}
