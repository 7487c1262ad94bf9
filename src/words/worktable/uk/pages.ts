import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('uk');

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Сторінки',
  intro: 'Усе, що потрібно поруч із гачком: схема, список нанизування, список покупок.',
  bookletHow: 'PDF, щоб надрукувати або тримати на планшеті.',
  zipHow: 'Один zip із брошурою, схемами, усіма списками й самим описом.',
  making: 'Малюю сторінки …',
  waiting: 'Бісер ще добирається …',
  pages: (n) =>
    `${n} ${form(n, { one: 'сторінка', few: 'сторінки', many: 'сторінок', other: 'сторінки' })}`,
  pageOf: ({ n, of }) => `Сторінка ${n} з ${of}`,
  how: 'Як друкувати',
  language: 'Мова',
  second: 'Друга мова поруч',
  none: 'Немає',
  paper: 'Папір',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: 'Хто зробив',
  licence: 'Що можна покупцям',
  date: 'Дата',
  contact: 'Куди писати про помилки',
  time: 'Скільки часу займе робота',
  lists: 'Списки',
  listsHow: 'Кожен таким, як він збережеться.',
  list: {
    'rounds.txt': 'Ряди',
    'stringing.txt': 'Список нанизування',
    'shopping.txt': 'Список покупок',
    'chart.svg': 'Схема',
  },
  pieces: 'Скільки гаманців',
  printHow: 'Друкувати в масштабі 100 %, тобто в натуральну величину.',
  steps: {
    how: 'як друкувати',
  },
};
