import { directionOf, stitchesInRound } from './shape.js';
import type { Shape } from './shape.js';
import { millionth } from '../units.js';
import { turnsInWedges } from './turn.js';

/**
 * Where two panels of one shape meet when they are laid back to back, beads outside and both
 * upright. Whoever looks at the front sees the back from behind: its face angles the other way
 * round. Both are worked by the same hand, so that the rims are counted in opposite directions.
 */

/** Face angle at which the last round begins, degrees clockwise from 12 o'clock. */
export function rimStartDegrees(shape: Shape, startDegrees: number): number {
  const turn = turnsInWedges(shape)[shape.rounds];
  return startDegrees + (directionOf(shape) * turn * 360) / shape.wedges;
}

/**
 * The start of a front panel whose last round begins at 12 o'clock. A back panel that starts there
 * too meets it stitch by stitch, and the same picture gives both the same rounds. A spiral's step
 * then lies within half a stitch of where `defaultStartDegrees` puts it for a single panel.
 */
export function pairStartDegrees(shape: Shape): number {
  return millionth(-rimStartDegrees(shape, 0));
}

/**
 * The start of a back panel, so that stitch i of the front's last round lies over stitch N·R-1-i
 * of its own: its last round begins at the mirrored angle.
 */
export function backStartDegrees(shape: Shape, frontStartDegrees: number): number {
  const start = -rimStartDegrees(shape, frontStartDegrees) - rimStartDegrees(shape, 0);
  return millionth(start);
}

/** The stitch of the back's last round that lies under stitch i of the front's; both from 0. */
export function meetingStitch(
  shape: Shape,
  starts: { front: number; back: number },
  i: number,
): number {
  const inRim = stitchesInRound(shape, shape.rounds);
  const apart = rimStartDegrees(shape, starts.front) + rimStartDegrees(shape, starts.back);
  const shift = Math.round((-directionOf(shape) * apart * inRim) / 360 - 1e-6);
  return (((shift - 1 - i) % inRim) + inRim) % inRim;
}
