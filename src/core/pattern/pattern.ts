import type { PatternBead } from '../beads/bead.js';
import type { Choice } from '../beads/how-chosen.js';
import type { Shape } from '../panel/shape.js';
import type { Place } from '../picture/sampling/place.js';
import type { Frame } from '../purse/frame/measures.js';
import type { Swatch } from '../swatch/swatch.js';
import type { MakerWish } from './wished.js';

/** What a panel remembers of its picture. */
export interface PatternPicture {
  /** Name of the file, 1 to 1000 characters. */
  file: string;
  /** Of the upright picture as it was read, pixels. */
  width: number;
  /** Height in pixels, upright. */
  height: number;
  /** Whether mean colours were kept, or outlines. */
  art: 'photo' | 'drawing';
  /** A drawing on paper whose light was evened out; so was the thumbnail. */
  paper?: boolean | undefined;
  /** What lies outside the picture and under its transparent parts: #rrggbb, or no beads. */
  background?: string | undefined;
  /** PNG of at most 512 pixels a side, base64. */
  thumbnail: string;
  /** Where it lies on the panel. */
  place: Place;
}

/** One panel, and what its stitches carry. */
export interface Panel {
  /** Front or back in the words of the maker, 1 to 80 characters; unlike the other panel's. */
  name: string;
  /** Face angle of the start mark, degrees clockwise from 12 o'clock. */
  startDegrees: number;
  /** Absent on a panel that shows none. */
  picture?: PatternPicture | undefined;
  /**
   * `rounds[r - 1]` holds the N·r marks of round r in working order: a letter of a bead, `.` for bare
   * or `_` for undecided.
   */
  rounds: string[];
}

/** The thread and how it is strung. */
export interface Thread {
  /** Most beads on one length: a whole number, 1 or more. */
  lengthBeads?: number | undefined;
  /** Most strung beads on one length, millimetres: above 0. */
  lengthMm?: number | undefined;
  /** What it is called, 1 to 200 characters. */
  name?: string | undefined;
  /** Millimetres: above 0, at most 5. */
  diameterMm?: number | undefined;
  /** Grams of 1,000 m: above 0, at most 10,000. */
  tex?: number | undefined;
  /** Thread that one stitch takes, millimetres: above 0, at most 1000. */
  perStitchMm?: number | undefined;
  /** What one bead of the commonest size takes up on the thread, as measured, millimetres: above 0, at most 50. */
  beadLengthMm?: number | undefined;
  /** Thread to have over what is worked, per cent: 0 to 1000. */
  reservePercent?: number | undefined;
  /** What hangs out at each end of a length, millimetres: 0 to 10,000. */
  tailMm?: number | undefined;
  /** Thread on one ball or spool, millimetres: above 0, at most 100 km. */
  spoolMm?: number | undefined;
  /** Of one ball or spool, in the maker's money: 0 or more. */
  spoolPrice?: number | undefined;
  /** The hook that the maker works with, millimetres: above 0, at most 25. */
  hookMm?: number | undefined;
}

/** A whole pattern, as pattern.json holds it: one panel, or two for a purse. */
export interface Pattern {
  /** Tells the file from others. */
  format: 'rondure-pattern';
  /** Version of the format. */
  version: 1;
  /** 1 to 200 characters. */
  title: string;
  /** Of all its panels. */
  shape: Shape;
  /** Most used first, lettered in this order: 24 at most. */
  beads: PatternBead[];
  /** One or two. */
  panels: Panel[];
  /** Absent where the beads were not chosen here. */
  choice?: Choice | undefined;
  /** The trial panel that gave the stitch. */
  swatch?: Swatch | undefined;
  /** The purse frame. */
  frame?: Frame | undefined;
  /** The thread. */
  thread?: Thread | undefined;
  /** How it was asked for, where it was made from a picture. */
  wish?: MakerWish | undefined;
}
