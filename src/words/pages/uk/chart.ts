import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { many, short, sizeMm } = numbersIn('uk');
const clockwise = (direction: 1 | -1): string =>
  direction === 1 ? 'за годинниковою стрілкою' : 'проти годинникової стрілки';
const face = (beadsFace: 'away' | 'toward'): string =>
  beadsFace === 'away' ? 'бісер із дальшого від вас боку' : 'бісер із ближчого до вас боку';
const hand = (one: 'right' | 'left'): string => (one === 'right' ? 'права рука' : 'ліва рука');

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  // M: клин.
  many(f.wedges, { one: 'клин', few: 'клини', many: 'клинів', other: 'клина' }),
  many(f.rounds, { one: 'ряд', few: 'ряди', many: 'рядів', other: 'ряду' }),
  many(f.stitches, { one: 'петля', few: 'петлі', many: 'петель', other: 'петлі' }),
];

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}: клин за клином` : `${f.title}: ${f.panel}, клин за клином`,
  shapeLine: (f) =>
    [
      ...shapeCounts(f),
      many(f.beads, { one: 'бісеринка', few: 'бісеринки', many: 'бісеринок', other: 'бісеринки' }),
      `ширина ${sizeMm(f.across, 1)} мм`,
    ].join('  ·  '),
  workLine: (f) =>
    [
      `${f.hand === 'right' ? 'Права' : 'Ліва'} рука, ${face(f.beadsFace)}`,
      {
        // M: додавання or прибавка.
        first: 'додавання в першій петлі клина',
        middle: 'додавання в середній петлі клина',
        last: 'додавання в останній петлі клина',
      }[f.increase],
      // L: зсув, how far a stitch sits behind the one below.
      `зсув ${short(f.lean, 3)} петлі`,
      f.construction === 'spiral' ? 'по спіралі' : 'замкнені ряди',
    ].join('  ·  '),
  start: 'початок',
  direction: 'напрямок в’язання',
  faceNote: (f) =>
    `Це бік із бісером, зовнішній бік гаманця. Тут в’язання йде ${clockwise(f.direction)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Під час в’язання видно другий бік, там воно йде ${clockwise(f.direction === 1 ? -1 : 1)}.`
      : 'Під час в’язання видно саме цей бік, бо бісер лежить із ближчого до вас боку.',
  construction: {
    spiral: 'Спіраль: кожен ряд переходить у наступний без замикання.',
    joined: 'Замкнені ряди: кожен ряд замикають з’єднувальним стовпчиком, він не намальований.',
  },
  marks: {
    pair: 'Додавання: дві петлі з однієї.',
    number: 'Номер ряду, перед його першою петлею.',
    tick: 'Рисочки на краю: кожна 10-та петля останнього ряду, рахуючи від першої.',
    five: 'Кожен 5-й ряд: темний номер, зовні товста лінія.',
    startLine: 'Лінія початку: тут починається кожен ряд.',
    join: 'Приєднання: з цієї петлі починається новий відрізок нитки.',
  },
  larger: 'Більші літери: по клинах у wedges.svg і на збільшених аркушах опису в PDF.',
  bare: 'Порожня петля, без бісеринки',
  undecided: 'Ще не вирішено',
  wedge: (f) => `Клин ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1 ? 'Кожен рядок читати зліва направо' : 'Кожен рядок читати справа наліво',
  pageOf: (f) => `сторінка ${f.page} з ${f.pages}`,
};
