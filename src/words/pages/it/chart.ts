import type { FaceWord, HandWord } from '../english/chart.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { many, short, sizeMm } = numbersIn('it');

/** Which way the work runs, after a verb. */
export const turn = (clockwise: boolean): string =>
  clockwise ? 'in senso orario' : 'in senso antiorario';
const hand = (which: HandWord): string => (which === 'right' ? 'mano destra' : 'mano sinistra');
const face = (beadsFace: FaceWord): string =>
  beadsFace === 'away'
    ? 'perline sulla faccia che chi lavora non vede'
    : 'perline sulla faccia che chi lavora vede';
const increased = { first: 'prima maglia', middle: 'maglia centrale', last: 'ultima maglia' };

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  // M: spicchio; «settore» is said too.
  many(f.wedges, { one: 'spicchio', other: 'spicchi' }),
  many(f.rounds, { one: 'giro', other: 'giri' }),
  many(f.stitches, { one: 'maglia', other: 'maglie' }),
];

export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined
      ? `${f.title}: spicchio per spicchio`
      : `${f.title}: ${f.panel}, spicchio per spicchio`,
  shapeLine: (f) =>
    [
      ...shapeCounts(f),
      many(f.beads, { one: 'perlina', other: 'perline' }),
      `diametro ${sizeMm(f.across, 1)} mm`,
    ].join('  ·  '),
  // One line of the chart: the notes below it say which face that is.
  workLine: (f) =>
    [
      `${f.hand === 'right' ? 'Mano destra' : 'Mano sinistra'}, ${f.beadsFace === 'away' ? 'perline dietro' : 'perline davanti'}`,
      `aumento: ${increased[f.increase]} di ogni spicchio`,
      // M: inclinazione, how far a stitch sits behind the one below.
      `inclinazione ${short(f.lean, 3)} di maglia`,
      f.construction === 'spiral' ? 'a spirale' : 'giri chiusi',
    ].join('  ·  '),
  start: 'inizio',
  direction: 'senso di lavorazione',
  faceNote: (f) =>
    `Questa è la faccia delle perline, l’esterno del borsellino. Qui il lavoro procede ${turn(f.direction === 1)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Mentre si lavora si vede l’altra faccia, su cui il lavoro procede ${turn(f.direction !== 1)}.`
      : 'Mentre si lavora si vede questa stessa faccia, perché le perline stanno davanti, verso chi lavora.',
  construction: {
    spiral: 'Spirale: ogni giro prosegue nel successivo senza chiudersi.',
    joined: 'Giri chiusi: ogni giro si chiude con una maglia bassissima, che non è disegnata.',
  },
  marks: {
    pair: 'Aumento: due maglie nella stessa.',
    number: 'Numero del giro, prima della prima maglia del giro.',
    tick: 'Tacche sul bordo: ogni 10 maglie dell’ultimo giro, contate dalla prima.',
    five: 'Ogni 5 giri: numero scuro e linea spessa all’esterno del giro.',
    startLine: 'Linea di inizio: dove comincia ogni giro.',
    join: 'Giunta: con questa maglia comincia un nuovo tratto di filo.',
  },
  larger:
    'Lettere più grandi: spicchio per spicchio in wedges.svg e sui fogli ingranditi del modello in PDF.',
  bare: 'Maglia senza perlina',
  undecided: 'Non ancora deciso',
  wedge: (f) => `Spicchio ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1
      ? 'Leggere ogni riga da sinistra a destra'
      : 'Leggere ogni riga da destra a sinistra',
  pageOf: (f) => `pagina ${f.page} di ${f.pages}`,
};
