import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: 'Pennello',
  inHand: 'Sul pennello',
  take: 'Prendere',
  none: 'Nessuna perlina',
  others: (n) => `Altre mie perline: ${n}`,
  lays: 'Posa',
  also: 'Può anche',
  how: {
    bead: 'Disegna sul pannello: ogni maglia toccata prende la perlina.',
    line: 'Trascina da una maglia all’altra: una linea dritta di perline.',
    ring: 'Tocca una maglia: tutto il suo giro prende la perlina. Trascina attraverso i giri per più di uno.',
    wedge: 'Tocca una maglia: tutto il suo spicchio prende la perlina.',
    patch: 'Tocca una macchia di un colore: prende tutta la perlina.',
    away: 'Passa sulle perline posate a mano: quelle maglie tornano come le ha date l’immagine.',
    replace: 'Tocca una perlina: ovunque si trovi, si posa quella del pennello.',
    move: 'Disegna un cappio attorno a una parte, o tocca una macchia; poi trascinala al suo nuovo posto.',
    pick: 'Tocca una perlina del pannello per prenderla. Un mucchietto sul tappetino fa lo stesso.',
  },
  laid: 'Posato a mano',
  laidNone: 'Ancora niente.',
  laidCount: (n) => `Maglie: ${n}.`,
  laidWait: ({ n, wedges }) => `In attesa dei ${wedges} spicchi su cui furono posate: ${n}.`,
  laidOutside: (n) => `Fuori dal bordo, in attesa di più giri: ${n}.`,
  laidHow:
    'Restano dove sono quando disponi di nuovo l’immagine o scegli altre perline. Con altri spicchi, o fuori da meno giri, non hanno posto: aspettano, e Annulla le riporta.',
  noLetter:
    'Ci sono già 24 colori e non resta una lettera per un altro. Unisci prima due mucchietti.',
  heapHint: 'perline; prendile',
  keysHow:
    'Con la tastiera: le frecce vanno lungo il giro e da un giro all’altro, Spazio usa il pennello, virgola e punto cambiano la perlina. Con Maiusc le frecce lo usano passando.',
  place: ({ round, stitch, wedge, bead }) =>
    `Giro ${round}, maglia ${stitch}, spicchio ${wedge}: ${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `Giro ${round}, maglia ${stitch}, spicchio ${wedge}: ${bead}, a mano`,
  steps: {
    bead: 'posare perline',
    line: 'posare una linea',
    ring: 'posare un anello',
    wedge: 'posare uno spicchio',
    patch: 'riempire una macchia',
    away: 'togliere perline',
    move: 'spostare una parte',
    replace: 'posare una perlina per un’altra',
    all: 'togliere tutto ciò che fu posato a mano',
  },
};
