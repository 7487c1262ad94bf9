import type { BeadWish } from './beads/decide-beads.js';
import type { Frame } from './purse/frame/measures.js';
import type { SizedWish } from './panel/across.js';
import type { Mask } from './picture/importance/mask.js';
import type { Picture } from './picture/picture.js';
import type { PlaceWish } from './picture/sampling/place.js';

/** Everything a pattern is made from: one panel, or two with `back`. */
export interface PanelWish extends BeadWish {
  /** The picture, upright. */
  picture: Picture;
  /** File name kept in the pattern. */
  pictureName: string;
  /** 1 to 200 characters. */
  title: string;
  /** Without `rounds` when `acrossMm` is given. */
  shape: SizedWish;
  /** Wished size across, millimetres: the nearest number of rounds is taken. */
  acrossMm?: number;
  /** The purse frame: gives `rounds` where neither they nor `acrossMm` are given, and bares its rim. */
  frame?: Frame;
  /** Face angle of the start mark, clockwise from 12 o’clock; the rim's step at the top when absent. */
  startDegrees?: number;
  /** How the picture lies on the panel. */
  place: PlaceWish;
  /** How the back's picture lies, where that is another way. */
  backPlace?: PlaceWish;
  /** `photo` keeps mean colours, `drawing` keeps outlines, `auto` decides. */
  art: 'auto' | 'photo' | 'drawing';
  /** The picture shows a drawing on paper: its light is evened out, its lines are strengthened. */
  paper?: boolean;
  /** What matters most, painted white on a picture laid like the main one; for its panel only. */
  mask?: Mask;
  /**
   * What is cut out of its ground before anything else: `plain` finds it on a ground of one colour;
   * a mask has it painted white, for its panel only. Its ground is then `background`.
   */
  subject?: 'plain' | Mask;
  /** A second panel, sewn to the first: same shape, same hand, same beads, upright as well. */
  back?: BackWish;
  /** Share that a clearly darker colour must cover to win a stitch of a drawing, 0 to 1. */
  darkCover?: number;
  /** How far a picture of little contrast is stretched onto what the beads show, 0 to 1 (see tone/); not at all when absent. */
  lift?: number;
}

/** What a second panel shows: the same picture, one bead all over (a palette index), or its own picture. */
export type BackWish = 'same' | { plain: number } | { picture: Picture; pictureName: string };
