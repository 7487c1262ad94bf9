import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many } = numbersIn('pl');

const beads = (n: number): string =>
  many(n, { one: 'koralik', few: 'koraliki', many: 'koralików', other: 'koralika' });
const stitches = (n: number): string =>
  many(n, { one: 'oczko', few: 'oczka', many: 'oczek', other: 'oczka' });

/** Numbers, counts and marks that every list shares. */
export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  // M: O for okrążenie, where a pattern with more room has okr.
  round: (round) => `Okr. ${round}`,
  aside: (thing, which) => `${thing}, ${which}`,
  bare: 'puste',
  open: 'otwarte',
  openLeft: (n) =>
    `Jeszcze nieustalone (otwarte), niewliczone do liczby koralików: ${stitches(n)}.`,
};
