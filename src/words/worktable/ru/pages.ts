import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('ru');

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Страницы',
  intro: 'Всё, что нужно рядом с крючком: схема, список нанизывания, список покупок.',
  bookletHow: 'PDF, чтобы напечатать или держать на планшете.',
  zipHow: 'Один zip с брошюрой, схемами, всеми списками и самим описанием.',
  making: 'Рисую страницы …',
  waiting: 'Бисер ещё подбирается …',
  pages: (n) =>
    `${n} ${form(n, { one: 'страница', few: 'страницы', many: 'страниц', other: 'страницы' })}`,
  pageOf: ({ n, of }) => `Страница ${n} из ${of}`,
  how: 'Как печатать',
  language: 'Язык',
  second: 'Второй язык рядом',
  none: 'Нет',
  paper: 'Бумага',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: 'Кто сделал',
  licence: 'Что можно покупателям',
  date: 'Дата',
  contact: 'Куда писать об ошибках',
  time: 'Сколько времени займёт работа',
  lists: 'Списки',
  listsHow: 'Каждый таким, как он сохранится.',
  list: {
    'rounds.txt': 'Ряды',
    'stringing.txt': 'Список нанизывания',
    'shopping.txt': 'Список покупок',
    'chart.svg': 'Схема',
  },
  pieces: 'Сколько кошельков',
  printHow: 'Печатать в масштабе 100 %, то есть в натуральную величину.',
  steps: {
    how: 'как печатать',
  },
};
