import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('ru');

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Деталь без названия',
  titleLabel: 'Название работы',
  way: 'Путь от картинки к кошельку',
  mat: 'Коврик',
  matEmpty: 'Бисер ляжет сюда, как только появится картинка.',
  heap: (n) =>
    `${n} ${form(n, { one: 'бисерина', few: 'бисерины', many: 'бисерин', other: 'бисерины' })}`,
  heapHint: 'бисер; показать, где он лежит',
  matSum: ({ colours, beads }) =>
    `${colours} ${form(colours, { one: 'цвет', few: 'цвета', many: 'цветов', other: 'цвета' })}, ${beads} ${form(beads, { one: 'бисерина', few: 'бисерины', many: 'бисерин', other: 'бисерины' })}`,
  panel: 'Деталь, бисером вверх',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Круглая деталь: ${rounds} ${form(rounds, { one: 'ряд', few: 'ряда', many: 'рядов', other: 'ряда' })}, ${wedges} ${form(wedges, { one: 'клин', few: 'клина', many: 'клиньев', other: 'клина' })}, около ${mm} мм в ширину`,
  panelSize: ({ rounds, cm }) =>
    `${rounds} ${form(rounds, { one: 'ряд', few: 'ряда', many: 'рядов', other: 'ряда' })} · ${cm} см`,
  working: 'Подбираю бисер …',
  stitch: ({ round, stitch, letter, name }) => `Ряд ${round}, петля ${stitch}: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `Ряд ${round}, петля ${stitch}: без бисера`,
  thread: 'Нить',
  threadLabel: ({ n }) =>
    `${n} ${form(n, { one: 'бисерина', few: 'бисерины', many: 'бисерин', other: 'бисерины' })} в порядке нанизывания; стрелки ведут вдоль неё`,
  length: ({ n, beads, m }) =>
    `Отрезок ${n}: ${beads} ${form(beads, { one: 'бисерина', few: 'бисерины', many: 'бисерин', other: 'бисерины' })}, ${m} м`,
  lengthMark: (n) => `отрезок ${n}`,
  roundMark: (r) => `ряд ${r}`,
  mirrored: 'как видно за работой: лево и право меняются местами',
  byRound: 'Деталь текстом, ряд за рядом',
  roundLine: ({ r, runs }) => `Ряд ${r}: ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} без бисера`,
  undone: (what) => `Отменено: ${what}`,
  redone: (what) => `Выполнено снова: ${what}`,
  saved: (file) => `Сохранено: ${file}`,
  close: 'Закрыть',
  keys: 'Клавиши',
  keysIntro: 'Всё можно сделать и с клавиатуры.',
  more: 'Ещё',
};
