import { solve } from '../../../equations.js';

/**
 * Coefficients of the weighted least squares fit of `value` by `terms`, from the normal equations
 * with a trace of damping, so that terms that nothing tells apart stay small.
 *
 * @param rows one entry a sample: its terms (all of one length) and its value
 */
export function leastSquares(
  rows: readonly { readonly terms: readonly number[]; readonly value: number }[],
): number[] {
  const n = rows[0]?.terms.length ?? 0;
  const matrix = Array.from({ length: n }, () => new Array<number>(n + 1).fill(0));
  for (const { terms, value } of rows) {
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) matrix[i][j] += terms[i] * terms[j];
      matrix[i][n] += terms[i] * value;
    }
  }
  for (let i = 0; i < n; i++) matrix[i][i] += 1e-9 * (matrix[i][i] + rows.length);
  return Array.from(solve(matrix) ?? new Float64Array(n));
}
