import type { Footprints } from '../panel/footprints.js';

/** The stitches of one bead that hang together with a stitch, neighbour by neighbour; ascending. */
export function patchAt(
  footprints: Pick<Footprints, 'neighbours'>,
  beadOf: ArrayLike<number>,
  s: number,
): number[] {
  const found = new Set([s]);
  // A set is walked in the order in which it grows.
  for (const at of found) {
    for (const next of footprints.neighbours(at)) {
      if (beadOf[next] === beadOf[s]) found.add(next);
    }
  }
  return [...found].sort((one, other) => one - other);
}
