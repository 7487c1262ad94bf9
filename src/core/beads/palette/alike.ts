import type { Bead } from '../bead.js';
import { ciede2000Fast } from '../../colour/ciede2000.js';

/** Two beads of a list that are hard to tell apart. */
export interface NearPair {
  /** Places in the list, the lower first. */
  readonly pair: readonly [number, number];
  /** CIEDE2000. */
  readonly difference: number;
}

/** Beads under this CIEDE2000 are hard to tell apart on a panel. */
export const nearLimit = 2;
const mostPairs = 10_000;

/**
 * Pairs of beads nearer than `nearLimit`, nearest first; colours that are the same are left to
 * `sameColours`. At most 10,000 pairs.
 */
export function nearPairs(beads: readonly Pick<Bead, 'lab'>[]): NearPair[] {
  const order = [...beads.keys()].sort((a, b) => beads[a].lab[0] - beads[b].lab[0] || a - b);
  const found: NearPair[] = [];
  for (let n = 0; n < order.length; n++) {
    const one = beads[order[n]].lab;
    for (let m = n + 1; m < order.length; m++) {
      const other = beads[order[m]].lab;
      // CIEDE2000 divides a step of L by at most 1.75 (its S_L): farther in L is farther in all.
      if (other[0] - one[0] > 1.75 * nearLimit) break;
      const difference = ciede2000Fast(...one, ...other);
      if (difference === 0 || difference >= nearLimit) continue;
      const [low, high] = order[n] < order[m] ? [order[n], order[m]] : [order[m], order[n]];
      found.push({ pair: [low, high], difference });
      if (found.length >= mostPairs) n = m = order.length;
    }
  }
  return found.sort(
    (p, q) => p.difference - q.difference || p.pair[0] - q.pair[0] || p.pair[1] - q.pair[1],
  );
}

/** Places of beads that share a value, in groups of two and more, in the order of the list. */
function groups(beads: readonly Bead[], valueOf: (bead: Bead) => string): number[][] {
  const places = new Map<string, number[]>();
  beads.forEach((bead, place) => {
    const value = valueOf(bead);
    const group = places.get(value);
    if (group) group.push(place);
    else places.set(value, [place]);
  });
  return [...places.values()].filter((group) => group.length > 1);
}

/** Groups of beads with exactly the same colour. */
export function sameColours(beads: readonly Bead[]): number[][] {
  return groups(beads, ({ lab }) => lab.join(' '));
}

/** Groups of beads with the same given name and size; capitals do not count. */
export function sameNames(beads: readonly Bead[]): number[][] {
  return groups(beads, ({ id, name, size, filled }) =>
    filled.includes('name') ? `id ${id}` : `name ${name.toLowerCase()} ${size}`,
  );
}
