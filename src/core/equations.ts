/**
 * Solves n equations in n unknowns, each a row of n factors and a right side, by Gauss-Jordan
 * elimination with pivots; the rows are used up.
 *
 * @returns undefined where the equations do not settle the unknowns
 */
export function solve(rows: number[][]): Float64Array | undefined {
  const n = rows.length;
  for (let c = 0; c < n; c++) {
    let pivot = c;
    for (let r = c + 1; r < n; r++) {
      if (Math.abs(rows[r][c]) > Math.abs(rows[pivot][c])) pivot = r;
    }
    if (!(Math.abs(rows[pivot][c]) > 1e-12)) return undefined;
    [rows[c], rows[pivot]] = [rows[pivot], rows[c]];
    for (let r = 0; r < n; r++) {
      if (r === c) continue;
      const factor = rows[r][c] / rows[c][c];
      if (factor === 0) continue;
      for (let k = c; k <= n; k++) rows[r][k] -= factor * rows[c][k];
    }
  }
  return Float64Array.from(rows, (row, r) => row[n] / row[r]);
}
