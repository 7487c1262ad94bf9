import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed } = numbersIn('ja');

/** Numbers, counts and marks that every list shares. */
export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads: (n) => `ビーズ${count(n)}個`,
  stitches: (n) => `${count(n)}目`,
  // "7段" rather than R7: the sign of Japanese charts.
  round: (round) => `${round}段`,
  aside: (thing, which) => `${thing}、${which}`,
  bare: 'なし',
  open: '未定',
  openLeft: (n) => `${count(n)}目はまだ決まっていません（未定）。ビーズの数に入っていません。`,
};
