import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many } = numbersIn('fr');

const beads = (n: number): string => many(n, { one: 'perle', other: 'perles' });
const stitches = (n: number): string => many(n, { one: 'maille', other: 'mailles' });

/** Numbers, counts and marks that every list shares. */
export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  round: (round) => `T${round}`,
  aside: (thing, which) => `${thing}, ${which}`,
  bare: 'nue',
  open: 'libre',
  openLeft: (n) =>
    n === 1
      ? '1 maille n’est pas encore décidée (libre) et n’est pas dans les nombres de perles.'
      : `${stitches(n)} ne sont pas encore décidées (libres) et ne sont pas dans les nombres de perles.`,
};
