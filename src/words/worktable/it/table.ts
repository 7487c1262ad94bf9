import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('it');

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Pannello senza nome',
  titleLabel: 'Nome del lavoro',
  way: 'La via dall’immagine al portamonete',
  mat: 'Il tappetino',
  matEmpty: 'Le perline verranno qui appena c’è un’immagine.',
  heap: (n) => `${n} ${form(n, { one: 'perlina', other: 'perline' })}`,
  heapHint: 'perline; mostra dove sono',
  matSum: ({ colours, beads }) =>
    `${colours} ${form(colours, { one: 'colore', other: 'colori' })}, ${beads} ${form(beads, { one: 'perlina', other: 'perline' })}`,
  panel: 'Il pannello, lato delle perline in su',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Pannello rotondo: ${rounds} ${form(rounds, { one: 'giro', other: 'giri' })}, ${wedges} ${form(wedges, { one: 'spicchio', other: 'spicchi' })}, largo circa ${mm} mm`,
  panelSize: ({ rounds, cm }) =>
    `${rounds} ${form(rounds, { one: 'giro', other: 'giri' })} · ${cm} cm`,
  working: 'Scelta delle perline …',
  stitch: ({ round, stitch, letter, name }) =>
    `Giro ${round}, maglia ${stitch}: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `Giro ${round}, maglia ${stitch}: senza perlina`,
  thread: 'Il filo',
  threadLabel: ({ n }) =>
    `${n} ${form(n, { one: 'perlina', other: 'perline' })} in ordine di infilatura; le frecce lo percorrono`,
  length: ({ n, beads, m }) =>
    `Tratto ${n}: ${beads} ${form(beads, { one: 'perlina', other: 'perline' })}, ${m} m`,
  lengthMark: (n) => `tratto ${n}`,
  roundMark: (r) => `giro ${r}`,
  mirrored: 'come si vede lavorando: sinistra e destra si scambiano',
  byRound: 'Il pannello come testo, giro per giro',
  roundLine: ({ r, runs }) => `Giro ${r}: ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} senza perlina`,
  undone: (what) => `Annullato: ${what}`,
  redone: (what) => `Ripetuto: ${what}`,
  saved: (file) => `Salvato: ${file}`,
  close: 'Chiudi',
  keys: 'Tasti',
  keysIntro: 'Tutto si può fare anche con la tastiera.',
  more: 'Altro',
};
