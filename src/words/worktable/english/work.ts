/** The step Work: stringing and crocheting beside the bead mat. */
export const work = {
  step: 'Work',
  intro:
    'Prop the screen up beside the bead mat. It shows one thing at a time and remembers where you stop, to the bead.',
  waiting: 'Beads are still being chosen …',
  changed:
    'The panel was changed after you began. You are still working the one that you began with.',
  which: 'Which one',
  copies: 'How many of each',
  panel: 'Panel',
  sides: { front: 'Front', back: 'Back' },
  panelOf: ({ name, n, of }: { name: string; n: string; of: string }) => `${name}, ${n} of ${of}`,
  strung: ({ done, all }: { done: string; all: string }) => `${done} of ${all} beads strung`,
  worked: ({ done, all }: { done: string; all: string }) => `${done} of ${all} stitches worked`,
  length: ({ n, of }: { n: string; of: string }) => `length ${n} of ${of}`,

  /** Stringing. */
  stringRound: ({ r, done, all }: { r: string; done: string; all: string }) =>
    `Round ${r} · ${done} of ${all} beads`,
  then: (run: string) => `then ${run}`,
  thenDone: 'these are the last ones',
  notStrung: (n: string) =>
    `Not on the thread yet by this page: ${n} beads of this length. They are strung first.`,
  strungByList: 'They are all on the thread',
  tapStrung: 'Tap anywhere when they are on the thread',
  stands: ({
    beads,
    metres,
    grams,
  }: {
    beads: string;
    metres: string;
    grams: string | undefined;
  }) => `On the thread: ${beads} beads, ${metres} m${grams === undefined ? '' : `, ${grams} g`}`,
  lengthDone: ({ n, of, beads }: { n: string; of: string; beads: string }) =>
    of === '1' ? `All ${beads} beads are strung` : `Length ${n} of ${of} is strung: ${beads} beads`,
  lengthDoneHow:
    'The bead that you strung last is worked first. Push the beads down the thread, and leave the thread on the ball.',
  stringLength: ({ n, of }: { n: string; of: string }) => `String length ${n} of ${of}`,

  /** Crocheting. */
  inHand: 'The work as it lies in your hand, the present stitch at the hook',
  roundOf: ({ r, of }: { r: string; of: string }) => `Round ${r} of ${of}`,
  inRound: ({ wedge, stitch, of }: { wedge: string; stitch: string; of: string }) =>
    `wedge ${wedge} · stitch ${stitch} of ${of}`,
  allWorked: (n: string) => `all ${n} stitches`,
  begin: (wedges: string) =>
    `Begin with a ring, and work the ${wedges} stitches of round 1 into it.`,
  roundDone: ({
    r,
    stitches,
    beads,
    all,
  }: {
    r: string;
    stitches: string;
    beads: string;
    all: string;
  }) => `Round ${r} is done: ${stitches} stitches, ${beads} beads, ${all} beads in all.`,
  moveMarker: 'Move the marker into the first stitch of the next round.',
  closeRound:
    'Close the round with a slip stitch and make one chain to step up; both without a bead.',
  joinHere: (length: string) => `Stop: join length ${length} on here.`,
  bothInOne: 'both into one stitch',
  bare: 'bare',
  open: 'not decided',
  tapWorked: 'Tap when worked',
  coming: 'Next beads off the thread',
  pace: 'How much at a time',
  panelDone: 'The panel is done',
  endSpiral:
    'Make two or three slip stitches without beads to smooth the step, cut the thread 20 cm long and draw it through.',
  endJoined: 'Close the round with a slip stitch, cut the thread 20 cm long and draw it through.',

  /** Speaking and listening. */
  voiceless: 'This device has no voice for the language of the page.',
  cannot: {
    stayAwake:
      'This browser cannot keep the screen awake: let it stay on longer in the settings of the device.',
    speak: 'This browser cannot read aloud.',
    listen: 'This browser cannot listen: a tap or the space bar goes on.',
  },
  heard: { next: ['next', 'on', 'yes'], back: ['back', 'wrong'] },
  listens:
    'Listening for “next” and “back”. Some browsers send what they hear to their maker to understand it; this page sends nothing.',
  deaf: 'The browser cannot listen now: it was not allowed to, or it needs a network for it.',
};
