import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { fixed, many, sizeInches, sizeMm } = numbersIn('ru');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  subject: 'Описание круглой детали, связанной крючком с бисером',
  kind: 'Описание: круглая деталь крючком с бисером',
  size: (f) =>
    `Ширина готовой детали около ${sizeMm(f.across, 0)} мм (${sizeInches(f.across)} дюйма)`,
  sizeFrom: {
    swatch: 'по образцу автора описания',
    model: 'оценка, пока не связан образец',
  },
  amounts: (f) =>
    [
      f.panels === 1
        ? '1 деталь, вяжется дважды'
        : many(f.panels, { one: 'деталь', few: 'детали', many: 'деталей', other: 'детали' }),
      many(f.rounds, { one: 'ряд', few: 'ряда', many: 'рядов', other: 'ряда' }),
      lists.beads(f.beads),
      many(f.colours, { one: 'цвет', few: 'цвета', many: 'цветов', other: 'цвета' }),
    ].join('  ·  '),
  by: (author) => `автор: ${author}`,

  panelNames: { front: 'перед', back: 'спинка' },
  pageOf: (f) => `${f.page} из ${f.pages}`,
  panel: (f) => `деталь «${f.panel}»`,
  // M: отрезок, one strung thread of several.
  length: (f) => `отрезок ${f.length} из ${f.lengths}`,
  continued: (heading) => `${heading}, продолжение`,
  parts: {
    cover: 'Обложка',
    materials: 'Материалы и инструменты',
    before: 'Перед началом',
    chart: 'Схема',
    rounds: 'Ряд за рядом',
    stringing: 'Нанизывание',
    making: 'Сборка',
    lining: 'Выкройка подкладки',
    cautions: 'Осторожно',
    last: 'Об этом описании',
  },
  ofPanel: (f) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Бисер',
    columns: {
      bead: 'Буква',
      name: 'Название',
      id: 'Код',
      charted: (panels) => (panels === 1 ? 'На схеме' : 'На обеих схемах'),
      reserve: 'На кошелёк, с запасом',
      grams: 'Нужно, г',
    },
    total: 'Весь бисер',
    unknownGrams: '–',
    onePanel:
      'Схема — это одна деталь. У кошелька их две: числа с запасом — на перед и такую же спинку.',
    twoPanels: 'У кошелька две детали, и в этом описании есть обе.',
    thread: 'Нить',
    estimate:
      'Расход нити на петлю у всех разный: отметить на нити метр, провязать его, сосчитать петли и исправить это число до покупки.',
    ownFigure: 'Расход нити на петлю — собственное число автора описания.',
    tools: 'Инструменты, фермуар, подкладка',
  },

  before,

  rounds: {
    round: 'Ряд',
    work: 'Вязать',
    stitches: 'Петли',
    beads: 'Бисер',
    total: 'Всего бисера',
    how: 'Считать, когда ряд закончен: последний столбец говорит, сколько бисерин провязано до его конца.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, часть: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `всего ${lists.number(total)}`,
    totalGrams: (f) => `всего ${lists.number(f.total)} · ${fixed(f.grams, 1)} г`,
    weigh:
      'Граммы рядом с суммой — это вес бисера, нанизанного до этого места: взвесить нить до начала и вычесть её вес. Весы должны показывать десятые доли грамма; бисерины из одной банки весят по-разному, поэтому решает счёт.',
    tickOne:
      'В каждой строке слева направо. Отмечать квадратик, когда его строка на нити, и считать при каждой сумме.',
    tick: 'Сначала левый столбец вниз, потом правый; в каждой строке слева направо. Отмечать квадратик, когда его строка на нити, и считать при каждой сумме.',
    weight: (f) =>
      `Всего ${lists.beads(f.beads)}; нанизанный бисер весит без нити около ${fixed(f.grams, 1)} г и занимает около ${fixed(f.metres, 2)} м. Чтобы его провязать, нужно около ${fixed(f.threadM, 1)} м нити, с концами и запасом.`,
    noWeight: (f) =>
      `Всего ${lists.beads(f.beads)}; нанизанный бисер занимает около ${fixed(f.metres, 2)} м. Чтобы его провязать, нужно около ${fixed(f.threadM, 1)} м нити, с концами и запасом.`,
    rounds: (f) =>
      f.first === f.last ? `Для ряда ${f.first}.` : `Для рядов с ${f.first} по ${f.last}.`,
    first: 'Первую бисерину этого списка нанизывают первой, а провязывают последней.',
    nothing: 'Ни одна бисерина ещё не выбрана, так что нанизывать нечего.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Название',
    author: 'Автор',
    date: 'Дата этого издания',
    licence: 'Лицензия',
    noLicence:
      'Не указана. Спросить автора, прежде чем передавать описание или продавать связанное по нему.',
    version: 'Версия',
    versionText: (f) => `Сделано в Rondure ${f.program}, формат описания ${f.format}`,
    figures: 'Числа',
    figuresText:
      'Количество бисерин точное. Граммы, длина нити, размеры и инструменты — оценки, пока не связан образец; то, что названо обычным, — обычная практика или сведения по памяти, без опубликованного источника.',
    read: 'Чтение вслух',
    readText:
      'Все списки в этой брошюре — текст, который можно искать, копировать и слушать. У каждой бисерины есть буква, так что различать цвета не нужно.',
  },
};
