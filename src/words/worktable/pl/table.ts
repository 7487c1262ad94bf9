import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('pl');

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Panel bez nazwy',
  titleLabel: 'Nazwa pracy',
  way: 'Droga od obrazu do portmonetki',
  mat: 'Mata',
  matEmpty: 'Koraliki pojawią się tu, gdy tylko będzie obraz.',
  heap: (n) =>
    `${n} ${form(n, { one: 'koralik', few: 'koraliki', many: 'koralików', other: 'koralika' })}`,
  heapHint: 'koraliki; pokaż, gdzie leżą',
  matSum: ({ colours, beads }) =>
    `${colours} ${form(colours, { one: 'kolor', few: 'kolory', many: 'kolorów', other: 'koloru' })}, ${beads} ${form(beads, { one: 'koralik', few: 'koraliki', many: 'koralików', other: 'koralika' })}`,
  panel: 'Panel, stroną z koralikami do góry',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Okrągły panel: ${rounds} ${form(rounds, { one: 'okrążenie', few: 'okrążenia', many: 'okrążeń', other: 'okrążenia' })}, ${wedges} ${form(wedges, { one: 'klin', few: 'kliny', many: 'klinów', other: 'klina' })}, szerokość około ${mm} mm`,
  panelSize: ({ rounds, cm }) =>
    `${rounds} ${form(rounds, { one: 'okrążenie', few: 'okrążenia', many: 'okrążeń', other: 'okrążenia' })} · ${cm} cm`,
  working: 'Dobieram koraliki …',
  stitch: ({ round, stitch, letter, name }) =>
    `Okrążenie ${round}, oczko ${stitch}: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `Okrążenie ${round}, oczko ${stitch}: bez koralika`,
  thread: 'Nić',
  threadLabel: ({ n }) =>
    `${n} ${form(n, { one: 'koralik', few: 'koraliki', many: 'koralików', other: 'koralika' })} w kolejności nawlekania; strzałki prowadzą wzdłuż niej`,
  length: ({ n, beads, m }) =>
    `Odcinek ${n}: ${beads} ${form(beads, { one: 'koralik', few: 'koraliki', many: 'koralików', other: 'koralika' })}, ${m} m`,
  lengthMark: (n) => `odcinek ${n}`,
  roundMark: (r) => `okrążenie ${r}`,
  mirrored: 'jak widać przy pracy: lewa i prawa zamieniają się miejscami',
  byRound: 'Panel jako tekst, okrążenie po okrążeniu',
  roundLine: ({ r, runs }) => `Okrążenie ${r}: ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} bez koralika`,
  undone: (what) => `Cofnięto: ${what}`,
  redone: (what) => `Ponowiono: ${what}`,
  saved: (file) => `Zapisano: ${file}`,
  close: 'Zamknij',
  keys: 'Klawisze',
  keysIntro: 'Wszystko da się zrobić także z klawiatury.',
  more: 'Więcej',
};
