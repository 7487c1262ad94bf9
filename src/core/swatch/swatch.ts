import type { Shape } from '../panel/shape.js';

/** A value from a measurement, and between what it lies with the precision of the ruler. */
export interface Estimate {
  /** The likeliest value. */
  value: number;
  /** The least that the precision of the measurement allows. */
  least: number;
  /** The most. */
  most: number;
}

/** How a swatch was worked; limits as in `Shape`. */
export interface SwatchWorked extends Pick<
  Shape,
  'wedges' | 'rounds' | 'increase' | 'outline' | 'construction' | 'hand' | 'beadsFace' | 'stitch'
> {}

/** The photograph that a swatch was measured on. */
export interface SwatchPhoto {
  /** Name of the file, 1 to 1000 characters. */
  file: string;
  /** Stitches and centre that were pointed at: 2 or more. */
  points: number;
  /** Whether the camera was seen to stand askew. */
  perspective: boolean;
  /** Root mean square distance of the points from the fit, pixels. */
  offPixels: number;
}

/** What the maker read off the ruler, and how finely; millimetres and degrees. */
export interface SwatchMeasured {
  /** Diameter of a bead: above 0. */
  beadMm: number;
  /** How far that diameter may be off: 0 or more. */
  beadOffMm: number;
  /** Widest place over the outer edges of beads: above 0. */
  acrossMm?: number | undefined;
  /** How many stitches of the rim were measured: above 0. */
  rimStitches?: number | undefined;
  /** Length of the rim that the rim stitches take up: above 0. */
  rimMm?: number | undefined;
  /** Turn of the marked stitch, with the work. */
  turnDegrees?: number | undefined;
  /** How far that turn may be off: 0 or more. */
  turnOffDegrees?: number | undefined;
  /** Between which rounds it was read: whole numbers, 1 to 80. */
  fromRound?: number | undefined;
  /** Up to which round it was read: a whole number, 2 to 80. */
  toRound?: number | undefined;
  /** In which wedge: a whole number, 1 to 12. */
  markedWedge?: number | undefined;
  /** Thread that some stitches took: above 0. */
  threadMm?: number | undefined;
  /** How many stitches those were: above 0. */
  threadStitches?: number | undefined;
  /** Fifty beads on the thread: above 0. */
  fiftyBeadsMm?: number | undefined;
  /** Precision of the ruler: 0 or more. */
  rulerMm: number;
  /** What was measured on a photograph. */
  photo?: SwatchPhoto | undefined;
}

/** A measured swatch: what was measured, and what follows for the stitch. */
export interface Swatch {
  /** How the swatch was worked. */
  worked: SwatchWorked;
  /** How the swatch lies on the table. */
  lies: 'flat' | 'cups' | 'ruffles';
  /** What was measured on it. */
  measured: SwatchMeasured;
  /** From round to round, millimetres: 0.1 to 50. */
  roundHeightMm?: Estimate | undefined;
  /** From stitch to stitch along a round, millimetres: 0.1 to 50. */
  stitchWidthMm?: Estimate | undefined;
  /** Stitch widths: -1 to 1. */
  lean?: Estimate | undefined;
  /** Increases a round that lie flat, not whole. */
  flatWedges?: Estimate | undefined;
  /** Thread for one stitch, millimetres: above 0, at most 800. */
  perStitchMm?: Estimate | undefined;
  /** Length of a bead along its hole, millimetres: above 0, at most 50. */
  beadLengthMm?: Estimate | undefined;
}
