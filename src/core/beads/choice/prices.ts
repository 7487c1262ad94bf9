import type { Problem } from './matrix.js';

/** Half way between nearest and second nearest open bead of each place; caps a little farther. */
export function startPrices(
  problem: Problem,
  open: readonly number[],
): { price: Float64Array; cap: Float64Array } {
  const { places: n, difference } = problem;
  const price = new Float64Array(n);
  const cap = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let nearest = Infinity;
    let next = Infinity;
    for (const j of open) {
      const d = difference[j * n + i];
      if (d < nearest) {
        next = nearest;
        nearest = d;
      } else if (d < next) next = d;
    }
    if (next === Infinity) next = 2 * nearest + 10;
    price[i] = (nearest + next) / 2;
    cap[i] = 1.25 * next + 1;
  }
  return { price, cap };
}
