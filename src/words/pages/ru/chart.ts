import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { many, short, sizeMm } = numbersIn('ru');
const clockwise = (direction: 1 | -1): string =>
  direction === 1 ? 'по часовой стрелке' : 'против часовой стрелки';
// M: от себя / к себе, of the face the beads lie on.
const face = (beadsFace: 'away' | 'toward'): string =>
  beadsFace === 'away' ? 'бисер на дальней от вас стороне' : 'бисер на ближней к вам стороне';
const hand = (one: 'right' | 'left'): string => (one === 'right' ? 'правая рука' : 'левая рука');

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts = (f: { wedges: number; rounds: number; stitches: number }): string[] => [
  many(f.wedges, { one: 'клин', few: 'клина', many: 'клиньев', other: 'клина' }),
  many(f.rounds, { one: 'ряд', few: 'ряда', many: 'рядов', other: 'ряда' }),
  many(f.stitches, { one: 'петля', few: 'петли', many: 'петель', other: 'петли' }),
];

/** What stands on charts. */
export const chart: PageWords['chart'] = {
  chartTitle: (f) => (f.panel === undefined ? f.title : `${f.title}: ${f.panel}`),
  wedgesTitle: (f) =>
    f.panel === undefined ? `${f.title}: клин за клином` : `${f.title}: ${f.panel}, клин за клином`,
  shapeLine: (f) =>
    [
      ...shapeCounts(f),
      many(f.beads, { one: 'бисерина', few: 'бисерины', many: 'бисерин', other: 'бисерины' }),
      `ширина ${sizeMm(f.across, 1)} мм`,
    ].join('  ·  '),
  workLine: (f) =>
    [
      `${f.hand === 'right' ? 'Правая' : 'Левая'} рука, ${f.beadsFace === 'away' ? 'бисер от себя' : 'бисер к себе'}`,
      {
        first: 'прибавка в первой петле клина',
        middle: 'прибавка в средней петле клина',
        last: 'прибавка в последней петле клина',
      }[f.increase],
      // L: сдвиг, how far a stitch sits behind the one below.
      `сдвиг ${short(f.lean, 3)} петли`,
      f.construction === 'spiral' ? 'по спирали' : 'замкнутые ряды',
    ].join('  ·  '),
  start: 'начало',
  direction: 'направление вязания',
  faceNote: (f) =>
    `Это сторона с бисером, наружная сторона кошелька. Здесь вязание идёт ${clockwise(f.direction)} (${hand(f.hand)}, ${face(f.beadsFace)}).`,
  workerNote: (f) =>
    f.beadsFace === 'away'
      ? `Во время вязания видна другая сторона, там оно идёт ${clockwise(f.direction === 1 ? -1 : 1)}.`
      : 'Во время вязания видна эта же сторона, так как бисер лежит на ближней к вам стороне.',
  construction: {
    spiral: 'Спираль: каждый ряд переходит в следующий без замыкания.',
    joined: 'Замкнутые ряды: каждый ряд замыкают соединительным столбиком, он не нарисован.',
  },
  marks: {
    pair: 'Прибавка: две петли из одной.',
    number: 'Номер ряда, перед его первой петлёй.',
    tick: 'Чёрточки на краю: каждая 10-я петля последнего ряда, считая от первой.',
    five: 'Каждый 5-й ряд: тёмный номер, снаружи толстая линия.',
    startLine: 'Линия начала: здесь начинается каждый ряд.',
    join: 'Присоединение: с этой петли начинается новый отрезок нити.',
  },
  larger: 'Буквы крупнее: по клиньям в wedges.svg и на увеличенных листах описания в PDF.',
  bare: 'Пустая петля, без бисерины',
  undecided: 'Ещё не решено',
  wedge: (f) => `Клин ${f.wedge}`,
  wedgeWay: (f) =>
    f.direction === 1 ? 'Каждую строку читать слева направо' : 'Каждую строку читать справа налево',
  pageOf: (f) => `страница ${f.page} из ${f.pages}`,
};
