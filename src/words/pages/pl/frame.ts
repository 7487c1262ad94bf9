import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('pl');

interface Span {
  readonly from: number;
  readonly to: number;
}

/** `1 do 30 oraz 111 do 140`. */
export const runsText = (runs: readonly Span[]): string =>
  runs.length === 0
    ? 'żadne'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from} do ${to}`)).join(' oraz ');

const kinds = { 'half-round': 'półokrągły', squared: 'prostokątny', oval: 'owalny' };
const fixings = { sewn: 'przyszywany', glued: 'wklejany' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  paragraph: (f) =>
    [
      // M: bigiel, the clasp frame of a purse.
      `Bigiel (${kinds[f.kind]}, szerokość ${short(f.widthMm, 1)} mm, ${fixings[f.fixing]}): w nim leżą oczka ${runsText(f.runs)} okrążenia ${f.round}, tak samo długo po obu stronach godziny 12.`,
      `Lewy zawias, patrząc na stronę z koralikami, wypada między oczkami ${f.left.inFrame} i ${f.left.inSeam}, prawy między ${f.right.inFrame} i ${f.right.inSeam}; reszta brzegu jest zszywana z drugim panelem.`,
      f.bare.length === 0
        ? 'Żadne oczko nie zostaje dla niego puste.'
        : `Puste, czyli przerobione bez koralika, zostają: ${f.bare.map(({ round, runs }) => `w okrążeniu ${round} oczka ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  word: 'bigiel',
  mark: 'Brzeg między dwiema kropkami, zawiasami, leży w biglu.',
};
