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
  redrawNeedsFolder:
    'Say where the files should go: add -o and the name of a new folder, or give pattern.json itself and --force to write beside it.',
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
  likeShape: 'the way of working is that of the pattern',
  unlike: unlikeList,
  fromList: 'what the list shows',
  fromListElse: (usual: string) => `what the list says, else ${usual}`,
  roundsBeads:
    'your beads as a CSV file, found by id or name, else taken in order; - reads standard input',
  roundsBeadsDefault: 'the list’s own names, in our mixed palette',
  roundsTitleDefault: "the list's own, else the file's name",
  colourOf: (letter: string) => `colour ${letter}`,
  /** What can be wrong in a list of rounds; each sentence begins with its line. */
  listProblems: {
    stitches: (f: { line: number; round: number; got: number; expected: number; wedges: number }) =>
      `Line ${f.line}: round ${f.round} has ${f.got} stitches, expected ${f.expected} (${f.wedges} wedges of ${f.round}).`,
    pairs: (f: { line: number; round: number; got: number; expected: number }) =>
      `Line ${f.line}: round ${f.round} has ${f.got} ${f.got === 1 ? 'pair' : 'pairs'} in square brackets, expected ${f.expected === 0 ? 'none, since it has no increases' : `${f.expected}, one in each wedge`}.`,
    'pair-place': (f: {
      line: number;
      round: number;
      got: number;
      expected: number;
      increase: string;
    }) =>
      `Line ${f.line}: in round ${f.round} a pair in square brackets is stitch ${f.got} and ${f.got + 1}, expected ${f.expected} and ${f.expected + 1} (increase in the ${f.increase} stitch of each wedge).`,
    said: (f: {
      line: number;
      round: number;
      what: 'stitches' | 'beads' | 'total';
      got: number;
      expected: number;
    }) =>
      `Line ${f.line}: round ${f.round} says ${f.what === 'total' ? `a total of ${f.got} beads` : `${f.got} ${f.what}`}, expected ${f.expected} by its letters.`,
    letter: (f: { line: number; round: number; stitch: number; letter: string }) =>
      `Line ${f.line}: stitch ${f.stitch} of round ${f.round} is ${f.letter}, and the list of beads has no ${f.letter}.`,
  },
};
