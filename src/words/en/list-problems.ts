/** What can be wrong in a list of rounds; each sentence begins with its line. */
export const listProblems = {
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
};

/** One of them, as data; lines, rounds and stitches from 1. */
export type ListProblem = {
  [C in keyof typeof listProblems]: {
    readonly code: C;
    readonly facts: Parameters<(typeof listProblems)[C]>[0];
  };
}[keyof typeof listProblems];

/** The sentence for one of them. */
export const listProblemSaid = ({ code, facts }: ListProblem): string =>
  (listProblems[code] as (facts: ListProblem['facts']) => string)(facts);
