import { pages } from './pages.js';

/** Words that rounds.txt and stringing.txt share. */
export const lists = {
  ...pages.lists,
  colours: 'The beads:',
  colour: (f: { name: string; count: number }): string =>
    `${f.name}, ${pages.lists.beads(f.count)}`,
  size: (f: { wedges: number; rounds: number; stitches: number; beads: number }): string =>
    `${f.wedges} wedges, ${f.rounds} rounds, ${pages.lists.stitches(f.stitches)}, ${pages.lists.beads(f.beads)}.`,
};
