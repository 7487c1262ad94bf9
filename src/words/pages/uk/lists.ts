import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many } = numbersIn('uk');

const beads = (n: number): string =>
  many(n, { one: 'бісеринка', few: 'бісеринки', many: 'бісеринок', other: 'бісеринки' });
const stitches = (n: number): string =>
  many(n, { one: 'петля', few: 'петлі', many: 'петель', other: 'петлі' });

/** Numbers, counts and marks that every list shares. */
export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  round: (round) => `Р${round}`,
  aside: (thing, which) => `${thing}, ${which}`,
  bare: 'пуст.',
  open: 'невир.',
  openLeft: (n) => `Ще не вирішено (невир.) і не враховано в кількості бісеринок: ${stitches(n)}.`,
};
