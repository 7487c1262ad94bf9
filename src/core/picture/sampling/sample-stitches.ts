import { parseHex } from '../../colour/hex.js';
import type { Lay } from '../../panel/lay.js';
import type { Place } from './place.js';
import type { Picture } from '../picture.js';
import { drain } from '../../steps.js';
import type { Steps } from '../../steps.js';
import { samplingPanel } from './sample.js';
import type { StitchColours } from './sample.js';

/** A picture as it is sampled: the upright one, or a copy of it with more or fewer pixels. */
export interface LaidPicture {
  /** Its pixels. */
  readonly picture: Picture;
  /** Pixels across of the upright picture, to which the place belongs. */
  readonly uprightWidth: number;
  /** Where the upright one lies on the panel. */
  readonly place: Place;
}

/** How a picture is taken: what of a wish has a say in the colours of stitches. */
export interface SampleHow {
  /** `photo` takes the mean under a stitch, `drawing` the colour that wins it. */
  readonly art: 'photo' | 'drawing';
  /** A drawing on paper, evened out. */
  readonly paper?: boolean | undefined;
  /** See `PanelWish`. */
  readonly darkCover?: number | undefined;
  /** `#rrggbb`, or `bare`. */
  readonly background: string;
  /** See `samplePanel`. */
  readonly sparing?: boolean;
  /** See `samplePanel`. */
  readonly quick?: boolean;
}

/**
 * The colour of every stitch of a panel under a picture. The one way of taking them: for the
 * pattern, for what it would be without lean, and for a mask.
 */
export function sampleStitches(
  lay: Pick<Lay, 'geometry' | 'footprints'>,
  laid: LaidPicture,
  how: SampleHow,
): StitchColours {
  return drain(samplingStitches(lay, laid, how));
}

/** The same in steps. */
export function samplingStitches(
  { geometry, footprints }: Pick<Lay, 'geometry' | 'footprints'>,
  { picture, uprightWidth, place }: LaidPicture,
  { art, paper, darkCover, background, sparing, quick }: SampleHow,
): Steps<StitchColours> {
  return samplingPanel({
    picture,
    geometry,
    footprints,
    place: { ...place, mmPerPixel: (place.mmPerPixel * uprightWidth) / picture.width },
    art,
    ...(paper && { paper }),
    ...(sparing && { sparing }),
    ...(quick && { quick }),
    ...(darkCover !== undefined && { darkCover }),
    background: background === 'bare' ? 'bare' : parseHex(background)!,
  });
}
