import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('es');

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Páginas',
  intro:
    'Todo lo que hace falta junto al ganchillo: esquema, lista de ensartado, lista de compras.',
  bookletHow: 'Un PDF para imprimir o para llevar en una tableta.',
  zipHow: 'Un zip con el cuadernillo, los esquemas, todas las listas y el propio patrón.',
  making: 'Dibujando las páginas …',
  waiting: 'Todavía se están eligiendo los abalorios …',
  pages: (n) => `${n} ${form(n, { one: 'página', other: 'páginas' })}`,
  pageOf: ({ n, of }) => `Página ${n} de ${of}`,
  how: 'Cómo se imprime',
  language: 'Idioma',
  second: 'Segundo idioma al lado',
  none: 'Ninguno',
  paper: 'Papel',
  papers: {
    a4: 'A4',
    letter: 'Carta',
  },
  author: 'Quién lo hizo',
  licence: 'Qué pueden hacer con él los compradores',
  date: 'Fecha',
  contact: 'A dónde enviar correcciones',
  time: 'Cuánto dura la labor',
  lists: 'Listas',
  listsHow: 'Cada una tal como se guardará.',
  list: {
    'rounds.txt': 'Vueltas',
    'stringing.txt': 'Lista de ensartado',
    'shopping.txt': 'Lista de compras',
    'chart.svg': 'Esquema',
  },
  pieces: 'Cuántos monederos',
  printHow: 'Imprimir al 100 %, o en «tamaño real».',
  steps: {
    how: 'cómo se imprime',
  },
};
