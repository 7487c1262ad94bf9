import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('cs');

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Stránky',
  intro: 'Všechno, co potřebujete vedle háčku: schéma, seznam navlékání, nákupní seznam.',
  bookletHow: 'PDF k vytištění nebo do tabletu.',
  zipHow: 'Jeden zip se sešitem, schématy, všemi seznamy a samotným návodem.',
  making: 'Kreslím stránky …',
  waiting: 'Korálky se ještě vybírají …',
  pages: (n) => `${n} ${form(n, { one: 'stránka', few: 'stránky', other: 'stránek' })}`,
  pageOf: ({ n, of }) => `Strana ${n} z ${of}`,
  how: 'Jak se tiskne',
  language: 'Jazyk',
  second: 'Vedle něj druhý jazyk',
  none: 'Žádný',
  paper: 'Papír',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: 'Kdo ho vytvořil',
  licence: 'Co s ním kupující smějí',
  date: 'Datum',
  contact: 'Kam psát opravy',
  time: 'Jak dlouho práce trvá',
  lists: 'Seznamy',
  listsHow: 'Každý tak, jak se uloží.',
  list: {
    'rounds.txt': 'Kola',
    'stringing.txt': 'Seznam navlékání',
    'shopping.txt': 'Nákupní seznam',
    'chart.svg': 'Schéma',
  },
  pieces: 'Kolik peněženek',
  printHow: 'Tiskněte na 100 %, neboli ve skutečné velikosti.',
  steps: {
    how: 'jak se tiskne',
  },
};
