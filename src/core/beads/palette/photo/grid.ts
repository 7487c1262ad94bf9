import { leastSquares } from './least-squares.js';

/** How the maker laid out the heaps. */
export interface JarGrid {
  /** Rows of heaps, 1 or more. */
  readonly rows: number;
  /** Heaps in each row, 1 or more. */
  readonly columns: number;
}

/** Where the heaps lie: the cell of each pixel, and where inside it the pixel lies. */
export interface FoundGrid {
  /** Row·columns + column of the cell whose middle is nearest; length width·height. */
  readonly cellOf: Int32Array;
  /** Distance from the cell's middle in cells, the larger of across and down; up to about 0.5. */
  readonly offset: Float64Array;
  /** Middle of each cell, x, y in pixels. */
  readonly middles: Float64Array;
  readonly pitchX: number;
  readonly pitchY: number;
}

/**
 * Lays a grid of rows and columns over what is not paper. It begins with the box around it and then
 * moves each cell to the middle of what lies in it, all cells together, so that a picture that is
 * turned a little or taken aslant is followed. Undefined when nothing lies there.
 */
export function findGrid(
  mask: Uint8Array,
  width: number,
  height: number,
  { rows, columns }: JarGrid,
): FoundGrid | undefined {
  const across = new Float64Array(width);
  const down = new Float64Array(height);
  for (let at = 0; at < mask.length; at++) {
    if (!mask[at]) continue;
    across[at % width]++;
    down[Math.floor(at / width)]++;
  }
  const [left, right] = extent(across);
  const [top, bottom] = extent(down);
  if (right <= left || bottom <= top) return undefined;
  let pitchX = (right - left) / columns;
  let pitchY = (bottom - top) / rows;
  let middles = new Float64Array(2 * rows * columns);
  for (let cell = 0; cell < rows * columns; cell++) {
    middles[2 * cell] = left + ((cell % columns) + 0.5) * pitchX;
    middles[2 * cell + 1] = top + (Math.floor(cell / columns) + 0.5) * pitchY;
  }
  for (let turn = 0; turn < 8; turn++) {
    const moved = refit(mask, width, middles, { rows, columns }, pitchX, pitchY);
    if (!moved) break;
    middles = moved;
    if (columns > 1) pitchX = meanStep(middles, rows, columns, 0);
    if (rows > 1) pitchY = meanStep(middles, rows, columns, 1);
  }
  const nearest = nearestFinder(middles, columns, pitchX, pitchY);
  const cellOf = new Int32Array(mask.length);
  const offset = new Float64Array(mask.length);
  for (let at = 0; at < mask.length; at++) {
    const [cell, far] = nearest(at % width, Math.floor(at / width));
    cellOf[at] = cell;
    offset[at] = far;
  }
  return { cellOf, offset, middles, pitchX, pitchY };
}

/** From where to where most of a profile lies: stray dots at the ends do not count. */
function extent(profile: Float64Array): [number, number] {
  const total = profile.reduce((sum, value) => sum + value, 0);
  if (total === 0) return [0, 0];
  const edge = total * 0.002;
  let first = 0;
  for (let sum = profile[0]; sum < edge;) sum += profile[++first];
  let last = profile.length - 1;
  for (let sum = profile[last]; sum < edge;) sum += profile[--last];
  return [first, last + 1];
}

/** New middles on a grid x, y = k0 + k1·c + k2·r + k3·c·r through the middles of what cells hold. */
function refit(
  mask: Uint8Array,
  width: number,
  middles: Float64Array,
  { rows, columns }: JarGrid,
  pitchX: number,
  pitchY: number,
): Float64Array<ArrayBuffer> | undefined {
  const cells = rows * columns;
  const nearest = nearestFinder(middles, columns, pitchX, pitchY);
  const sums = new Float64Array(3 * cells);
  for (let at = 0; at < mask.length; at++) {
    if (!mask[at]) continue;
    const x = at % width;
    const y = Math.floor(at / width);
    const [cell, far] = nearest(x, y);
    if (far > 0.75) continue;
    sums[3 * cell] += x + 0.5;
    sums[3 * cell + 1] += y + 0.5;
    sums[3 * cell + 2]++;
  }
  const terms = (cell: number) => {
    const column = cell % columns;
    const row = Math.floor(cell / columns);
    const list = [1];
    if (columns > 1) list.push(column);
    if (rows > 1) list.push(row);
    if (columns > 1 && rows > 1) list.push(column * row);
    return list;
  };
  const held = [...Array(cells).keys()].filter((cell) => sums[3 * cell + 2] > 0);
  if (held.length < Math.max(1, cells / 2)) return undefined;
  const moved = new Float64Array(2 * cells);
  for (const axis of [0, 1]) {
    const fitted = leastSquares(
      held.map((cell) => ({
        terms: terms(cell),
        value: sums[3 * cell + axis] / sums[3 * cell + 2],
      })),
    );
    for (let cell = 0; cell < cells; cell++) {
      moved[2 * cell + axis] = terms(cell).reduce((sum, term, n) => sum + term * fitted[n], 0);
    }
  }
  return moved;
}

function meanStep(middles: Float64Array, rows: number, columns: number, axis: 0 | 1): number {
  const last = axis === 0 ? columns - 1 : (rows - 1) * columns;
  const other = axis === 0 ? (rows - 1) * columns : columns - 1;
  const near = middles[2 * last + axis] - middles[axis];
  const far = middles[2 * (last + other) + axis] - middles[2 * other + axis];
  return Math.max(1, (near + far) / 2 / (axis === 0 ? columns - 1 : rows - 1));
}

/**
 * The cell whose middle is nearest, and how far away it is in cells. Middles lie in rows and columns,
 * so the search walks from cell to cell, beginning where the last pixel was.
 */
function nearestFinder(middles: Float64Array, columns: number, pitchX: number, pitchY: number) {
  const rows = middles.length / 2 / columns;
  let cell = 0;
  return (x: number, y: number): [cell: number, far: number] => {
    const farFrom = (other: number) =>
      Math.max(
        Math.abs(x + 0.5 - middles[2 * other]) / pitchX,
        Math.abs(y + 0.5 - middles[2 * other + 1]) / pitchY,
      );
    let least = farFrom(cell);
    for (;;) {
      let best = cell;
      const column = cell % columns;
      const row = (cell - column) / columns;
      for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
        for (let c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
          const far = farFrom(r * columns + c);
          if (far < least) [best, least] = [r * columns + c, far];
        }
      }
      if (best === cell) return [cell, least];
      cell = best;
    }
  };
}
