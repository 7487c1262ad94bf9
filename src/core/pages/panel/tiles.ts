import type { Box } from './panel-view.js';

/** One of several sheets that show a large drawing together. */
export interface Tile {
  /** Counted from 1, row by row. */
  readonly number: number;
  readonly row: number;
  readonly column: number;
  /** What it shows of the drawing, in the drawing's own millimetres. */
  readonly box: Box;
}

/** Sheets side by side, and how far neighbours show the same. */
export interface Tiling {
  readonly tiles: readonly Tile[];
  readonly overlapMm: number;
}

/**
 * The fewest sheets of one size that show all of a drawing, each overlapping its neighbours; they
 * are spread evenly, and one whose things are all whole on others is left out.
 *
 * @param things boxes that must be whole on at least one sheet; none longer than the overlap
 */
export function tiled(
  drawing: Box,
  sheet: { widthMm: number; heightMm: number },
  overlapMm: number,
  things: readonly Box[],
): Tiling {
  const across = places(drawing.left, drawing.right, sheet.widthMm, overlapMm);
  const down = places(drawing.top, drawing.bottom, sheet.heightMm, overlapMm);
  const all = down.flatMap((top, row) =>
    across.map((left, column) => {
      const box = { left, top, right: left + sheet.widthMm, bottom: top + sheet.heightMm };
      const whole = new Set<number>();
      things.forEach((thing, n) => {
        if (contains(box, thing)) whole.add(n);
      });
      return { row, column, box, whole };
    }),
  );
  const kept = new Set(all);
  const fewestFirst = [...all].sort((a, b) => a.whole.size - b.whole.size);
  for (const one of fewestFirst) {
    const others = [...kept].filter((other) => other !== one);
    const needless = [...one.whole].every((n) => others.some(({ whole }) => whole.has(n)));
    if (needless && others.length > 0) kept.delete(one);
  }
  const tiles = all
    .filter((one) => kept.has(one))
    .map(({ row, column, box }, n) => ({ number: n + 1, row, column, box }));
  return { tiles, overlapMm };
}

/** How much of a sheet its neighbour shows too, at most, 0 to 1; 0 where there is one sheet only. */
export function mostShared(
  drawing: Box,
  sheet: { widthMm: number; heightMm: number },
  overlapMm: number,
): number {
  const shared = (length: number, sheetMm: number): number => {
    const many = howMany(length, sheetMm, overlapMm);
    return many === 1 ? 0 : 1 - (length - sheetMm) / (many - 1) / sheetMm;
  };
  return Math.max(
    shared(drawing.right - drawing.left, sheet.widthMm),
    shared(drawing.bottom - drawing.top, sheet.heightMm),
  );
}

/** How many sheets of one size lie beside and above one another to show a whole drawing. */
export function sheetsNeeded(
  drawing: Box,
  sheet: { widthMm: number; heightMm: number },
  overlapMm: number,
): number {
  return (
    howMany(drawing.right - drawing.left, sheet.widthMm, overlapMm) *
    howMany(drawing.bottom - drawing.top, sheet.heightMm, overlapMm)
  );
}

/** The tile beside another, if it is there. */
export function beside({ tiles }: Tiling, tile: Tile, down: number, across: number) {
  return tiles.find((one) => one.row === tile.row + down && one.column === tile.column + across);
}

/** Cells are rounded to millionths, and enlarged after that. */
const nothingMm = 1e-5;

/** Whether one box lies in another, whole. */
export const contains = (box: Box, one: Box): boolean =>
  one.left >= box.left - nothingMm &&
  one.right <= box.right + nothingMm &&
  one.top >= box.top - nothingMm &&
  one.bottom <= box.bottom + nothingMm;

const howMany = (length: number, sheetMm: number, overlapMm: number): number =>
  Math.max(1, Math.ceil((length - overlapMm) / (sheetMm - overlapMm) - 1e-9));

/** Where the sheets of one row begin. */
function places(from: number, to: number, sheetMm: number, overlapMm: number): number[] {
  const length = to - from;
  const many = howMany(length, sheetMm, overlapMm);
  if (many === 1) return [from - (sheetMm - length) / 2];
  const step = (length - sheetMm) / (many - 1);
  return Array.from({ length: many }, (_, n) => from + n * step);
}
