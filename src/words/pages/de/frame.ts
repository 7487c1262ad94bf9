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
      `Bügel (${kinds[f.kind]}, ${short(f.widthMm, 1)} mm breit, ${fixings[f.fixing]}): In ihm liegen die Maschen ${runsText(f.runs)} der ${f.round}. Runde, von 12 Uhr aus nach beiden Seiten gleich weit.`,
      `Das linke Scharnier, auf der Perlenseite gesehen, kommt zwischen die Maschen ${f.left.inFrame} und ${f.left.inSeam}, das rechte zwischen ${f.right.inFrame} und ${f.right.inSeam}; darunter kommt die Naht.`,
      f.bare.length === 0
        ? 'Dafür bleibt keine Masche leer.'
        : `Leer, also ohne Perle gehäkelt, bleiben: ${f.bare.map(({ round, runs }) => `in der ${round}. Runde die Maschen ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  spread: (f) =>
    `An jedem Teil die Maschen im Bügel (${f.stitches}) gleichmäßig über seine Länge verteilen, ${short(f.railMm, 1)} mm von Scharnier zu Scharnier${f.holes ? `: etwa ${short(f.holes.perSpace, 1)} auf jeden Zwischenraum der Löcher, wenn sie ${short(f.holes.spacingMm, 1)} mm auseinander liegen. Die Löcher des eigenen Bügels zählen` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` Der Rand ist ${short(Math.abs(f.longerPercent), 1)} % länger als der Bügel: die Mehrweite gleichmäßig verteilen.`
          : ` Der Rand ist ${short(Math.abs(f.longerPercent), 1)} % kürzer als der Bügel: gleichmäßig dehnen.`
    }`,
  word: 'Bügel',
  mark: 'Der Rand zwischen den beiden Punkten, den Scharnieren, liegt im Bügel.',
};
