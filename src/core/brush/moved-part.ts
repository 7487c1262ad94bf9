import type { Footprints } from '../panel/footprints.js';
import type { PanelGeometry } from '../panel/geometry.js';
import type { FacePoint } from './line.js';

/**
 * What a part of the panel looks like when it is moved: each stitch under it takes the bead that
 * then lies there, and the stitches that it leaves take the bead that most of what is around them
 * has, from their border inward. What would come to lie outside the rim is lost.
 *
 * @param beadOf bead of every stitch, any number
 * @param part stitches that move
 * @param by how far, millimetres on the bead face
 * @param stays whether the part stays where it was, too
 * @returns the stitches that change, with their beads
 */
export function movedPart(
  { geometry, footprints }: { geometry: PanelGeometry; footprints: Footprints },
  beadOf: ArrayLike<number>,
  part: readonly number[],
  by: FacePoint,
  stays = false,
): Map<number, number> {
  const moves = new Set(part);
  const changed = new Map<number, number>();
  const { centres, count } = geometry;
  for (let s = 0; s < count; s++) {
    const from = footprints.owner(centres[2 * s] - by.xMm, centres[2 * s + 1] - by.yMm);
    if (from >= 0 && moves.has(from)) changed.set(s, beadOf[from]);
  }
  if (!stays) {
    const left = part.filter((s) => !changed.has(s));
    for (const [s, bead] of grownOver(footprints, beadOf, left, moves)) changed.set(s, bead);
  }
  for (const [s, bead] of changed) if (bead === beadOf[s]) changed.delete(s);
  return changed;
}

/** Beads for a hole in the panel, ring by ring from what lies around it. */
function grownOver(
  footprints: Footprints,
  beadOf: ArrayLike<number>,
  hole: readonly number[],
  moves: ReadonlySet<number>,
): Map<number, number> {
  const filled = new Map<number, number>();
  let open = [...hole];
  while (open.length > 0) {
    const ring = new Map<number, number>();
    for (const s of open) {
      const around = footprints
        .neighbours(s)
        .flatMap((next) => (moves.has(next) ? (filled.get(next) ?? []) : beadOf[next]));
      if (around.length > 0) ring.set(s, commonest(around));
    }
    // Nothing lies around a part that is the whole panel.
    if (ring.size === 0) break;
    for (const [s, bead] of ring) filled.set(s, bead);
    open = open.filter((s) => !ring.has(s));
  }
  return filled;
}

/** The lower of two that are as many. */
function commonest(beads: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const bead of beads) counts.set(bead, (counts.get(bead) ?? 0) + 1);
  return [...counts].sort((one, other) => other[1] - one[1] || one[0] - other[0])[0][0];
}
