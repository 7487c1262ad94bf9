import type { Frame } from '../../purse/frame/measures.js';
import type { Shape } from '../../panel/shape.js';
import type { Fonts } from '../surface/font.js';
import type { Pen, Tints } from './pen.js';

/**
 * How the stitch is worked: single crochet under both loops, or under the loop on the beads' side
 * alone; or slip stitch, under the thread that holds the bead below.
 */
export type StitchWay = NonNullable<Shape['stitch']>;

/** What drawings of the handwork depend on. */
export interface HandFacts {
  readonly shape: Shape;
  readonly stitch: StitchWay;
  /** Where the rims of front and back begin, degrees; both the same where there is one panel. */
  readonly starts: { readonly front: number; readonly back: number };
  readonly frame?: Frame | undefined;
  /** Names of the panels, as they stand beside the numbers of their stitches. */
  readonly names: { readonly front: string; readonly back: string };
  readonly fonts: Fonts;
  readonly tints: Tints;
}

export type HandName =
  | 'ring'
  | 'bead-side'
  | 'stitch'
  | 'slip-stitch'
  | 'increase'
  | 'marker'
  | 'round-run'
  | 'round-end'
  | 'new-length'
  | 'last-stitches'
  | 'seam'
  | 'seam-stitch'
  | 'frame'
  | 'frame-edge'
  | 'lining'
  | 'braid';

/** One drawing in one or more pictures, each a step; all of the same size. */
export interface HandDrawing {
  readonly name: HandName;
  /** Of one picture. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** A drawing of the purse itself: it is the same for both hands as far as the purse is. */
  readonly ofPurse?: true;
  /** Whether a pattern has use for it. */
  applies(facts: HandFacts): boolean;
  /** Draws each picture, as the right hand does it; the pen mirrors it for the left. */
  readonly frames: readonly ((pen: Pen, facts: HandFacts) => void)[];
}

/** Three of them stand side by side on a page. */
export const smallFrame = { widthMm: 52, heightMm: 44 } as const;
/** Two of them stand side by side. */
export const largeFrame = { widthMm: 82, heightMm: 82 } as const;
