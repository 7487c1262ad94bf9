import { pages } from './pages.js';

/** What stands on the drawings chart.svg and wedges.svg. */
export const chart = {
  ...pages.chart,
  count: pages.lists.number,
  paper: (f: { paper: string }) => `Print on ${f.paper} paper, at full size.`,
  cells: (f: { letter: string; name: string; count: number }) =>
    `${f.letter} ${f.name}: ${pages.lists.stitches(f.count)}`,
  groups: {
    panel: 'The panel',
    pairs: 'Doubled pairs: two stitches worked into one',
    numbers: 'Round numbers',
    startLine: 'Start line',
    start: 'Start mark',
    direction: 'Direction of work',
    key: 'Key of bead colours',
    notes: 'How to read this',
  },
  describeChart: (f: { wedges: number; rounds: number; working: boolean }) =>
    `Round bead-crochet chart with ${f.wedges} wedges and ${f.rounds} rounds, ${f.working ? 'as you see it while you work' : 'seen on the bead face'}; every stitch is coloured and carries the letter of its bead.`,
  describeWedges: (f: { wedges: number; rounds: number }) =>
    `${f.wedges} triangles, one for each wedge, rim up; row r is round r and has r stitches, ${f.rounds} rows in all.`,
  wedgesHow: (f: { wedges: number; direction: 1 | -1 }) =>
    `Bead face, rim up. Row 1 is the point, at the centre. Each round goes through wedges 1 to ${f.wedges} in turn; read every row from ${f.direction === 1 ? 'left to right' : 'right to left'}, as the arrows show. A black triangle on two stitches points to the one below that both are worked into.`,
};
