import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('it');

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Pagine',
  intro:
    'Tutto ciò che serve accanto all’uncinetto: schema, lista di infilatura, lista della spesa.',
  bookletHow: 'Un PDF da stampare o da tenere su un tablet.',
  zipHow: 'Uno zip con il libretto, gli schemi, tutte le liste e il modello stesso.',
  making: 'Le pagine si stanno disegnando …',
  waiting: 'Le perline si stanno ancora scegliendo …',
  pages: (n) => `${n} ${form(n, { one: 'pagina', other: 'pagine' })}`,
  pageOf: ({ n, of }) => `Pagina ${n} di ${of}`,
  how: 'Come si stampa',
  language: 'Lingua',
  second: 'Seconda lingua accanto',
  none: 'Nessuna',
  paper: 'Carta',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: 'Chi lo ha fatto',
  licence: 'Che cosa possono farne gli acquirenti',
  date: 'Data',
  contact: 'Dove mandare le correzioni',
  time: 'Quanto dura il lavoro',
  lists: 'Liste',
  listsHow: 'Ognuna come sarà salvata.',
  list: {
    'rounds.txt': 'Giri',
    'stringing.txt': 'Lista di infilatura',
    'shopping.txt': 'Lista della spesa',
    'chart.svg': 'Schema',
  },
  pieces: 'Quanti portamonete',
  printHow: 'Stampare al 100%, o in «dimensioni reali».',
  steps: {
    how: 'come si stampa',
  },
};
