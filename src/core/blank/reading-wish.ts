import type { Bead } from '../beads/bead.js';
import type { Pattern } from '../pattern/pattern.js';
import type { Picture } from '../picture/picture.js';

/** Everything a coloured blank chart is read with. */
export interface ReadingWish {
  /** The photograph of the coloured page. */
  picture: Picture;
  /** How to name the picture in an error. */
  pictureName: string;
  /** The blank chart's pattern: its shape and start count, not what its stitches carry. */
  blank: Pattern;
  /** Title of the pattern: 1 to 200 characters. */
  title: string;
  /** Beads to choose from. */
  beads: readonly Bead[];
  /** Most colours, 1 to 24. */
  colours: number;
  /** What uncoloured cells become: a palette index, `bare`, or `undecided`. */
  unpainted: number;
}
