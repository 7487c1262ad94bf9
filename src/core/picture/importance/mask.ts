import { linearToLab65 } from '../../colour/lab.js';
import { RondureError } from '../../errors.js';
import type { Lay } from '../../panel/lay.js';
import type { Place } from '../sampling/place.js';
import type { Picture } from '../picture.js';
import { sampleStitches } from '../sampling/sample-stitches.js';

/** A picture laid like the main picture: white where it matters most, black where nothing is said. */
export interface Mask {
  /** White matters most; black says nothing. */
  readonly picture: Picture;
  /** File name for messages. */
  readonly name: string;
}

/** How much the sides may differ in proportion; a pixel is always allowed. */
const proportionWithin = 0.01;

/** @throws RondureError `mask-shape-differs` */
export function refuseOtherShape(
  { picture: { width, height }, name }: Mask,
  main: { width: number; height: number },
): void {
  const wanted = (width * main.height) / main.width;
  if (Math.abs(height - wanted) <= Math.max(1, proportionWithin * wanted)) return;
  throw new RondureError('mask-shape-differs', {
    name,
    mask: { width, height },
    picture: { width: main.width, height: main.height },
  });
}

/**
 * How white the mask is under each stitch, by lightness (L* / 100) of the mean over its footprint.
 * Outside the mask and under its transparent parts it counts as black.
 *
 * @param main the picture that the mask belongs to; the mask may have more or fewer pixels
 * @param place of the main picture
 * @returns 0 to 1 for each stitch
 * @throws RondureError `mask-shape-differs`
 */
export function maskOfStitches(
  { picture, name }: Mask,
  main: { width: number; height: number },
  { lay, place }: { lay: Lay; place: Place },
): Float64Array {
  refuseOtherShape({ picture, name }, main);
  const laid = { picture, uprightWidth: main.width, place };
  const { linear } = sampleStitches(lay, laid, { art: 'photo', background: '#000000' });
  return Float64Array.from({ length: lay.geometry.count }, (_, s) => {
    const [L] = linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2]);
    return Math.min(1, Math.max(0, L / 100));
  });
}

/** Whether a mask says nothing, since all stitches got the same from it. */
export function saysNothing(mask: Float64Array): boolean {
  let [least, most] = [1, 0];
  for (const white of mask) {
    least = Math.min(least, white);
    most = Math.max(most, white);
  }
  return most - least < 0.05;
}
