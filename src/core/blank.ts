import { acrossMm, roundsForAcross } from './geometry/edge.js';
import { panelGeometry } from './geometry/panel.js';
import { RondureError } from './errors.js';
import { undecidedMark } from './pattern/schema.js';
import type { Pattern } from './pattern/schema.js';
import { completeShape, stitchesInRound } from './shape.js';
import type { ShapeWish } from './shape.js';

/** Everything a blank chart is made from. */
export interface BlankWish {
  title: string;
  /** Without `rounds` when `acrossMm` is given. */
  shape: Omit<ShapeWish, 'rounds'> & { rounds?: number };
  /** Wished size across, millimetres: the nearest number of rounds is taken. */
  acrossMm?: number;
  startDegrees?: number;
}

/**
 * A pattern in which nothing is decided yet: every stitch is open and there are no beads.
 *
 * @throws RondureError `shape-impossible`, `across-out-of-reach`, `polygon-needs-end-increase`
 */
export function blankPattern(wish: BlankWish): Pattern {
  const first = completeShape({ ...wish.shape, rounds: wish.shape.rounds ?? 20 });
  const wishMm = wish.acrossMm;
  const rounds = wishMm === undefined ? first.rounds : roundsForAcross(first, wishMm);
  const shape = { ...first, rounds };
  if (wishMm !== undefined) {
    const roundMm = acrossMm({ ...first, rounds: 3 }) - acrossMm({ ...first, rounds: 2 });
    if (Math.abs(acrossMm(shape) - wishMm) > roundMm) {
      throw new RondureError('across-out-of-reach', {
        gotMm: wishMm,
        leastMm: acrossMm({ ...first, rounds: 2 }),
        mostMm: acrossMm({ ...first, rounds: 80 }),
      });
    }
  }
  const { startDegrees } = wish;
  const geometry = panelGeometry(shape, startDegrees === undefined ? {} : { startDegrees });
  return {
    format: 'rondure-pattern',
    version: 1,
    title: wish.title,
    shape,
    beads: [],
    panels: [
      {
        name: 'front',
        startDegrees: geometry.startDegrees,
        rounds: Array.from({ length: rounds }, (_, index) =>
          undecidedMark.repeat(stitchesInRound(shape, index + 1)),
        ),
      },
    ],
  };
}
