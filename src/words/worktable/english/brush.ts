/** The step Brush: beads laid by hand. */
export const brush = {
  step: 'Brush',
  inHand: 'On the brush',
  take: 'Take up',
  none: 'No bead',
  others: (n: string) => `More of my beads: ${n}`,
  lays: 'It lays',
  also: 'It can also',
  how: {
    bead: 'Draw on the panel: every stitch that you touch takes the bead.',
    line: 'Pull from one stitch to another: a straight line of beads.',
    ring: 'Tap a stitch: its whole round takes the bead. Pull across rounds for several.',
    wedge: 'Tap a stitch: its whole wedge takes the bead.',
    patch: 'Tap a patch of one colour: all of it takes the bead.',
    away: 'Draw over beads laid by hand: those stitches are again as the picture gave them.',
    replace: 'Tap a bead: wherever it lies, the bead on the brush is laid instead.',
    move: 'Draw a loop around a part, or tap a patch; then pull it to its new place.',
    pick: 'Tap a bead on the panel to take it up. A heap on the mat does the same.',
  },
  laid: 'Laid by hand',
  laidNone: 'Nothing yet.',
  laidCount: (n: string) => `Stitches: ${n}.`,
  laidWait: ({ n, wedges }: { n: string; wedges: string }) =>
    `Waiting for the ${wedges} wedges on which they were laid: ${n}.`,
  laidOutside: (n: string) => `Outside the rim, waiting for more rounds: ${n}.`,
  laidHow:
    'They stay where they are when you lay the picture anew or choose other beads. With other wedges, or outside fewer rounds, they have no place: they wait, and undo brings them back.',
  noLetter:
    'There are 24 colours already, and no letter is left for another one. Put two heaps together first.',
  heapHint: 'beads; take them up',
  keysHow:
    'By keyboard: the arrows go along the round and from round to round, Space uses the brush, comma and full stop change the bead. With Shift, the arrows use the brush as they go.',
  place: ({
    round,
    stitch,
    wedge,
    bead,
  }: {
    round: string;
    stitch: string;
    wedge: string;
    bead: string;
  }) => `Round ${round}, stitch ${stitch}, wedge ${wedge}: ${bead}`,
  placeByHand: ({
    round,
    stitch,
    wedge,
    bead,
  }: {
    round: string;
    stitch: string;
    wedge: string;
    bead: string;
  }) => `Round ${round}, stitch ${stitch}, wedge ${wedge}: ${bead}, by hand`,
  steps: {
    bead: 'lay beads',
    line: 'lay a line',
    ring: 'lay a ring',
    wedge: 'lay a wedge',
    patch: 'fill a patch',
    away: 'lift beads off',
    move: 'move a part',
    replace: 'lay one bead for another',
    all: 'lift off all that was laid by hand',
  },
};
