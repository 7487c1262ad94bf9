/** Words that rounds.txt and stringing.txt share. */
export const lists = {
  /** 1,470 */
  number: (value: number): string => String(value).replace(/\B(?=(?:\d{3})+$)/g, ','),
  beads: (count: number): string => (count === 1 ? '1 bead' : `${lists.number(count)} beads`),
  stitches: (count: number): string =>
    count === 1 ? '1 stitch' : `${lists.number(count)} stitches`,
  /** Stand after a number in a round: 2 bare, 3 open. */
  bare: 'bare',
  open: 'open',
  colours: 'The beads:',
  colour: (f: { name: string; count: number }): string => `${f.name}, ${lists.beads(f.count)}`,
  size: (f: { wedges: number; rounds: number; stitches: number; beads: number }): string =>
    `${f.wedges} wedges, ${f.rounds} rounds, ${lists.stitches(f.stitches)}, ${lists.beads(f.beads)}.`,
  openLeft: (count: number): string =>
    `${count === 1 ? '1 stitch is' : `${lists.number(count)} stitches are`} not decided yet (open) and not in the counts of beads.`,
};
