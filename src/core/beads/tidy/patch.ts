import type { Lists } from './thread.js';

/** Units of the largest patch of one bead: touching units that all have it; ties: the first. */
export function patchOf(
  { start, list }: Lists,
  beadOf: ArrayLike<number>,
  bead: number,
): readonly number[] {
  const seen = new Uint8Array(beadOf.length);
  let largest: number[] = [];
  for (let u = 0; u < beadOf.length; u++) {
    if (beadOf[u] !== bead || seen[u]) continue;
    const patch = [u];
    seen[u] = 1;
    for (let at = 0; at < patch.length; at++) {
      for (let n = start[patch[at]]; n < start[patch[at] + 1]; n++) {
        const other = list[n];
        if (beadOf[other] !== bead || seen[other]) continue;
        seen[other] = 1;
        patch.push(other);
      }
    }
    if (patch.length > largest.length) largest = patch;
  }
  return largest;
}
