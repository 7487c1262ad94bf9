import { hexToLab65 } from '../colour/lab.js';

/** A bead colour as it stands in a pattern; a palette's `Bead` is the same without its letter. */
export interface PatternBead {
  /** Name of the colour in this pattern, A to Z without I and O; most used first. */
  letter: string;
  /** The maker's or supplier's code, 1 to 200 characters. */
  id: string;
  /** What it is called, 1 to 200 characters. */
  name: string;
  /** sRGB as #rrggbb, in small letters. */
  hex: string;
  /** L, a, b under D65, 2°, as measured; absent where it says no more than `hex`. */
  lab?: readonly [number, number, number] | undefined;
  /** The surface in the palette's own words, at most 80 characters. */
  finish?: string | undefined;
  /** Trade size, for instance 11/0. */
  size?: string | undefined;
  /** Across the hole, millimetres: above 0. */
  diameterMm?: number | undefined;
  /** How many weigh a gram: above 0. */
  beadsPerGram?: number | undefined;
  /** In stock, grams: 0 or more. */
  grams?: number | undefined;
  /** In stock, counted: 0 or more; goes before `grams`. */
  count?: number | undefined;
  /** Of one packet, in the maker's money: 0 or more. */
  price?: number | undefined;
  /** What one packet holds, grams: above 0. */
  packGrams?: number | undefined;
  /** A sample colour of the palettes that come with the program: its id is no shop's. */
  sample?: true | undefined;
}

/** A bead colour as it stands in a palette: what a pattern keeps of it, and its measured colour. */
export interface Bead extends Omit<PatternBead, 'letter' | 'lab'> {
  /** L, a, b under D65, 2°; given by the palette or worked out from `hex`. */
  readonly lab: readonly [number, number, number];
  /** Names of the columns that were filled from the trade table, not given by the palette. */
  readonly filled: readonly ('id' | 'name' | 'size' | 'diameterMm' | 'beadsPerGram')[];
}

/** L, a, b of a bead of a palette or of a pattern: as measured, else as its hex has them. */
export function labOf(bead: Pick<PatternBead, 'lab' | 'hex'>): readonly [number, number, number] {
  return bead.lab ?? hexToLab65(bead.hex);
}

/** A bead of a palette as a pattern keeps it; its Lab where that says more than its hex. */
export function plainBead(bead: Bead): Omit<PatternBead, 'letter'> {
  const { lab, filled: _filled, ...kept } = bead;
  const shown = hexToLab65(bead.hex);
  return lab.every((value, n) => Math.abs(value - shown[n]) < 1e-5) ? kept : { ...kept, lab };
}

/** Bead of a stitch that carries none. */
export const bare = -1;
/** Bead of a stitch that is not decided yet. */
export const undecided = -2;

/**
 * Which bead each stitch carries, in working order: an index into a list of beads, or `bare`, or
 * `undecided`; length N·R(R+1)/2.
 */
export type BeadOfStitch = Int16Array;
