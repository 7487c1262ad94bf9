import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('pl');

interface Span {
  readonly from: number;
  readonly to: number;
}

/** `od 1 do 30 oraz od 111 do 140`. */
export const runsText = (runs: readonly Span[]): string =>
  runs.length === 0
    ? 'żadne'
    : runs
        .map(({ from, to }) => (from === to ? String(from) : `od ${from} do ${to}`))
        .join(' oraz ');

const kinds = { 'half-round': 'półokrągły', squared: 'prostokątny', oval: 'owalny' };
const fixings = { sewn: 'przyszywany', glued: 'wklejany' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  paragraph: (f) =>
    [
      // M: bigiel, the clasp frame of a purse.
      `Bigiel (${kinds[f.kind]}, szerokość ${short(f.widthMm, 1)} mm, ${fixings[f.fixing]}). Oczka okrążenia ${f.round}, które w nim leżą: ${runsText(f.runs)}; po obu stronach godziny 12 długość jest ta sama.`,
      `Gdy patrzy się na stronę z koralikami, lewy zawias wypada między oczkami ${f.left.inFrame} i ${f.left.inSeam}, prawy między ${f.right.inFrame} i ${f.right.inSeam}; poniżej zaczyna się szew.`,
      f.bare.length === 0
        ? 'Żadne oczko nie zostaje dla niego puste.'
        : `Oczka puste, czyli przerobione bez koralika: ${f.bare.map(({ round, runs }) => `okrążenie ${round} – ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  spread: (f) =>
    `Na każdym panelu rozłożyć oczka leżące w biglu (${f.stitches}) równomiernie na całej jego długości, ${short(f.railMm, 1)} mm od zawiasu do zawiasu${f.holes ? `: około ${short(f.holes.perSpace, 1)} na każdy odstęp między otworami, jeśli odstęp ma ${short(f.holes.spacingMm, 1)} mm. Policzyć otwory we własnym biglu` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` Brzeg jest o ${short(Math.abs(f.longerPercent), 1)}% dłuższy niż bigiel: nadmiar rozłożyć równomiernie.`
          : ` Brzeg jest o ${short(Math.abs(f.longerPercent), 1)}% krótszy niż bigiel: równomiernie go naciągnąć.`
    }`,
  word: 'bigiel',
  mark: 'Brzeg między dwiema kropkami, czyli zawiasami, leży w biglu.',
};
