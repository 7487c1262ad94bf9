import type { Steps } from '../../steps.js';
import type { Problem } from './matrix.js';

/** Candidates whose saving is worked out in one step. */
const beadsAStep = 32;

/**
 * Opens one candidate after another, each time the one that saves most (ties: the first), until
 * `most` are open or nothing more is saved. Lazy: a saving can only shrink as more are open, so an
 * old figure is an upper bound and most need not be worked out again.
 * Returns candidate indices in the order of opening, the kept ones first.
 */
export function* greedy(problem: Problem): Steps<number[]> {
  const { places: n, beads, difference, weight, most, kept } = problem;
  let farthest = 0;
  for (const value of difference) if (value > farthest) farthest = value;
  yield { stage: 'beads' };
  const nearest = new Float32Array(n).fill(farthest + 1);
  const open: number[] = [];

  const rowOf = (j: number): Float32Array => difference.subarray(j * n, j * n + n);
  const openOne = (j: number): void => {
    open.push(j);
    const row = rowOf(j);
    for (let i = 0; i < n; i++) if (row[i] < nearest[i]) nearest[i] = row[i];
  };

  for (let j = 0; j < kept; j++) openOne(j);
  const atMost = new Float64Array(beads).fill(Infinity);
  for (let j = 0; j < kept; j++) atMost[j] = 0;
  while (open.length < most) {
    let best = -1;
    let bestSaving = 0;
    const order = Array.from(atMost.keys()).sort((p, q) => atMost[q] - atMost[p] || p - q);
    for (const [k, j] of order.entries()) {
      if (k % beadsAStep === beadsAStep - 1) yield { stage: 'beads' };
      if (atMost[j] < bestSaving || atMost[j] === 0) break;
      atMost[j] = saving(rowOf(j), nearest, weight);
      if (atMost[j] > bestSaving || (atMost[j] === bestSaving && j < best)) {
        best = j;
        bestSaving = atMost[j];
      }
    }
    if (best < 0) break;
    openOne(best);
    atMost[best] = 0;
    yield { stage: 'beads' };
  }
  return open;
}

/** What opening a bead saves over the nearest open one; all arrays by place. */
function saving(row: Float32Array, nearest: Float32Array, weight: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < row.length; i++) {
    const less = nearest[i] - row[i];
    if (less > 0) sum += weight[i] * less;
  }
  return sum;
}
