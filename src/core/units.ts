/**
 * Units as types: a number that says what it measures. Each has its own symbol, so that a length
 * cannot be passed for an angle, and a small constructor that costs nothing when running.
 */
declare const millimetres: unique symbol;
declare const radians: unique symbol;
declare const roundNumber: unique symbol;
declare const stitchIndex: unique symbol;
declare const beadIndex: unique symbol;

/** A length on the panel or on paper. */
export type Millimetres = number & { readonly [millimetres]: true };
/** An angle; on the bead face counted clockwise from 12 o'clock. */
export type Radians = number & { readonly [radians]: true };
/** 1 (centre) to R (rim). */
export type RoundNumber = number & { readonly [roundNumber]: true };
/** 0-based place inside a round, in working order, counted from the start mark. */
export type StitchIndex = number & { readonly [stitchIndex]: true };
/** Row in a palette, 0-based. */
export type BeadIndex = number & { readonly [beadIndex]: true };

export const mm = (value: number): Millimetres => value as Millimetres;
export const round = (value: number): RoundNumber => value as RoundNumber;
export const stitch = (value: number): StitchIndex => value as StitchIndex;
export const bead = (value: number): BeadIndex => value as BeadIndex;

/**
 * Rounded to a millionth, and never minus zero: engines differ in the last bit of sines, cosines
 * and roots, and results must not.
 */
export const millionth = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
