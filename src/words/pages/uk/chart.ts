import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, many, short } = numbersIn('uk');
const clockwise = (direction: 1 | -1): string =>
  direction === 1 ? 'за годинниковою стрілкою' : 'проти годинникової стрілки';
const face = (beadsFace: 'away' | 'toward'): string =>
  beadsFace === 'away' ? 'бісер на боці від себе' : 'бісер на боці до себе';
const hand = (one: 'right' | 'left'): string => (one === 'right' ? 'права рука' : 'ліва рука');

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}: клин за клином` : `${f.title}: ${f.panel}, клин за клином`,
  shapeLine: (f) =>
    [
      // M: клин.
      many(f.wedges, { one: 'клин', few: 'клини', many: 'клинів', other: 'клина' }),
      many(f.rounds, { one: 'ряд', few: 'ряди', many: 'рядів', other: 'ряду' }),
      many(f.stitches, { one: 'петля', few: 'петлі', many: 'петель', other: 'петлі' }),
      many(f.beads, { one: 'бісеринка', few: 'бісеринки', many: 'бісеринок', other: 'бісеринки' }),
      `ширина ${fixed(f.acrossMm, 1)} мм`,
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
  direction: 'в’язати сюди',
  faceNote: (f) =>
    `Це бік із бісером, зовнішній бік гаманця. Тут в’язання йде ${clockwise(f.direction)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Під час в’язання видно другий бік, там воно йде ${clockwise(f.direction === 1 ? -1 : 1)}.`
      : 'Під час в’язання видно саме цей бік, бо бісер лежить на боці до себе.',
  construction: {
    spiral: 'Спіраль: кожен ряд переходить у наступний без замикання.',
    joined: 'Замкнені ряди: кожен ряд замикають з’єднувальним стовпчиком, він не намальований.',
  },
  marks: {
    pair: 'Додавання: дві петлі з однієї.',
    number: 'Номер ряду, в його першій петлі.',
    five: 'Кожен 5-й ряд: темний номер, зовні товста лінія.',
    startLine: 'Лінія початку: тут починається кожен ряд.',
  },
  bare: 'Порожня петля, без бісеринки',
  undecided: 'Ще не вирішено',
  wedge: (f) => `Клин ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1 ? 'Кожен рядок читати зліва направо' : 'Кожен рядок читати справа наліво',
  pageOf: (f) => `сторінка ${f.page} з ${f.pages}`,
};
