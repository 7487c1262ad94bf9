import { lists } from './lists.js';

const plural = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** Words of blank charts: the page itself, the commands `blank` and `read`, and what they say. */
export const blank = {
  about: 'make an empty chart to colour by hand',
  examples: `Examples:
  rondure blank -o empty
  rondure blank --wedges 6 --across 9cm --title "Barley moon" -o barley
`,
  describe: (f: { wedges: number; rounds: number }) =>
    `Empty round bead-crochet chart with ${f.wedges} wedges and ${f.rounds} rounds, seen on the bead face, to be coloured by hand; a round mark stands in each corner.`,
  shapeLine: (f: { wedges: number; rounds: number; stitches: number; paper: string }) =>
    [
      plural(f.wedges, 'wedge', 'wedges'),
      plural(f.rounds, 'round', 'rounds'),
      lists.stitches(f.stitches),
      `print on ${f.paper}`,
    ].join('  ·  '),
  how: 'Colour one cell for each bead, well covered, one colour for each bead colour. Keep the four corner marks clean, then scan the page or photograph all of it, lying flat in even light.',
  sayWhere: 'Say where the files should go: add -o and the name of a new folder.',
  title: 'Blank chart',
  titleDefault: 'Blank chart',
  made: (f: { folder: string; wedges: number; rounds: number; stitches: number; paper: string }) =>
    `A blank chart is in ${f.folder}: ${f.wedges} wedges, ${f.rounds} rounds, ${lists.stitches(f.stitches)}.\nPrint blank.svg or blank.png on ${f.paper}, colour it, and keep blank.json: rondure read needs it.`,
};
