import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('uk');

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Деталь без назви',
  titleLabel: 'Назва роботи',
  way: 'Шлях від картинки до гаманця',
  mat: 'Килимок',
  matEmpty: 'Бісер ляже сюди, щойно з’явиться картинка.',
  heap: (n) =>
    `${n} ${form(n, { one: 'бісеринка', few: 'бісеринки', many: 'бісеринок', other: 'бісеринки' })}`,
  heapHint: 'бісер; показати, де він лежить',
  matSum: ({ colours, beads }) =>
    `${colours} ${form(colours, { one: 'колір', few: 'кольори', many: 'кольорів', other: 'кольору' })}, ${beads} ${form(beads, { one: 'бісеринка', few: 'бісеринки', many: 'бісеринок', other: 'бісеринки' })}`,
  panel: 'Деталь, бісером догори',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Кругла деталь: ${rounds} ${form(rounds, { one: 'ряд', few: 'ряди', many: 'рядів', other: 'ряду' })}, ${wedges} ${form(wedges, { one: 'клин', few: 'клини', many: 'клинів', other: 'клина' })}, близько ${mm} мм завширшки`,
  panelSize: ({ rounds, cm }) =>
    `${rounds} ${form(rounds, { one: 'ряд', few: 'ряди', many: 'рядів', other: 'ряду' })} · ${cm} см`,
  working: 'Добираю бісер …',
  stitch: ({ round, stitch, letter, name }) => `Ряд ${round}, петля ${stitch}: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `Ряд ${round}, петля ${stitch}: без бісеру`,
  thread: 'Нитка',
  threadLabel: ({ n }) =>
    `${n} ${form(n, { one: 'бісеринка', few: 'бісеринки', many: 'бісеринок', other: 'бісеринки' })} у порядку нанизування; стрілки ведуть уздовж неї`,
  length: ({ n, beads, m }) =>
    `Відрізок ${n}: ${beads} ${form(beads, { one: 'бісеринка', few: 'бісеринки', many: 'бісеринок', other: 'бісеринки' })}, ${m} м`,
  lengthMark: (n) => `відрізок ${n}`,
  roundMark: (r) => `ряд ${r}`,
  mirrored: 'як видно за роботою: ліво й право міняються місцями',
  byRound: 'Деталь текстом, ряд за рядом',
  roundLine: ({ r, runs }) => `Ряд ${r}: ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} без бісеру`,
  undone: (what) => `Скасовано: ${what}`,
  redone: (what) => `Виконано знову: ${what}`,
  saved: (file) => `Збережено: ${file}`,
  close: 'Закрити',
  keys: 'Клавіші',
  keysIntro: 'Усе можна зробити й із клавіатури.',
  more: 'Більше',
};
