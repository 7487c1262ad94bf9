import type { FrameKind, StitchSpan } from '../english/frame.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('es');

/** `1 a 30 y 111 a 140`. */
export const runsText = (runs: readonly StitchSpan[]): string =>
  runs.length === 0
    ? 'ninguno'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from} a ${to}`)).join(' y ');

/** Said of the frame, which is feminine. */
const kinds: Record<FrameKind, string> = {
  'half-round': 'de media luna',
  squared: 'rectangular',
  oval: 'ovalada',
};
const fixings = { sewn: 'cosida', glued: 'pegada' };

export const frame: PageWords['frame'] = {
  kinds,
  paragraph: (f) =>
    [
      `Boquilla (${kinds[f.kind]}, ${short(f.widthMm, 1)} mm de ancho, ${fixings[f.fixing]}). Puntos de la vuelta ${f.round} que quedan en ella: ${runsText(f.runs)}, con la misma longitud a cada lado de las 12 del reloj.`,
      `La bisagra izquierda, vista por la cara de los abalorios, cae entre los puntos ${f.left.inFrame} y ${f.left.inSeam}; la derecha, entre los puntos ${f.right.inFrame} y ${f.right.inSeam}. Por debajo va la costura.`,
      f.bare.length === 0
        ? 'Ningún punto se deja sin abalorio para la boquilla.'
        : `Se tejen sin abalorio estos puntos: ${f.bare.map(({ round, runs }) => `en la vuelta ${round}, ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  spread: (f) =>
    `En cada panel, repartir por igual los puntos que quedan en la boquilla (${f.stitches}) a lo largo de ella, ${short(f.railMm, 1)} mm de bisagra a bisagra${f.holes ? `: unos ${short(f.holes.perSpace, 1)} por cada espacio entre agujeros, si están a ${short(f.holes.spacingMm, 1)} mm uno de otro. Contar los agujeros de la boquilla propia` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` El borde es un ${short(Math.abs(f.longerPercent), 1)} % más largo que la boquilla: repartir por igual lo que sobra.`
          : ` El borde es un ${short(Math.abs(f.longerPercent), 1)} % más corto que la boquilla: estirarlo por igual.`
    }`,
  word: 'boquilla',
  mark: 'El borde entre los dos círculos negros, las bisagras, queda dentro de la boquilla.',
};
