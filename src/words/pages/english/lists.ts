import { numbersIn } from '../numbers.js';
import type { English } from './spelling.js';

/** Numbers, counts and marks that every list shares. */
export const lists = ({ language }: English) => {
  const { count, fixed, many } = numbersIn(language);
  const beads = (n: number) => many(n, { one: 'bead', other: 'beads' });
  const stitches = (n: number) => many(n, { one: 'stitch', other: 'stitches' });
  return {
    /** 1,470 */
    number: count,
    /** 3.4, with just so many decimals. */
    decimal: fixed,
    beads,
    stitches,
    /** Short name of a round in lists, on charts and in abbreviations. */
    round: (round: number): string => `R${round}`,
    /** A thing and, after a comma, which of several. */
    aside: (thing: string, which: string): string => `${thing}, ${which}`,
    /** Stand after a number in a round: 2 bare, 3 open. */
    bare: 'bare',
    open: 'open',
    openLeft: (n: number): string =>
      n === 1
        ? '1 stitch is not decided yet (open) and not in the counts of beads.'
        : `${stitches(n)} are not decided yet (open) and not in the counts of beads.`,
  };
};
