import { ciede2000Fast } from '../../colour/ciede2000.js';

/** Side of a cell of Lab space. Half its diagonal is 1.7, far below what parts two beads. */
const side = 2;
/** Lab of sRGB and of what lies a little beyond: L 0..100, a and b within ±130. */
const [lightCells, hueCells, hueReach] = [52, 132, 132];

/** How many beads of a cell are known in their order. */
export const nearCount = 16;

/** Lab space in cells, and how far each bead of a palette is from the middle of a cell. */
export interface LabCells {
  /** How many beads the palette has. */
  readonly beads: number;
  /** Number of the cell that a colour lies in; cells are numbered as they are first asked for. */
  cellOf(L: number, a: number, b: number): number;
  /** CIEDE2000 from the middle of a cell to each bead; length P. Worked out once and kept. */
  row(cell: number): Float32Array;
  /** The `nearCount` nearest beads to the middle of a cell, nearest first. */
  near(cell: number): Int16Array;
  /** How many cells were asked for. */
  count(): number;
}

/** @param palette L, a, b of each bead; length 3·P */
export function labCells(palette: Float64Array): LabCells {
  const beads = palette.length / 3;
  const known = new Int32Array(lightCells * hueCells * hueCells).fill(-1);
  const rows: Float32Array[] = [];
  const nears: Int16Array[] = [];
  const within = (value: number, most: number): number =>
    value < 0 ? 0 : value >= most ? most - 1 : Math.floor(value);

  return {
    beads,
    cellOf(L, a, b) {
      const l = within(L / side, lightCells);
      const u = within((a + hueReach) / side, hueCells);
      const v = within((b + hueReach) / side, hueCells);
      const key = (l * hueCells + u) * hueCells + v;
      if (known[key] < 0) {
        known[key] = rows.length;
        const [midL, midA, midB] = [l, u, v].map((at) => (at + 0.5) * side);
        const row = new Float32Array(beads);
        for (let j = 0; j < beads; j++) {
          const [p, q, r] = [palette[3 * j], palette[3 * j + 1], palette[3 * j + 2]];
          row[j] = ciede2000Fast(midL, midA - hueReach, midB - hueReach, p, q, r);
        }
        rows.push(row);
        nears.push(nearest(row));
      }
      return known[key];
    },
    row: (cell) => rows[cell],
    near: (cell) => nears[cell],
    count: () => rows.length,
  };
}

/** Places of the least values, least first; of equal ones the first. */
function nearest(row: Float32Array): Int16Array {
  const near = new Int16Array(Math.min(nearCount, row.length));
  let count = 0;
  for (let j = 0; j < row.length; j++) {
    if (count === near.length && !(row[j] < row[near[count - 1]])) continue;
    let at = count < near.length ? count++ : count - 1;
    for (; at > 0 && row[j] < row[near[at - 1]]; at--) near[at] = near[at - 1];
    near[at] = j;
  }
  return near;
}
