/** stringing.txt: the heading and how to use the list. */
export const stringing = {
  title: (f: { title: string; panel: string }) => `Stringing list of ${f.title}, ${f.panel} panel`,
  order:
    'String the beads in the order of this list, from the top down and in each line from the left: the outermost round goes on first. The last bead on the thread is the first one worked.',
  reading:
    'Reading: 3A is three beads A. A part in round brackets with x 3 behind it is strung 3 times. In front stand the beads of the round, and the total on the thread when its line is strung: count at the end of each line.',
  bare: 'Bare stitches need no bead and are not in this list.',
  care: 'Take care: keep beads and needles away from small children, who can choke on small parts, and count the needles before and after. Where you live or sell, local rules come first.',
  severalLengths: (f: { beads: string; lengths: number }) =>
    `All ${f.beads} on one thread would tangle and wear it, so they come in ${f.lengths} lengths. String and work length 1, then length 2 and so on; each list is in stringing order by itself.`,
  length: (f: {
    number: number;
    lengths: number;
    beads: string;
    metres: string;
    threadM: string;
    lastRound: number;
    firstRound: number;
  }) =>
    `LENGTH ${f.number} of ${f.lengths}: ${f.lastRound === f.firstRound ? `round ${f.lastRound}` : `rounds ${f.firstRound} to ${f.lastRound}`}, ${f.beads}, about ${f.metres} m of strung beads. It takes about ${f.threadM} m of thread, tails and reserve included.`,
  join: (f: { round: number; stitch: number; atRoundEnd: boolean; hour: number }) =>
    f.atRoundEnd
      ? `Join it on at the start of round ${f.round}, at about ${f.hour} o’clock on the bead face.`
      : `Join it on before stitch ${f.stitch} of round ${f.round}, at about ${f.hour} o’clock on the bead face.`,
  part: 'part of the round',
  lengthNote: (f: { beads: string; metres: string; threadM: string }) =>
    `One length of thread holds all ${f.beads}, about ${f.metres} m when strung, and takes about ${f.threadM} m of thread, tails and reserve included. Leave them on the ball and slide them along as you work.`,
};
