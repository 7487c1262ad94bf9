import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('pl');

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Strony',
  intro: 'Wszystko, czego trzeba obok szydełka: schemat, lista nawlekania, lista zakupów.',
  bookletHow: 'PDF do wydrukowania lub na tablet.',
  zipHow: 'Jeden zip z broszurą, schematami, wszystkimi listami i samym wzorem.',
  making: 'Rysuję strony …',
  waiting: 'Koraliki są jeszcze dobierane …',
  pages: (n) => `${n} ${form(n, { one: 'strona', few: 'strony', many: 'stron', other: 'strony' })}`,
  pageOf: ({ n, of }) => `Strona ${n} z ${of}`,
  how: 'Jak się drukuje',
  language: 'Język',
  second: 'Drugi język obok',
  none: 'Żaden',
  paper: 'Papier',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: 'Kto to zrobił',
  licence: 'Co wolno kupującym',
  date: 'Data',
  contact: 'Dokąd wysyłać poprawki',
  time: 'Ile trwa praca',
  lists: 'Listy',
  listsHow: 'Każda tak, jak zostanie zapisana.',
  list: {
    'rounds.txt': 'Okrążenia',
    'stringing.txt': 'Lista nawlekania',
    'shopping.txt': 'Lista zakupów',
    'chart.svg': 'Schemat',
  },
  pieces: 'Ile portmonetek',
  printHow: 'Drukować w skali 100%, czyli w rozmiarze rzeczywistym.',
  steps: {
    how: 'jak się drukuje',
  },
};
