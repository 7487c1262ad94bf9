/** stringing.txt: the heading and how to use the list. */
export const stringing = {
  title: (f: { title: string; panel: string }) => `Stringing list of ${f.title}, ${f.panel} panel`,
  order: (f: { lastRound: number; firstRound: number }) =>
    `String the beads in the order of this list, from the top down and in each line from the left: the last round with beads, ${f.lastRound}, goes on first and round ${f.firstRound} last. The last bead on is the first one worked.`,
  reading:
    'Reading: 3A is three beads A. A part in round brackets with x 7 behind it is strung 7 times. In front stand the beads of the round, and the total on the thread when its line is strung: count at the end of each line.',
  bare: 'Bare stitches need no bead and are not in this list.',
  tooLong: (beads: string) =>
    `All ${beads} are more than one thread carries well. String some rounds at a time, from the end of this list: the rounds you work first. Cut and join at the end of a round. Inside each length the order stays as it is here.`,
  lengthNote: (beads: string) =>
    `One length of thread holds all ${beads}. Leave them on the ball and slide them along as you work.`,
};
