/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending = {
  findTitle: 'Where am I?',
  findHow: 'Tap the beads that come off the thread next, the one nearest the hook first.',
  findNone: 'They come nowhere like that. Look at the last one that you tapped.',
  findMore: (n: string) => `${n} places fit. Tap the next bead.`,
  found: ({ round, stitch, wedge }: { round: string; stitch: string; wedge: string }) =>
    `Next is stitch ${stitch} of round ${round}, in wedge ${wedge}.`,
  foundSlips: (n: string) => `Beads that differ from the list there: ${n}.`,
  goThere: 'Go on from there',
  jumped: ({ round, stitch }: { round: string; stitch: string }) =>
    `You went on here from stitch ${stitch} of round ${round}.`,
  checkTitle: 'Is it right?',
  checkHow: (after: string) =>
    after === '0'
      ? 'This is how your thread should look, the first bead strung first.'
      : `This is how your thread should look after the ${after} beads that you checked.`,
  checkRight: 'Mine looks the same',
  readStrung: (after: string) =>
    after === '0'
      ? 'If it does not, tap in what is really there, the first bead strung first.'
      : `If it does not, tap in what is really there, beginning behind bead ${after}.`,
  wrongTitle: 'Something is wrong',
  readComing: 'Tap the beads as they really come off the thread, the one nearest the hook first.',
  agree: (n: string) => `As in the list: ${n} beads.`,
  tooMany: 'This is not that piece of thread, or it was read from its other end.',
  notHere: 'These beads do not belong here. Perhaps you are at another place.',
  slip: {
    missing: (f: { after: string; wanted: string; got: string; round: string; stitch: string }) =>
      `Behind bead ${f.after}: ${f.wanted} missing (round ${f.round}, stitch ${f.stitch})`,
    extra: (f: { after: string; wanted: string; got: string; round: string; stitch: string }) =>
      `Behind bead ${f.after}: ${f.got} too many (round ${f.round}, before stitch ${f.stitch})`,
    other: (f: { after: string; wanted: string; got: string; round: string; stitch: string }) =>
      `Behind bead ${f.after}: ${f.got} instead of ${f.wanted} (round ${f.round}, stitch ${f.stitch})`,
    swap: (f: { after: string; wanted: string; got: string; round: string; stitch: string }) =>
      `Behind bead ${f.after}: ${f.got} in the wrong order, ${f.wanted} is wanted (round ${f.round}, stitch ${f.stitch})`,
  },
  ways: {
    missing:
      'Missing: work that stitch without a bead, and sew the bead on afterwards with a fine needle and the same thread.',
    extra:
      'Too many: break the bead with flat pliers when you come to it. Wear goggles, hold a cloth over bead and pliers, pick up the splinters, and feel the thread for a cut.',
    other:
      'Wrong colour: break the wrong bead when you come to it, work the stitch without a bead, and sew the right one on afterwards.',
    swap: 'Wrong order: treat them as two of the wrong colour, or work them as they are if nobody will see it.',
  },
  broken: 'Broken glass cuts thread and skin and springs into eyes: never without goggles.',
  takeOff: (after: string) => `I took off all behind bead ${after}`,
  mendLater: 'Leave it, mend it at the hook',
  noteThem: 'Note it at its stitches',
  here: {
    sewOn: (letter: string) =>
      `Here ${letter} is missing: work the stitch bare, sew the bead on later.`,
    extra: (letters: string) => `Take this off the thread first: ${letters}.`,
  },
  ten: 'Ten at a time',
  takeBack: 'Take back',
  typeThem: 'Or type them, such as 3A 2B',
  addTyped: 'Add them',
  typedWrong: (letters: string) => `Only numbers and these letters: ${letters}`,
  tapped: (n: string) => `Beads told: ${n}`,
  notes: 'Notes',
  noteAt: ({ round, stitch }: { round: string; stitch: string }) =>
    `Note at stitch ${stitch} of round ${round}`,
  noteHow: 'Tap a stitch of the work to pin a note to it.',
  noteLine: ({ round, stitch, text }: { round: string; stitch: string; text: string }) =>
    `Round ${round}, stitch ${stitch}: ${text}`,
  sewOnLine: (f: { round: string; stitch: string; letter: string; name: string }) =>
    `Round ${f.round}, stitch ${f.stitch}: sew on ${f.letter}, ${f.name}.`,
  sewn: 'Sewn on',
  takeAway: 'Take away',
  sewOnTitle: 'Beads to sew on',
  timeTitle: 'Time and cost',
  time: ({ h, min }: { h: string; min: string }) => `${h} h ${min} min`,
  timeHow: 'Time counts from tap to tap; a pause of more than two minutes does not.',
  hourly: 'What an hour is worth',
  cost: {
    beads: 'Beads',
    thread: 'Thread',
    time: 'Time',
    sum: 'Together',
    unknown: 'no price known',
  },
  costHow: 'For one of each panel, in the money of your bead prices.',
  outTitle: 'A colour runs out',
  outHow:
    'What is strung stays. From a round on another bead takes its place, and all lists follow.',
  outWhich: 'Which colour',
  outFrom: 'From round',
  outPanels: 'In which panel',
  outAll: 'In all of them',
  outNeeds: (n: string) => `Beads wanted from there on: ${n}`,
  outInJar: (n: string) => `in the jar: ${n}`,
  outNone: 'From that round on this colour is not worked any more.',
  outDone: ({ from, to, round }: { from: string; to: string; round: string }) =>
    `From round ${round} on ${to} lies instead of ${from}.`,
  practice: 'Practice piece',
  practiceHow:
    'Four rounds to learn by, in your stitch and beads: both stitches of every increase have a colour of their own, and so has the first stitch of each round. Pages makes its own booklet.',
  steps: { runsOut: 'another bead where one runs out' },
};
