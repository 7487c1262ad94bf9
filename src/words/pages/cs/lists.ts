import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many } = numbersIn('cs');

const beads = (n: number): string => many(n, { one: 'korálek', few: 'korálky', other: 'korálků' });
const stitches = (n: number): string => many(n, { one: 'očko', few: 'očka', other: 'oček' });

/** Numbers, counts and marks that every list shares. */
export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  round: (round) => `K${round}`,
  aside: (thing, which) => `${thing}, ${which}`,
  // L: holé, a stitch without a bead.
  bare: 'holé',
  open: 'neurčené',
  openLeft: (n) => `Ještě nerozhodnuto (neurčené), nezapočteno do počtu korálků: ${stitches(n)}.`,
};
