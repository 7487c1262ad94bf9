import { ciede2000 } from '../colour/ciede2000.js';
import { labOf } from './bead.js';
import type { PatternBead } from './bead.js';

type Coloured = Pick<PatternBead, 'lab' | 'hex'>;

/** The beads that look most like one (CIEDE2000), the nearest first. */
export function nearestBeads<B extends Coloured>(
  to: Coloured,
  among: readonly B[],
  most: number,
): B[] {
  const lab = labOf(to);
  return among
    .map((bead) => ({ bead, far: ciede2000(...lab, ...labOf(bead)) }))
    .sort((one, other) => one.far - other.far)
    .slice(0, most)
    .map(({ bead }) => bead);
}
