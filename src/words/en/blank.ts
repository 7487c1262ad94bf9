import { lists } from './lists.js';
import { pages } from './pages.js';

/** Words of blank charts: the page itself, the commands `blank` and `read`, and what they say. */
export const blank = {
  ...pages.blank,
  about: 'make an empty chart to colour by hand',
  examples: `Examples:
  rondure blank -o empty
  rondure blank --wedges 6 --across 9cm --title "Barley moon" -o barley
`,
  describe: (f: { wedges: number; rounds: number }) =>
    `Empty round bead-crochet chart with ${f.wedges} wedges and ${f.rounds} rounds, seen on the bead face, to be coloured by hand; a round mark stands in each corner.`,
  title: 'Blank chart',
  titleDefault: 'Blank chart',
  made: (f: { folder: string; wedges: number; rounds: number; stitches: number; paper: string }) =>
    `A blank chart is in ${f.folder}: ${f.wedges} wedges, ${f.rounds} rounds, ${lists.stitches(f.stitches)}.\nPrint blank.pdf, blank.svg or blank.png on ${f.paper}, colour it, and keep blank.json: rondure read needs it.`,
};
