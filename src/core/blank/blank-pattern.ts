import { sizedShape } from '../panel/across.js';
import type { SizedWish } from '../panel/across.js';
import { layPanel } from '../panel/lay.js';
import { undecidedMark } from '../pattern/marks.js';
import type { Pattern } from '../pattern/pattern.js';
import { stitchesInRound } from '../panel/shape.js';
import type { Shape } from '../panel/shape.js';

/** Everything a blank chart is made from. */
export interface BlankWish {
  /** Title of the pattern: 1 to 200 characters. */
  title: string;
  /** Without `rounds` when `acrossMm` is given. */
  shape: SizedWish;
  /** Wished size across, millimetres: the nearest number of rounds is taken. */
  acrossMm?: number;
  /** Face angle of the start mark, degrees clockwise from 12 o'clock; chosen when undefined. */
  startDegrees?: number;
}

/**
 * A pattern in which nothing is decided yet: every stitch is open and there are no beads.
 *
 * @throws RondureError `shape-impossible`, `across-out-of-reach`, `polygon-needs-end-increase`
 */
export function blankPattern(wish: BlankWish): Pattern {
  const shape = sizedShape(wish.shape, wish.acrossMm);
  const { startDegrees } = wish;
  const geometry = layPanel(shape, startDegrees === undefined ? {} : { startDegrees }).geometry;
  return blankOfShape(wish.title, shape, geometry.startDegrees);
}

/** The same for a whole shape and its start. */
export function blankOfShape(title: string, shape: Shape, startDegrees: number): Pattern {
  const rounds = Array.from({ length: shape.rounds }, (_, index) =>
    undecidedMark.repeat(stitchesInRound(shape, index + 1)),
  );
  return {
    format: 'rondure-pattern',
    version: 1,
    title,
    shape,
    beads: [],
    panels: [{ name: 'front', startDegrees, rounds }],
  };
}
