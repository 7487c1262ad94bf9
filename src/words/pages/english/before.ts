import { numbersIn } from '../numbers.js';
import type { SizeRange } from '../numbers.js';
import type { English } from './spelling.js';

/** Before the work begins: swatch, hand, how to read, signs. */
export const before = ({ language, colour, centre, sign }: English) => {
  const { count, fixed, sizeMm } = numbersIn(language);
  return {
    swatch: 'Work a swatch first',
    swatchText: (f: {
      wedges: number;
      beads: number;
      widthMm: number;
      heightMm: number;
      five: SizeRange;
      ten: SizeRange;
    }) =>
      `Work 10 rounds of ${f.wedges} wedges in one ${colour} with your own beads, thread and hook. It takes ${count(f.beads)} beads; drawings in this part show beginning, stitch and increase. Lay the swatch flat. This pattern counts on stitches ${fixed(f.widthMm, 2)} mm wide and rounds ${fixed(f.heightMm, 2)} mm high: after 5 rounds the swatch measures about ${sizeMm(f.five, 0)} mm across, after 10 rounds about ${sizeMm(f.ten, 0)} mm. If yours is larger, take a thinner hook; if it is smaller, a thicker one. If it cups, the stitches are too narrow for their height; if it ruffles, they are too wide.`,
    hand: 'Which hand, and which face',
    start: 'How to begin and to go on',
    read: 'How to read the list of rounds',
    string: 'How to string',
    signs: 'Signs and abbreviations',
    sign: 'Sign',
    meaning: 'Meaning',
    table: (second: string): [string, string][] => [
      ['R7', `round 7, counted from the ${centre}`],
      ['A, B', 'the beads: letters as in the table of materials and on the chart'],
      ['3A', 'three stitches with bead A; in the stringing list three beads A'],
      [`[A ${second}]`, 'two stitches worked into one and the same stitch below: an increase'],
      ['( ) x 7', 'what stands in the brackets, 7 times'],
      ['bare', 'a stitch without a bead'],
      [...sign],
    ],
    smallChart: (f: { paper: string }) =>
      `The chart has so many stitches that its letters are small on this paper. Read it enlarged on a screen, or have that page printed on ${f.paper}. The list of rounds says the same in words.`,
  };
};
