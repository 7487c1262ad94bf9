type Hand = 'right' | 'left';
type BeadsFace = 'away' | 'toward';

/** 12810 as 12,810. */
const count = (n: number): string => String(n).replace(/\B(?=(\d{3})+$)/g, ',');
const plural = (n: number, one: string, many: string): string =>
  `${count(n)} ${n === 1 ? one : many}`;
const clockwise = (direction: 1 | -1): string => (direction === 1 ? 'clockwise' : 'anticlockwise');
const face = (beadsFace: BeadsFace): string =>
  beadsFace === 'away' ? 'beads away from the worker' : 'beads toward the worker';

/** What stands on the drawings chart.svg and wedges.svg. */
export const chart = {
  count,
  chartTitle: (f: { title: string; panel?: string }) =>
    f.panel === undefined ? f.title : `${f.title}: ${f.panel}`,
  wedgesTitle: (f: { title: string; panel?: string }) =>
    f.panel === undefined ? `${f.title}: wedge by wedge` : `${f.title}: ${f.panel}, wedge by wedge`,
  shapeLine: (f: {
    wedges: number;
    rounds: number;
    stitches: number;
    beads: number;
    acrossMm: number;
  }) =>
    [
      plural(f.wedges, 'wedge', 'wedges'),
      plural(f.rounds, 'round', 'rounds'),
      plural(f.stitches, 'stitch', 'stitches'),
      plural(f.beads, 'bead', 'beads'),
      `${f.acrossMm.toFixed(1)} mm across`,
    ].join('  ·  '),
  workLine: (f: {
    hand: Hand;
    beadsFace: BeadsFace;
    increase: 'first' | 'middle' | 'last';
    lean: number;
    construction: 'spiral' | 'joined';
  }) =>
    [
      `${f.hand === 'right' ? 'Right' : 'Left'} hand, ${face(f.beadsFace)}`,
      `increase in the ${f.increase} stitch of each wedge`,
      `lean ${f.lean} stitch`,
      f.construction === 'spiral' ? 'worked in a spiral' : 'joined rounds',
    ].join('  ·  '),
  paper: (f: { paper: string }) => `Print on ${f.paper} paper, at full size.`,
  start: 'start',
  direction: 'work this way',
  faceNote: (f: { hand: Hand; beadsFace: BeadsFace; direction: 1 | -1 }) =>
    `This is the bead face, the outside of the purse. Here the work runs ${clockwise(f.direction)} (${f.hand} hand, ${face(f.beadsFace)}).`,
  workerNote: (f: { beadsFace: BeadsFace; direction: 1 | -1 }) =>
    f.beadsFace === 'away'
      ? `While crocheting you see the other face, where the work runs ${clockwise(f.direction === 1 ? -1 : 1)}.`
      : 'While crocheting you see this same face, since the beads lie toward you.',
  construction: {
    spiral: 'Spiral: each round runs straight on into the next, without joining.',
    joined: 'Joined rounds: each round is closed with a slip stitch, which is not drawn.',
  },
  marks: {
    pair: 'Two stitches worked into one.',
    number: 'Round number, in the first stitch of its round.',
    five: 'Every 5th round: dark number, heavy line outside it.',
    startLine: 'Start line: where every round begins.',
  },
  bare: 'Bare stitch, no bead',
  undecided: 'Not decided yet',
  cells: (f: { letter: string; name: string; count: number }) =>
    `${f.letter} ${f.name}: ${plural(f.count, 'stitch', 'stitches')}`,
  groups: {
    panel: 'The panel, bead face',
    pairs: 'Doubled pairs: two stitches worked into one',
    numbers: 'Round numbers',
    startLine: 'Start line',
    start: 'Start mark',
    direction: 'Direction of work',
    key: 'Key of bead colours',
    notes: 'How to read this',
  },
  describeChart: (f: { wedges: number; rounds: number }) =>
    `Round bead-crochet chart with ${f.wedges} wedges and ${f.rounds} rounds, seen on the bead face; every stitch is coloured and carries the letter of its bead.`,
  describeWedges: (f: { wedges: number; rounds: number }) =>
    `${f.wedges} triangles, one for each wedge, rim up; row r is round r and has r stitches, ${f.rounds} rows in all.`,
  wedge: (f: { wedge: number }) => `Wedge ${f.wedge}`,
  wedgeWay: (f: { direction: 1 | -1 }) =>
    f.direction === 1 ? 'Read every row from left to right' : 'Read every row from right to left',
  wedgesHow: (f: { wedges: number; direction: 1 | -1 }) =>
    `Bead face, rim up. Row 1 is the point, at the centre. Each round goes through wedges 1 to ${f.wedges} in turn; read every row from ${f.direction === 1 ? 'left to right' : 'right to left'}, as the arrows show. A black triangle on two stitches points to the one below that both are worked into.`,
  pageOf: (f: { page: number; pages: number }) => `page ${f.page} of ${f.pages}`,
};
