import type { Ring } from './rings.js';

/** Rings one after another in one array. */
export interface RingList {
  /** x, y of every corner. */
  readonly corners: Float64Array;
  /** Where each ring begins in `corners`, and last where all end; length rings + 1. */
  readonly from: Int32Array;
}

/** Rings put one after another. */
export function ringList(rings: readonly Ring[]): RingList {
  const from = new Int32Array(rings.length + 1);
  rings.forEach((ring, n) => (from[n + 1] = from[n] + ring.length));
  const corners = new Float64Array(from[rings.length]);
  rings.forEach((ring, n) => corners.set(ring, from[n]));
  return { corners, from };
}
