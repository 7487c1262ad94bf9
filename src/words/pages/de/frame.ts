import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('de');

interface Span {
  readonly from: number;
  readonly to: number;
}

/** `1 bis 30 und 111 bis 140`. */
export const runsText = (runs: readonly Span[]): string =>
  runs.length === 0
    ? 'keine'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from} bis ${to}`)).join(' und ');

const kinds = { 'half-round': 'halbrund', squared: 'eckig', oval: 'oval' };
const fixings = { sewn: 'angenäht', glued: 'eingeklebt' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  paragraph: (f) =>
    [
      `Bügel (${kinds[f.kind]}, ${short(f.widthMm, 1)} mm breit, ${fixings[f.fixing]}): In ihm liegen die Maschen ${runsText(f.runs)} der ${f.round}. Runde, gleich weit nach beiden Seiten von 12 Uhr.`,
      `Das linke Scharnier, auf der Perlenseite gesehen, kommt zwischen die Maschen ${f.left.inFrame} und ${f.left.inSeam}, das rechte zwischen ${f.right.inFrame} und ${f.right.inSeam}; der übrige Rand wird an das andere Teil genäht.`,
      f.bare.length === 0
        ? 'Dafür bleibt keine Masche leer.'
        : `Leer, also ohne Perle gehäkelt, bleiben: ${f.bare.map(({ round, runs }) => `in der ${round}. Runde die Maschen ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  word: 'Bügel',
  mark: 'Der Rand zwischen den beiden Punkten, den Scharnieren, liegt im Bügel.',
};
