import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many } = numbersIn('it');
const beads = (n: number) => many(n, { one: 'perlina', other: 'perline' });
const stitches = (n: number) => many(n, { one: 'maglia', other: 'maglie' });

export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  // M: G (giro); a bead may have the letter G, but there the number stands before it.
  round: (round) => `G${round}`,
  // Both stay the same after any number: «2 senza» (perlina), «3 indec.» (indecise).
  aside: (thing, which) => `${thing}, ${which}`,
  bare: 'senza',
  open: 'indec.',
  openLeft: (n) =>
    n === 1
      ? '1 maglia non è ancora decisa (indec.) e non rientra nel conteggio delle perline.'
      : `${stitches(n)} non sono ancora decise (indec.) e non rientrano nel conteggio delle perline.`,
};
