import { valueFault } from './pattern.js';
import type { ValueFault } from './pattern.js';

/** Stitch 3; stitches 3, 4 and 9; not more than eight of them by number. */
function several(stitches: readonly number[]): string {
  if (stitches.length === 1) return `Stitch ${stitches[0]}`;
  const told = stitches.slice(0, 8);
  const rest = stitches.length - told.length;
  const last = rest > 0 ? `${rest} more` : String(told.pop());
  return `Stitches ${told.join(', ')} and ${last}`;
}

/** A character as it is, or by its number where nothing would be seen. */
function visible(character: string): string {
  if (!/[\p{C}\p{Z}]/u.test(character)) return character;
  return `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;
}

/** One sentence for each thing that can be wrong inside a pattern; the parameter is its facts. */
export const problems = {
  'round-count': (f: { panel: string; got: number; expected: number }) =>
    `The ${f.panel} panel has ${f.got} rounds where its shape says ${f.expected}.`,
  'round-length': (f: { panel: string; round: number; got: number; expected: number }) =>
    `Round ${f.round} of the ${f.panel} panel has ${f.got} stitches; it needs ${f.expected}.`,
  'round-unreadable': (f: { panel: string; round: number }) =>
    `Round ${f.round} of the ${f.panel} panel should be letters between quotation marks.`,
  'value-wrong': (f: { path: string; problem: ValueFault }) =>
    `${f.path || 'In the file'}: ${valueFault(f.problem)}.`,
  'letter-unknown': (f: {
    panel: string;
    round: number;
    stitches: readonly number[];
    letter: string;
  }) =>
    `${several(f.stitches)} of round ${f.round} of the ${f.panel} panel ${f.stitches.length === 1 ? 'is' : 'are'} “${visible(f.letter)}”, and no bead has that letter.`,
  'letter-twice': (f: { letter: string; first: number; second: number }) =>
    `Beads ${f.first} and ${f.second} of the list both have the letter ${f.letter}: give one of them another.`,
  'letter-out-of-order': (f: { letter: string; bead: number; expected: string }) =>
    `Bead ${f.bead} of the list has the letter ${f.letter}; the next free letter is ${f.expected}.`,
  'polygon-middle-increase': () =>
    'The outline is a polygon and the increase is in the middle of each wedge, which makes no corners: use a circle, or increase in the first or last stitch.',
  'panel-name-twice': (f: { panel: string }) =>
    `Both panels are named ${f.panel}: give one of them another name.`,
  'stringing-differs': (f: { panel: string; bead: number; got: string; expected: string }) =>
    `The stringing list of the ${f.panel} panel does not read back to its chart: bead ${f.bead} from the needle is ${f.got} and should be ${f.expected}. This is our fault; please report it.`,
};

/** One of them, as data. */
export type SaidProblem = {
  [C in keyof typeof problems]: {
    readonly code: C;
    readonly facts: Parameters<(typeof problems)[C]>[0];
  };
}[keyof typeof problems];

/** The sentence for one of them. */
export const problemSaid = ({ code, facts }: SaidProblem): string =>
  (problems[code] as (facts: SaidProblem['facts']) => string)(facts);
