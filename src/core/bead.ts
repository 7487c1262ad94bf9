import type { PatternBead } from './pattern/schema.js';

/** A bead colour as it stands in a palette: what a pattern keeps of it, and its measured colour. */
export interface Bead extends Omit<PatternBead, 'letter'> {
  /** L, a, b under D65, 2°; given by the palette or worked out from `hex`. */
  readonly lab: readonly [number, number, number];
  /** Names of the columns that were filled from the trade table, not given by the palette. */
  readonly filled: readonly ('id' | 'name' | 'size' | 'diameterMm' | 'beadsPerGram')[];
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
