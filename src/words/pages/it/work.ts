import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('it');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: 'Indice',
  glance: 'Il lavoro in breve',
  steps: {
    gather: 'Preparare perline, filo e attrezzi',
    swatch: 'Lavorare un campione e misurarlo',
    string: (f) => (f.lengths === 1 ? 'Infilare le perline' : `Infilare il tratto ${f.length}`),
    rounds: (f) =>
      f.first === f.last
        ? `Lavorare il giro ${f.first}`
        : `Lavorare i giri da ${f.first} a ${f.last}`,
    again: 'Lavorare lo stesso pannello un’altra volta',
    seam: 'Cucire insieme i pannelli',
    frame: 'Fissare il borsellino nella montatura',
    lining: 'Foderarlo',
  },
  print: 'Prima di stampare',
  printText: (f) =>
    `Stampare al 100 %, senza adattare alla pagina. Ogni lato di questo quadrato deve misurare ${f.side}. Altrimenti niente di ciò che in questo libretto è a grandezza naturale è giusto: impostare la stampante al 100 % o su «dimensioni effettive» e stampare di nuovo.`,
  stop: 'Stop',
  seePage: (f) => `Vedi pagina ${f.page}.`,
  part: 'Infilare e lavorare',
  heads: { string: 'Perline da infilare', total: 'Totale', grams: 'g', count: 'Perline' },
  tick: (f) =>
    `Ogni riga${f.brackets ? ', e ogni ripetizione di una parte tra parentesi,' : ''} ha una casella: spuntarla quando le sue perline sono sul filo. Più di 20 perline uguali sono divise in decine. Il totale in fondo alla riga conta le perline di questo tratto fin lì.`,
  twoBoxes: 'Due caselle affiancate: una per ogni pannello.',
  roundsTick:
    'Una sottile linea verticale separa gli spicchi. Spuntare la casella quando il giro è finito; il suo totale è quello di tutte le perline lavorate fin lì.',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)} vuol dire ${count(f.beads)} perline in ${count(f.stitches)} maglie; le altre sono senza.`,
  round: (round) => `Giro ${round}`,
  working: {
    part: 'Schema come si vede lavorando',
    note: (f) =>
      `Questa è la faccia che si guarda mentre si lavora, girata come sta in mano: l’inizio è in alto e il lavoro procede verso ${f.hand === 'right' ? 'sinistra' : 'destra'}, allontanandosi dall’uncinetto.${f.mirrored ? ' Le perline stanno dietro, perciò il disegno è rovesciato rispetto al borsellino finito.' : ''}`,
    wedges: 'I numeri cerchiati contano gli spicchi nel senso di lavorazione.',
    hook: 'uncinetto',
    use: 'Mentre si lavora, seguire lo schema come si vede lavorando; confrontare il pannello finito con lo schema della faccia delle perline.',
  },
  sector: {
    name: (f) => (f.from === f.to ? `spicchio ${f.from}` : `spicchi da ${f.from} a ${f.to}`),
    how: 'Le perline pallide ai lati sono degli spicchi vicini. I numeri stanno davanti alla prima maglia di ogni giro.',
  },
  time: (f) => `Tempo: ${f.time}`,
  rights: {
    title: 'Diritti',
    none: 'Questo libretto non indica né autore né licenza. Tenerlo per uso proprio finché la persona da cui proviene non dice che cos’altro è permesso.',
    authorOnly: (f) =>
      `Il modello è di ${f.author}, che non indica nessuna licenza. Chiedere prima di darlo ad altri o di vendere i lavori realizzati.`,
    contact: 'Correzioni',
    contactText: (f) => `C’è un errore o qualcosa di poco chiaro? Scrivere a ${f.contact}.`,
  },
  yours: {
    title: 'Il mio borsellino',
    madeFor: 'Fatto per',
    begun: 'Iniziato',
    finished: 'Finito',
    swatch: 'Il mio campione',
    bead: 'Perline',
    thread: 'Filo',
    hook: 'Uncinetto',
    after: (f) => `Larghezza dopo ${f.rounds} giri`,
    notes: 'Note',
  },
  alt: {
    square: 'Un quadrato per controllare la stampa.',
    photo: 'Fotografia del lavoro finito.',
    purse: (f) => `Disegno del borsellino chiuso nella montatura: ${f.panel}.`,
    working:
      'Schema del pannello come si vede lavorando. La lista dei giri dice lo stesso a parole, e i materiali spiegano le lettere.',
    sector: (f) => `Schema ingrandito, ${f.wedges}. La lista dei giri dice lo stesso a parole.`,
  },
  listing: {
    size: 'Misura',
    level: 'Livello',
    beads: 'Perline',
    tools: 'Occorrono anche',
    file: 'Nel file',
    fileText: (f) =>
      `Un PDF, ${f.pages} pagine, ${f.paper}, ${f.languages}. Vi si può cercare e si può far leggere ad alta voce; ogni perlina ha una lettera, così non occorre distinguere i colori.`,
    digital: 'È un modello da scaricare e stampare. Perline e attrezzi non sono compresi.',
  },
};
