import type { FrameKind, StitchSpan } from '../english/frame.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('it');

/** `da 1 a 30 e da 111 a 140`. */
export const runsText = (runs: readonly StitchSpan[]): string =>
  runs.length === 0
    ? 'nessuna'
    : runs.map(({ from, to }) => (from === to ? String(from) : `da ${from} a ${to}`)).join(' e ');

const kinds: Record<FrameKind, string> = {
  'half-round': 'a mezzaluna',
  squared: 'rettangolare',
  oval: 'ovale',
};
const fixings = { sewn: 'cucita', glued: 'incollata' };

export const frame: PageWords['frame'] = {
  kinds,
  // M: montatura (clasp frame), snodo (hinge; «cerniera» also means a zip).
  paragraph: (f) =>
    [
      `Montatura (${kinds[f.kind]}, larga ${short(f.widthMm, 1)} mm, ${fixings[f.fixing]}). Maglie del giro ${f.round} che stanno nella montatura: ${runsText(f.runs)}, per la stessa lunghezza ai due lati di ore 12.`,
      `Lo snodo sinistro, visto dalla faccia delle perline, cade tra le maglie ${f.left.inFrame} e ${f.left.inSeam}; quello destro tra le maglie ${f.right.inFrame} e ${f.right.inSeam}. Più in basso va la cucitura.`,
      f.bare.length === 0
        ? 'Nessuna maglia resta senza perlina per la montatura.'
        : `Si lavorano senza perlina queste maglie: ${f.bare.map(({ round, runs }) => `nel giro ${round}, ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  spread: (f) =>
    `Su ogni pannello distribuire in modo uniforme le maglie nella montatura (${f.stitches}) su tutta la sua lunghezza, ${short(f.railMm, 1)} mm da snodo a snodo${f.holes ? `: circa ${short(f.holes.perSpace, 1)} per ogni spazio tra i fori, se distano ${short(f.holes.spacingMm, 1)} mm. Contare i fori della propria montatura` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` Il bordo è più lungo della montatura del ${short(Math.abs(f.longerPercent), 1)} %: distribuire l’eccedenza in modo uniforme.`
          : ` Il bordo è più corto della montatura del ${short(Math.abs(f.longerPercent), 1)} %: tenderlo in modo uniforme.`
    }`,
  word: 'montatura',
  mark: 'Il bordo tra i due cerchietti neri, gli snodi, sta nella montatura.',
};
