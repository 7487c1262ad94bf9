import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('cs');

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Díl bez názvu',
  titleLabel: 'Název práce',
  way: 'Cesta od obrázku k peněžence',
  mat: 'Podložka',
  matEmpty: 'Korálky se sem položí, jakmile tu bude obrázek.',
  heap: (n) => `${n} ${form(n, { one: 'korálek', few: 'korálky', other: 'korálků' })}`,
  heapHint: 'korálky; ukázat, kde leží',
  matSum: ({ colours, beads }) =>
    `${colours} ${form(colours, { one: 'barva', few: 'barvy', other: 'barev' })}, ${beads} ${form(beads, { one: 'korálek', few: 'korálky', other: 'korálků' })}`,
  panel: 'Díl, korálkovou stranou nahoru',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Kulatý díl: ${rounds} ${form(rounds, { one: 'kolo', few: 'kola', other: 'kol' })}, ${wedges} ${form(wedges, { one: 'klín', few: 'klíny', other: 'klínů' })}, průměr asi ${mm} mm`,
  panelSize: ({ rounds, cm }) =>
    `${rounds} ${form(rounds, { one: 'kolo', few: 'kola', other: 'kol' })} · ${cm} cm`,
  working: 'Vybírám korálky …',
  stitch: ({ round, stitch, letter, name }) => `Kolo ${round}, očko ${stitch}: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `Kolo ${round}, očko ${stitch}: bez korálku`,
  thread: 'Nit',
  threadLabel: ({ n }) =>
    `${n} ${form(n, { one: 'korálek', few: 'korálky', other: 'korálků' })} v pořadí navlékání; šipkami se po ní jde`,
  length: ({ n, beads, m }) =>
    `Úsek ${n}: ${beads} ${form(beads, { one: 'korálek', few: 'korálky', other: 'korálků' })}, ${m} m`,
  lengthMark: (n) => `úsek ${n}`,
  roundMark: (r) => `kolo ${r}`,
  mirrored: 'jak to vidíte při práci: vlevo a vpravo si mění místo',
  byRound: 'Díl jako text, kolo po kole',
  roundLine: ({ r, runs }) => `Kolo ${r}: ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} bez korálku`,
  undone: (what) => `Vráceno zpět: ${what}`,
  redone: (what) => `Provedeno znovu: ${what}`,
  saved: (file) => `Uloženo: ${file}`,
  close: 'Zavřít',
  keys: 'Klávesy',
  keysIntro: 'Všechno jde i z klávesnice.',
  more: 'Více',
};
