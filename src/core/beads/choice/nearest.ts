import { ciede2000Fast } from '../../colour/ciede2000.js';

/**
 * Palette index of the bead nearest to L, a, b in CIEDE2000; ties go to the lower index. `palette`
 * holds L, a, b a bead; `among` limits the search. -1 when there is nothing to choose from.
 */
export function nearestBead(
  palette: Float64Array,
  L: number,
  a: number,
  b: number,
  among?: readonly number[],
): number {
  let best = -1;
  let least = Infinity;
  const count = among ? among.length : Math.floor(palette.length / 3);
  for (let k = 0; k < count; k++) {
    const j = among ? among[k] : k;
    const d = ciede2000Fast(L, a, b, palette[3 * j], palette[3 * j + 1], palette[3 * j + 2]);
    if (d < least || (d === least && j < best)) {
      best = j;
      least = d;
    }
  }
  return best;
}
