/** What stands on the table whatever step is open. */
export const table = {
  /** Of the page, before a piece has a name. */
  untitled: 'Untitled panel',
  titleLabel: 'Name of the piece',
  way: 'The way from picture to purse',
  mat: 'The mat',
  matEmpty: 'Beads come to lie here as soon as there is a picture.',
  /** On the note beside a heap. */
  heap: (n: string) => `${n} beads`,
  /** For screen readers, after what the note says. */
  heapHint: 'beads; show where they lie',
  matSum: ({ colours, beads }: { colours: string; beads: string }) =>
    `${colours} colours, ${beads} beads`,
  panel: 'The panel, bead face up',
  panelLabel: ({ rounds, wedges, mm }: { rounds: string; wedges: string; mm: string }) =>
    `Round panel: ${rounds} rounds, ${wedges} wedges, about ${mm} mm across`,
  panelSize: ({ rounds, cm }: { rounds: string; cm: string }) => `${rounds} rounds · ${cm} cm`,
  working: 'Choosing beads …',
  stitch: ({
    round,
    stitch,
    letter,
    name,
  }: {
    round: string;
    stitch: string;
    letter: string;
    name: string;
  }) => `Round ${round}, stitch ${stitch}: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }: { round: string; stitch: string }) =>
    `Round ${round}, stitch ${stitch}: bare`,
  thread: 'The thread',
  threadLabel: ({ n }: { n: string }) => `${n} beads in stringing order; arrow keys go along it`,
  length: ({ n, beads, m }: { n: string; beads: string; m: string }) =>
    `Length ${n}: ${beads} beads, ${m} m`,
  lengthMark: (n: string) => `length ${n}`,
  roundMark: (r: string) => `round ${r}`,
  mirrored: 'as you see it while you work: left and right change places',
  byRound: 'Panel as text, round by round',
  roundLine: ({ r, runs }: { r: string; runs: string }) => `Round ${r}: ${runs}`,
  run: ({ n, letter, name }: { n: string; letter: string; name: string }) =>
    `${n} ${letter} (${name})`,
  bareRun: (n: string) => `${n} bare`,
  undone: (what: string) => `Undone: ${what}`,
  redone: (what: string) => `Done again: ${what}`,
  saved: (file: string) => `Saved: ${file}`,
  close: 'Close',
  keys: 'Keys',
  keysIntro: 'All of it can be done with the keyboard, too.',
  more: 'More',
};
