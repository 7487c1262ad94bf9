import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many } = numbersIn('ru');

const beads = (n: number): string =>
  many(n, { one: 'бисерина', few: 'бисерины', many: 'бисерин', other: 'бисерины' });
const stitches = (n: number): string =>
  many(n, { one: 'петля', few: 'петли', many: 'петель', other: 'петли' });

/** Numbers, counts and marks that every list shares. */
export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  round: (round) => `Р${round}`,
  aside: (thing, which) => `${thing}, ${which}`,
  bare: 'пуст.',
  open: 'нереш.',
  openLeft: (n) => `Ещё не решено (нереш.) и не входит в число бисерин: ${stitches(n)}.`,
};
