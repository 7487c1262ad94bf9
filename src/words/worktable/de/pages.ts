import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('de');

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Seiten',
  intro: 'Alles, was man neben der Häkelnadel braucht: Zählplan, Auffädelliste, Einkaufsliste.',
  bookletHow: 'Ein PDF zum Drucken oder fürs Tablet.',
  zipHow: 'Ein Zip mit dem Heft, den Zählplänen, allen Listen und der Anleitung selbst.',
  making: 'Die Seiten werden gezeichnet …',
  waiting: 'Die Perlen werden noch ausgesucht …',
  pages: (n) => `${n} ${form(n, { one: 'Seite', other: 'Seiten' })}`,
  pageOf: ({ n, of }) => `Seite ${n} von ${of}`,
  how: 'Wie es gedruckt wird',
  language: 'Sprache',
  second: 'Zweite Sprache daneben',
  none: 'Keine',
  paper: 'Papier',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: 'Wer es gemacht hat',
  licence: 'Was Käufer damit dürfen',
  date: 'Datum',
  contact: 'Wohin Berichtigungen gehen',
  time: 'Wie lange die Arbeit dauert',
  lists: 'Listen',
  listsHow: 'Jede, wie sie gespeichert wird.',
  list: {
    'rounds.txt': 'Runden',
    'stringing.txt': 'Auffädelliste',
    'shopping.txt': 'Einkaufsliste',
    'chart.svg': 'Zählplan',
  },
  pieces: 'Wie viele Börsen',
  printHow: 'Mit 100 % oder in „Originalgröße“ drucken.',
  steps: {
    how: 'wie es gedruckt wird',
  },
};
