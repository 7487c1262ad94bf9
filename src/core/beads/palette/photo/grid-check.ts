import type { FoundGrid, JarGrid } from './grid.js';

/** Spread (mean square, in cells) of a disc that fills nine tenths of its cell; an even spread has 1/12. */
const mostSpread = 0.054;
/** How far, in cells, a heap's middle may lie from where the grid says. */
const mostAside = 0.25;
/** A clear stretch of paper right through what should be one row, as a share of its height. */
const gapShare = 0.08;

/**
 * Whether heaps lie one to a cell: each about its cell's middle, with paper between the cells and
 * none right through a cell, and no row or column without any bead.
 *
 * @param heaps pixels of each cell, row by row
 * @param isEmpty which of them hold no beads
 */
export function liesInGrid(
  heaps: readonly (readonly number[])[],
  isEmpty: readonly boolean[],
  found: FoundGrid,
  grid: JarGrid,
  width: number,
): boolean {
  if (hasEmptyLine(isEmpty, grid)) return false;
  const full = heaps.flatMap((_, cell) => (isEmpty[cell] ? [] : [cell]));
  for (const axis of [0, 1] as const) {
    const place = (at: number) => (axis === 0 ? at % width : Math.floor(at / width)) + 0.5;
    if ((axis === 0 ? grid.columns : grid.rows) === 1) {
      if (hasGap(heaps.flat().map(place))) return false;
      continue;
    }
    const pitch = axis === 0 ? found.pitchX : found.pitchY;
    let squares = 0;
    let count = 0;
    let aside = 0;
    for (const cell of full) {
      let sum = 0;
      for (const at of heaps[cell]) {
        const off = (place(at) - found.middles[2 * cell + axis]) / pitch;
        sum += off;
        squares += off * off;
      }
      count += heaps[cell].length;
      if (Math.abs(sum / heaps[cell].length) > mostAside) aside++;
    }
    if (squares > mostSpread * count || aside * 5 > full.length) return false;
  }
  return true;
}

/** How far bare paper may lie from its own light, as a share, at half of its places. */
const mostUneven = 0.1;

/**
 * Whether what lies around the heaps is paper: of one light, when evened out. Photographs of other
 * things are four times as uneven and more; shaded paper with grain stays under half of this.
 *
 * @param even light of each pixel over that of the paper, 3 values a pixel
 * @param notPaper 1 where beads lie
 */
export function liesOnPaper(even: Float64Array, notPaper: Uint8Array, found: FoundGrid): boolean {
  const off: number[] = [];
  for (let at = 0; at < notPaper.length; at += 5) {
    if (notPaper[at] || found.offset[at] > 0.6) continue;
    off.push(Math.max(...[0, 1, 2].map((c) => Math.abs(even[3 * at + c] - 1))));
  }
  off.sort((a, b) => a - b);
  return off.length > 0 && off[Math.floor(off.length / 2)] < mostUneven;
}

/** A row or column without any bead. */
function hasEmptyLine(isEmpty: readonly boolean[], { rows, columns }: JarGrid): boolean {
  const line = (length: number, cellAt: (n: number) => number) =>
    Array.from({ length }, (_, n) => isEmpty[cellAt(n)]).every(Boolean);
  for (let r = 0; r < rows; r++) if (line(columns, (c) => r * columns + c)) return true;
  for (let c = 0; c < columns; c++) if (line(rows, (r) => r * columns + c)) return true;
  return false;
}

/** Whether nothing lies in a stretch between places with a tenth of all on either side. */
function hasGap(places: number[]): boolean {
  places.sort((a, b) => a - b);
  const low = Math.floor(0.1 * (places.length - 1));
  const high = Math.ceil(0.9 * (places.length - 1));
  const whole = places[places.length - 1] - places[0];
  for (let n = low; n < high; n++) {
    if (places[n + 1] - places[n] > gapShare * whole) return true;
  }
  return false;
}
