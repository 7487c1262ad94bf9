import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many } = numbersIn('de');

const beads = (n: number): string => many(n, { one: 'Perle', other: 'Perlen' });
const stitches = (n: number): string => many(n, { one: 'Masche', other: 'Maschen' });

/** Numbers, counts and marks that every list shares. */
export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  round: (round) => `Rd ${round}`,
  aside: (thing, which) => `${thing}, ${which}`,
  bare: 'leer',
  open: 'offen',
  openLeft: (n) =>
    n === 1
      ? '1 Masche ist noch nicht festgelegt (offen) und in den Perlenzahlen nicht enthalten.'
      : `${stitches(n)} sind noch nicht festgelegt (offen) und in den Perlenzahlen nicht enthalten.`,
};
