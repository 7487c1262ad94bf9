import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

// After a number a noun stands in the singular.
const { count, fixed } = numbersIn('tr');
const beads = (n: number) => `${count(n)} boncuk`;
const stitches = (n: number) => `${count(n)} ilmek`;

export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  // M: S (sıra).
  round: (round) => `S${round}`,
  aside: (thing, which) => `${thing}, ${which}`,
  bare: 'boş',
  open: 'belirsiz',
  openLeft: (n) => `${stitches(n)} henüz belirlenmedi (belirsiz) ve boncuk sayılarına dahil değil.`,
};
