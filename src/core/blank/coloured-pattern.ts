import type { BeadOfStitch } from '../beads/bead.js';
import { letterBeads, roundStrings } from '../beads/lettering.js';
import { RondureError } from '../errors.js';
import { layPanel } from '../panel/lay.js';
import { letters } from '../pattern/marks.js';
import type { Pattern } from '../pattern/pattern.js';
import type { ReadingWish } from './reading-wish.js';

/**
 * The pattern of a blank whose cells are decided, with its letters.
 *
 * @param beadOf palette indices, `bare` or `undecided`
 * @throws RondureError `no-letter-free`
 */
export function colouredPattern(
  { blank, title, beads }: Pick<ReadingWish, 'blank' | 'title' | 'beads'>,
  beadOf: BeadOfStitch,
): { pattern: Pattern; lettered: ReturnType<typeof letterBeads> } {
  const { startDegrees, name } = blank.panels[0];
  const { geometry } = layPanel(blank.shape, { startDegrees });
  const lettered = letterBeads(beads, beadOf);
  if (lettered.order.length > letters.length) {
    throw new RondureError('no-letter-free', { most: letters.length });
  }
  const pattern: Pattern = {
    format: 'rondure-pattern',
    version: 1,
    title,
    shape: blank.shape,
    beads: lettered.beads,
    panels: [{ name, startDegrees, rounds: roundStrings(geometry, lettered.letterOf) }],
    ...(blank.swatch && { swatch: blank.swatch }),
    ...(blank.thread && { thread: blank.thread }),
  };
  return { pattern, lettered };
}
