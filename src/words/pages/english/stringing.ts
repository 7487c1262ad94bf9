import type { English } from './spelling.js';

/** How to string, and where a length is joined on. */
export const stringing = (_: English) => ({
  order:
    'String the beads in the order of this list, from the top down and in each line from the left: the outermost round goes on first. The last bead on the thread is the first one worked.',
  reading:
    'Reading: 3A is three beads A. A part in round brackets with x 3 behind it is strung 3 times. In front stand the beads of the round, and the total on the thread when its line is strung: count at the end of each line.',
  bare: 'Bare stitches need no bead and are not in this list.',
  join: (f: { round: number; stitch: number; atRoundEnd: boolean; hour: number }) =>
    f.atRoundEnd
      ? `Join this length on at the start of round ${f.round}, at about ${f.hour} o’clock on the bead face.`
      : `Join this length on before stitch ${f.stitch} of round ${f.round}, at about ${f.hour} o’clock on the bead face.`,
});
