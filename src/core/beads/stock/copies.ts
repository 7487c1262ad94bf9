import { stitchesBefore } from '../../panel/shape.js';
import type { Shape } from '../../panel/shape.js';

/**
 * For each beaded stitch of a repeat the stitch of the first wedge that it repeats, as places in
 * the list of beaded stitches. All wedges carry beads in the same places.
 *
 * @param beaded stitches that carry a bead, in working order
 */
export function copiesInWedges(shape: Shape, beaded: readonly number[]): Int32Array {
  const at = new Map(beaded.map((s, n) => [s, n]));
  const copyOf = new Int32Array(beaded.length);
  for (let r = 1; r <= shape.rounds; r++) {
    const first = stitchesBefore(shape, r);
    for (let i = 0; i < shape.wedges * r; i++) {
      const n = at.get(first + i);
      if (n !== undefined) copyOf[n] = at.get(first + (i % r)) as number;
    }
  }
  return copyOf;
}
