import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed } = numbersIn('zh');

/** Numbers, counts and marks that every list shares. */
export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads: (n) => `${count(n)}颗珠子`,
  stitches: (n) => `${count(n)}针`,
  round: (round) => `R${round}`,
  aside: (thing, which) => `${thing}，${which}`,
  bare: '空',
  open: '未定',
  openLeft: (n) => `还有${count(n)}针没有确定（未定），不计入珠子数量。`,
};
