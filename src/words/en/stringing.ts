import { pages } from './pages.js';

/** stringing.txt: the heading and how to use the list. */
export const stringing = {
  ...pages.stringing,
  title: (f: { title: string; panel: string }) => `Stringing list of ${f.title}, ${f.panel} panel`,
  care: 'Take care: keep beads and needles away from small children, who can choke on small parts, and count the needles before and after. Where you live or sell, local rules come first.',
  severalLengths: (f: { beads: string; lengths: number }) =>
    `All ${f.beads} on one thread would tangle and wear it, so they come in ${f.lengths} lengths. String and work length 1, then length 2 and so on; each list is in stringing order by itself.`,
  length: (f: {
    number: number;
    lengths: number;
    beads: string;
    metres: number;
    threadM: number;
    lastRound: number;
    firstRound: number;
  }) =>
    `LENGTH ${f.number} of ${f.lengths}: ${f.lastRound === f.firstRound ? `round ${f.lastRound}` : `rounds ${f.firstRound} to ${f.lastRound}`}, ${f.beads}, about ${f.metres.toFixed(2)} m of strung beads. It takes about ${f.threadM.toFixed(1)} m of thread, tails and reserve included.`,
  join: (f: { round: number; stitch: number; atRoundEnd: boolean; hour: number }) =>
    f.atRoundEnd
      ? `Join this length on at the start of round ${f.round}, at about ${f.hour} o’clock on the bead face.`
      : `Join this length on before stitch ${f.stitch} of round ${f.round}, at about ${f.hour} o’clock on the bead face.`,
  part: 'part of the round',
  lengthNote: (f: { beads: string; metres: number; threadM: number }) =>
    `One length of thread holds all ${f.beads}, about ${f.metres.toFixed(2)} m when strung, and takes about ${f.threadM.toFixed(1)} m of thread, tails and reserve included.`,
};
