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
  readonly toRound: number;
  readonly markedWedge: number;
  readonly words: Words;
  readonly fonts: Fonts;
}
