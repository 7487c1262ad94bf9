import { ciede2000Fast } from '../../colour/ciede2000.js';

/** Side of a cell of Lab space. Half its diagonal is 1.7, far below what parts two beads. */
const side = 2;
/** Lab of sRGB and of what lies a little beyond: L 0..100, a and b within ±130. */
const [lightCells, hueCells, hueReach] = [52, 132, 132];

/** How many beads of a cell are known in their order. */
const nearCount = 16;

/** Lab space in cells, and how far each bead of a palette is from the middle of a cell. */
export interface LabCells {
  /** How many beads the palette has. */
  readonly beads: number;
  /** How many beads of a cell are known in their order. */
  readonly near: number;
  /** Number of the cell that a colour lies in; cells are numbered as they are first asked for. */
  cellOf(L: number, a: number, b: number): number;
  /** What is known of all cells; worked out once for each and kept, the arrays grow with them. */
  known(): KnownCells;
}

/** The cells that were asked for. */
export interface KnownCells {
  readonly count: number;
  /** CIEDE2000 from the middle of cell c to each bead, from c·beads on. */
  readonly rows: Float32Array;
  /** The nearest beads to the middle of cell c, nearest first, from c·near on … */
  readonly nearBead: Int16Array;
  /** … and how far they are. */
  readonly nearApart: Float32Array;
}

/** @param palette L, a, b of each bead; length 3·P */
export function labCells(palette: Float64Array): LabCells {
  const beads = palette.length / 3;
  const near = Math.min(nearCount, beads);
  const numberOf = new Int32Array(lightCells * hueCells * hueCells).fill(-1);
  let count = 0;
  let rows = new Float32Array(256 * beads);
  let nearBead = new Int16Array(256 * near);
  let nearApart = new Float32Array(256 * near);
  const within = (value: number, most: number): number =>
    value < 0 ? 0 : value >= most ? most - 1 : Math.floor(value);

  function grow(): void {
    const [allRows, allBeads, allApart] = [rows, nearBead, nearApart];
    rows = new Float32Array(2 * allRows.length);
    nearBead = new Int16Array(2 * allBeads.length);
    nearApart = new Float32Array(2 * allApart.length);
    rows.set(allRows);
    nearBead.set(allBeads);
    nearApart.set(allApart);
  }

  /** Puts down the least values of a row, least first; of equal ones the first. */
  function rank(cell: number): void {
    const [row, first] = [cell * beads, cell * near];
    let ranked = 0;
    for (let j = 0; j < beads; j++) {
      const apart = rows[row + j];
      if (ranked === near && !(apart < nearApart[first + near - 1])) continue;
      let at = first + (ranked < near ? ranked++ : ranked - 1);
      for (; at > first && apart < nearApart[at - 1]; at--) {
        nearApart[at] = nearApart[at - 1];
        nearBead[at] = nearBead[at - 1];
      }
      nearApart[at] = apart;
      nearBead[at] = j;
    }
  }

  return {
    beads,
    near,
    cellOf(L, a, b) {
      const l = within(L / side, lightCells);
      const u = within((a + hueReach) / side, hueCells);
      const v = within((b + hueReach) / side, hueCells);
      const key = (l * hueCells + u) * hueCells + v;
      if (numberOf[key] < 0) {
        const cell = count++;
        numberOf[key] = cell;
        if (count * beads > rows.length) grow();
        const [midL, midA, midB] = [l, u, v].map((at) => (at + 0.5) * side);
        for (let j = 0; j < beads; j++) {
          const [p, q, r] = [palette[3 * j], palette[3 * j + 1], palette[3 * j + 2]];
          const apart = ciede2000Fast(midL, midA - hueReach, midB - hueReach, p, q, r);
          rows[cell * beads + j] = apart;
        }
        rank(cell);
      }
      return numberOf[key];
    },
    known: () => ({ count, rows, nearBead, nearApart }),
  };
}
