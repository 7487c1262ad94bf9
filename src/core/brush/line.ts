import type { Footprints } from '../panel/footprints.js';

/** A place on the bead face, millimetres, x right and y down. */
export interface FacePoint {
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * The stitches that a straight line runs through, each once, from its start to its end.
 *
 * @param stepMm how far apart it is looked; a third of a stitch misses none that an eye would name
 */
export function stitchesOnLine(
  footprints: Pick<Footprints, 'owner'>,
  from: FacePoint,
  to: FacePoint,
  stepMm: number,
): number[] {
  const long = Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm);
  const steps = Math.max(1, Math.ceil(long / stepMm));
  const found = new Set<number>();
  for (let n = 0; n <= steps; n++) {
    const share = n / steps;
    const s = footprints.owner(
      from.xMm + share * (to.xMm - from.xMm),
      from.yMm + share * (to.yMm - from.yMm),
    );
    if (s >= 0) found.add(s);
  }
  return [...found];
}

/** Stitches whose middle lies inside a loop drawn by hand, which closes by itself (even-odd rule). */
export function stitchesInLoop(centres: Float64Array, loop: readonly FacePoint[]): number[] {
  const inside: number[] = [];
  for (let s = 0; s < centres.length / 2; s++) {
    const { [2 * s]: x, [2 * s + 1]: y } = centres;
    let odd = false;
    for (let p = 0, q = loop.length - 1; p < loop.length; q = p++) {
      const { xMm: px, yMm: py } = loop[p];
      const { xMm: qx, yMm: qy } = loop[q];
      if (py > y !== qy > y && x < px + ((y - py) * (qx - px)) / (qy - py)) odd = !odd;
    }
    if (odd) inside.push(s);
  }
  return inside;
}
