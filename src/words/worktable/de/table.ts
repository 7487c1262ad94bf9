import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('de');

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Teil ohne Namen',
  titleLabel: 'Name des Stücks',
  way: 'Der Weg vom Bild zur Börse',
  mat: 'Die Matte',
  matEmpty: 'Hier liegen Perlen, sobald ein Bild da ist.',
  heap: (n) => `${n} ${form(n, { one: 'Perle', other: 'Perlen' })}`,
  heapHint: 'Perlen; zeigen, wo sie liegen',
  matSum: ({ colours, beads }) =>
    `${colours} ${form(colours, { one: 'Farbe', other: 'Farben' })}, ${beads} ${form(beads, { one: 'Perle', other: 'Perlen' })}`,
  panel: 'Das Teil, Perlseite oben',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Rundes Teil: ${rounds} ${form(rounds, { one: 'Runde', other: 'Runden' })}, ${wedges} ${form(wedges, { one: 'Segment', other: 'Segmente' })}, etwa ${mm} mm breit`,
  panelSize: ({ rounds, cm }) =>
    `${rounds} ${form(rounds, { one: 'Runde', other: 'Runden' })} · ${cm} cm`,
  working: 'Perlen werden ausgesucht …',
  stitch: ({ round, stitch, letter, name }) =>
    `Runde ${round}, Masche ${stitch}: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `Runde ${round}, Masche ${stitch}: ohne Perle`,
  thread: 'Der Faden',
  threadLabel: ({ n }) =>
    `${n} ${form(n, { one: 'Perle', other: 'Perlen' })} in Auffädelreihenfolge; Pfeiltasten gehen daran entlang`,
  length: ({ n, beads, m }) =>
    `Abschnitt ${n}: ${beads} ${form(beads, { one: 'Perle', other: 'Perlen' })}, ${m} m`,
  lengthMark: (n) => `Abschnitt ${n}`,
  roundMark: (r) => `Runde ${r}`,
  mirrored: 'wie man es beim Arbeiten sieht: links und rechts sind vertauscht',
  byRound: 'Das Teil als Text, Runde für Runde',
  roundLine: ({ r, runs }) => `Runde ${r}: ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} ohne Perle`,
  undone: (what) => `Zurückgenommen: ${what}`,
  redone: (what) => `Wieder ausgeführt: ${what}`,
  saved: (file) => `Gespeichert: ${file}`,
  close: 'Schließen',
  keys: 'Tasten',
  keysIntro: 'Alles geht auch mit der Tastatur.',
  more: 'Mehr',
};
