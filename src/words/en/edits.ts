import { unlikeList } from './refusals.js';

/** Words of the commands for what was edited or typed by hand: redraw, check and rounds. */
export const edits = {
  redraw: 'make every file of a pattern again, after you edited it by hand',
  redrawPattern: 'pattern.json, or a chart.svg or chart.png of ours; - reads standard input',
  redrawExamples: `Examples:
  rondure chart fixtures/barley-moon.svg --rounds 12 -o moon
  rondure redraw moon/pattern.json --force
  rondure redraw moon/chart.png -o moon-again
`,
  redrawOutput: 'the new folder; without it, --force writes where pattern.json lies',
  check: 'say everything that is wrong in a pattern',
  checkExamples: `Examples:
  rondure chart fixtures/barley-moon.svg --rounds 12 -o moon
  rondure check moon/pattern.json
  rondure check moon/chart.svg --json
`,
  sound: (f: {
    title: string;
    wedges: number;
    rounds: number;
    panels: readonly { panel: string; stitches: string; beads: string }[];
  }) => {
    const told = f.panels.map(({ panel, stitches, beads }) => {
      const named = f.panels.length > 1 ? `${panel} panel ` : '';
      return `${named}${stitches} stitches, ${beads} beads`;
    });
    return `“${f.title}” is sound: ${f.wedges} wedges, ${f.rounds} rounds, ${told.join('; ')}.`;
  },
  rounds: 'make a pattern from a list of rounds that you typed or edited',
  roundsFile: 'a list like rounds.txt; - reads standard input',
  roundsExamples: `Examples:
  rondure chart fixtures/barley-moon.svg --rounds 12 -o moon
  rondure rounds moon/rounds.txt --like moon/pattern.json -o moon-edited
  rondure rounds moon/rounds.txt --hand left --title "Moon to the left" -o left
`,
  like: 'the pattern.json that the list was printed from: its back, frame, swatch and thread are kept',
  unlike: unlikeList,
  fromList: 'what the list shows',
  fromListElse: (usual: string) => `what the list says, else ${usual}`,
  roundsBeads:
    'your beads as a CSV file, found by id or name, else taken in order; - reads standard input',
  roundsBeadsDefault: 'the list’s own names, in our mixed palette',
  roundsTitleDefault: "the list's own, else the file's name",
  colourOf: (letter: string) => `colour ${letter}`,
};
