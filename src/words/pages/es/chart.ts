import type { PageWords } from '../index.js';
import type { FaceWord, HandWord } from '../english/chart.js';
import { numbersIn } from '../numbers.js';

const { many, short, sizeMm } = numbersIn('es');

/** Which way the work runs, after a verb. */
export const turn = (clockwise: boolean): string =>
  clockwise
    ? 'en el sentido de las agujas del reloj'
    : 'en sentido contrario a las agujas del reloj';
const hand = (which: HandWord): string => (which === 'right' ? 'mano derecha' : 'mano izquierda');
const face = (beadsFace: FaceWord): string =>
  beadsFace === 'away'
    ? 'abalorios en la cara que no ve quien teje'
    : 'abalorios en la cara que ve quien teje';
const increased = { first: 'primer punto', middle: 'punto central', last: 'último punto' };

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  // M: sector; «gajo» and «cuña» are said too.
  many(f.wedges, { one: 'sector', other: 'sectores' }),
  many(f.rounds, { one: 'vuelta', other: 'vueltas' }),
  many(f.stitches, { one: 'punto', other: 'puntos' }),
];

export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined
      ? `${f.title}: sector por sector`
      : `${f.title}: ${f.panel}, sector por sector`,
  shapeLine: (f) =>
    [
      ...shapeCounts(f),
      many(f.beads, { one: 'abalorio', other: 'abalorios' }),
      `${sizeMm(f.across, 1)} mm de diámetro`,
    ].join('  ·  '),
  // One line of the chart: the notes below it say which face that is.
  workLine: (f) =>
    [
      `${f.hand === 'right' ? 'Mano derecha' : 'Mano izquierda'}, ${f.beadsFace === 'away' ? 'abalorios detrás' : 'abalorios delante'}`,
      `aumento: ${increased[f.increase]} del sector`,
      // M: inclinación, how far a stitch sits behind the one below.
      `inclinación ${short(f.lean, 3)} de punto`,
      f.construction === 'spiral' ? 'en espiral' : 'vueltas cerradas',
    ].join('  ·  '),
  start: 'inicio',
  direction: 'sentido de la labor',
  faceNote: (f) =>
    `Esta es la cara de los abalorios, el exterior del monedero. En ella la labor avanza ${turn(f.direction === 1)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Al tejer se ve la otra cara, en la que la labor avanza ${turn(f.direction !== 1)}.`
      : 'Al tejer se ve esta misma cara, pues los abalorios quedan delante, hacia quien teje.',
  construction: {
    spiral: 'Espiral: cada vuelta continúa en la siguiente sin cerrarse.',
    joined: 'Vueltas cerradas: cada vuelta se cierra con un punto raso, que no se dibuja.',
  },
  marks: {
    pair: 'Aumento: dos puntos en el mismo.',
    number: 'Número de vuelta, antes del primer punto de la vuelta.',
    tick: 'Marcas en el borde: cada 10 puntos de la última vuelta, contados desde el primero.',
    five: 'Cada 5 vueltas: número oscuro y línea gruesa por fuera de la vuelta.',
    startLine: 'Línea de inicio: donde empieza cada vuelta.',
    join: 'Unión: con este punto empieza un tramo nuevo de hilo.',
  },
  larger:
    'Letras más grandes: sector por sector en wedges.svg y en las hojas ampliadas del patrón en PDF.',
  bare: 'Punto sin abalorio',
  undecided: 'Pendiente de decidir',
  wedge: (f) => `Sector ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1
      ? 'Leer cada fila de izquierda a derecha'
      : 'Leer cada fila de derecha a izquierda',
  pageOf: (f) => `página ${f.page} de ${f.pages}`,
};
