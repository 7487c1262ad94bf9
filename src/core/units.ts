/** A length is told from other numbers by its type: its own symbol, and a constructor that costs nothing. */
declare const millimetres: unique symbol;

/** A length on the panel or on paper. */
export type Millimetres = number & { readonly [millimetres]: true };

export const mm = (value: number): Millimetres => value as Millimetres;

/**
 * Rounded to a millionth, and never minus zero: engines differ in the last bit of sines, cosines
 * and roots, and results must not.
 */
export const millionth = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
