/** A panel of one bead only: no picture to choose for, but its beads come out of the same jar. */
export interface PlainPanel {
  /** Palette index. */
  readonly bead: number;
  readonly stitches: number;
}
