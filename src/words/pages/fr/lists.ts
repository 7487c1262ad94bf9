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
  open: 'à choisir',
  openLeft: (n) =>
    n === 1
      ? 'Pour 1 maille, la perle n’est pas encore choisie (à choisir) ; elle n’est pas dans les nombres de perles.'
      : `Pour ${stitches(n)}, la perle n’est pas encore choisie (à choisir) ; elles ne sont pas dans les nombres de perles.`,
};
