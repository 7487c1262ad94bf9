import type { English } from './spelling.js';

/** How to string, and where a length is joined on. */
export const stringing = (_: English) => ({
  order:
    'String the beads in the order of the stringing list, from the top down and in each line from the left: the outermost round goes on first. The last bead on the thread is the first one worked.',
  reading:
    'Reading: 3A is three beads A. A part in round brackets with x 3 behind it is strung 3 times. Beside each round stand its beads, and the total on the thread when its line is strung: count at the end of each line.',
  bare: 'Bare stitches need no bead and are not in the stringing list.',
  /** How beads come on the thread. */
  onBall:
    'String from the ball, the end of its thread in the beading needle, and do not cut the thread until the length is worked.',
  /** Where a length ends and the next one, `next`, is joined on; `stitch` is the last one worked from it, from 1. */
  stop: (f: {
    round: number;
    stitch: number;
    atRoundEnd: boolean;
    hour: number;
    next: number;
    tailCm: number;
  }) =>
    `Stop in ${f.atRoundEnd ? `the last stitch of round ${f.round}` : `stitch ${f.stitch} of round ${f.round}`}, before the thread is drawn through for the last time. Hold its loops with a marker, cut the thread ${f.tailCm} cm long, string length ${f.next} and join it on in this stitch, at about ${f.hour} o’clock on the bead face.`,
});
