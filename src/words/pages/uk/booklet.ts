import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { fixed, many, sizeInches, sizeMm } = numbersIn('uk');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  subject: 'Опис круглої деталі, зв’язаної гачком з бісером',
  kind: 'Опис: кругла деталь гачком із бісером',
  size: (f) =>
    `Ширина готової деталі близько ${sizeMm(f.across, 0)} мм (${sizeInches(f.across)} дюйма)`,
  sizeFrom: {
    swatch: 'за зразком автора',
    model: 'орієнтовно, доки не зв’язано зразок',
  },
  amounts: (f) =>
    [
      f.panels === 1
        ? '1 деталь, в’яжеться двічі'
        : many(f.panels, { one: 'деталь', few: 'деталі', many: 'деталей', other: 'деталі' }),
      many(f.rounds, { one: 'ряд', few: 'ряди', many: 'рядів', other: 'ряду' }),
      lists.beads(f.beads),
      many(f.colours, { one: 'колір', few: 'кольори', many: 'кольорів', other: 'кольору' }),
    ].join('  ·  '),
  by: (author) => `автор: ${author}`,

  panelNames: { front: 'перед', back: 'спинка' },
  pageOf: (f) => `${f.page} з ${f.pages}`,
  panel: (f) => `деталь «${f.panel}»`,
  // M: відрізок, one strung thread of several.
  length: (f) => `відрізок ${f.length} з ${f.lengths}`,
  continued: (heading) => `${heading}, продовження`,
  parts: {
    cover: 'Обкладинка',
    materials: 'Матеріали та інструменти',
    before: 'Перед початком',
    chart: 'Схема',
    rounds: 'Ряд за рядом',
    // M: порядок нанизування.
    stringing: 'Нанизування',
    making: 'Складання',
    lining: 'Викрійка підкладки',
    cautions: 'Обережно',
    last: 'Про цей опис',
  },
  ofPanel: (f) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Бісер',
    columns: {
      bead: 'Літ.',
      name: 'Назва',
      id: 'Код',
      charted: (panels) => (panels === 1 ? 'На схемі' : 'На обох схемах'),
      reserve: 'На гаманець, із запасом',
      grams: 'Треба, г',
    },
    total: 'Увесь бісер',
    unknownGrams: '–',
    onePanel:
      'Схема — це одна деталь. У гаманця їх дві: числа із запасом — на перед і таку саму спинку.',
    twoPanels: 'У гаманця дві деталі, і в цьому описі є обидві.',
    thread: 'Нитка',
    estimate:
      'Витрата нитки на петлю в кожної руки своя: позначити метр, пров’язати його, порахувати петлі й виправити це число до покупки.',
    ownFigure: 'Витрата нитки на петлю — власне число автора опису.',
    tools: 'Інструменти, фермуар, підкладка',
  },

  before,

  rounds: {
    round: 'Ряд',
    work: 'В’язати',
    stitches: 'Петлі',
    beads: 'Бісер',
    total: 'Усього бісеру',
    how: 'Рахувати, коли ряд закінчено: останній стовпець каже, скільки бісеринок пров’язано до його кінця.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, частина: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `усього ${lists.number(total)}`,
    totalGrams: (f) => `усього ${lists.number(f.total)} · ${fixed(f.grams, 1)} г`,
    weigh:
      'Грами поруч із сумою — це вага бісеру, нанизаного до цього місця: зважити нитку до початку й відняти її вагу. Ваги мають показувати десяті частки грама; бісеринки з однієї баночки важать по-різному, тому вирішує лічба.',
    tickOne:
      'У кожному рядку зліва. Позначати квадратик, коли його рядок на нитці, і рахувати при кожній сумі.',
    tick: 'Спершу лівий стовпець донизу, потім правий; у кожному рядку зліва. Позначати квадратик, коли його рядок на нитці, і рахувати при кожній сумі.',
    weight: (f) =>
      `Усього ${lists.beads(f.beads)}; нанизані, без нитки: вага близько ${fixed(f.grams, 1)} г, довжина близько ${fixed(f.metres, 2)} м. Щоб їх пров’язати, потрібно близько ${fixed(f.threadM, 1)} м нитки, з кінцями й запасом.`,
    noWeight: (f) =>
      `Усього ${lists.beads(f.beads)}, нанизані — близько ${fixed(f.metres, 2)} м. Щоб їх пров’язати, потрібно близько ${fixed(f.threadM, 1)} м нитки, з кінцями й запасом.`,
    rounds: (f) =>
      f.first === f.last ? `Для ряду ${f.first}.` : `Для рядів з ${f.first} по ${f.last}.`,
    first: 'Першу бісеринку цього списку нанизують першою, а пров’язують останньою.',
    nothing: 'Жодної бісеринки ще не вибрано, тож нанизувати нічого.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Назва',
    author: 'Автор',
    date: 'Дата цього видання',
    licence: 'Ліцензія',
    noLicence:
      'Не зазначена. Запитати автора, перш ніж передавати опис далі або продавати зв’язане за ним.',
    version: 'Версія',
    versionText: (f) => `Зроблено в Rondure ${f.program}, формат опису ${f.format}`,
    figures: 'Числа',
    figuresText:
      'Кількість бісеринок точна. Грами, довжина нитки, розміри й інструменти — орієнтовні, доки не зв’язано зразок; те, що назване звичайним, — звичайна практика або відомості з пам’яті, без опублікованого джерела.',
    read: 'Щоб читати вголос',
    readText:
      'Усі списки в цій брошурі — текст, який можна шукати, копіювати й слухати. У кожної бісеринки є літера, тож розрізняти кольори не потрібно.',
  },
};
