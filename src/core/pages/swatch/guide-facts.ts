import type { Words } from '../../../words/index.js';
import type { Shape } from '../../panel/shape.js';
import type { Fonts } from '../surface/font.js';

/** What the guide to a swatch is drawn from. */
export interface SwatchGuide {
  /** The swatch as it is to be worked; its rounds are drawn on the gauge. */
  readonly shape: Shape;
  /** Size of the beads, as it is called. */
  readonly size: string;
  /** The rounds between which the turn is to be measured. */
  readonly fromRound: number;
  /** Round up to which the turn is measured. */
  readonly toRound: number;
  /** Wedge, from 1, whose first stitches are marked. */
  readonly markedWedge: number;
  /** Words of its language. */
  readonly words: Words;
  /** Fonts that its texts are set in. */
  readonly fonts: Fonts;
}
