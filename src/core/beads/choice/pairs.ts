import type { Problem } from './matrix.js';

/** Those pairs of a place and a bead that are near enough to matter, bead by bead. */
export interface Pairs {
  /** The pairs of bead j stand at from[j] up to from[j + 1] - 1; length P + 1. */
  readonly from: Int32Array;
  /** Place of each pair, ascending within a bead. */
  readonly place: Int32Array;
  /** CIEDE2000 of each pair. */
  readonly difference: Float32Array;
}

/** The pairs whose difference is below the place's cap; `cap` by place. */
export function nearPairs(problem: Problem, cap: Float64Array): Pairs {
  const { places: n, beads, difference } = problem;
  const from = new Int32Array(beads + 1);
  for (let j = 0; j < beads; j++) {
    let count = 0;
    const row = difference.subarray(j * n, j * n + n);
    for (let i = 0; i < n; i++) if (row[i] < cap[i]) count++;
    from[j + 1] = from[j] + count;
  }
  const place = new Int32Array(from[beads]);
  const near = new Float32Array(from[beads]);
  for (let j = 0, at = 0; j < beads; j++) {
    const row = difference.subarray(j * n, j * n + n);
    for (let i = 0; i < n; i++) {
      if (row[i] < cap[i]) {
        place[at] = i;
        near[at++] = row[i];
      }
    }
  }
  return { from, place, difference: near };
}
