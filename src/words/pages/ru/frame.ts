import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('ru');

interface Span {
  readonly from: number;
  readonly to: number;
}

/** `1–30 и 111–140`. */
export const runsText = (runs: readonly Span[]): string =>
  runs.length === 0
    ? 'нет'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(' и ');

const kinds = { 'half-round': 'полукруглый', squared: 'прямоугольный', oval: 'овальный' };
const fixings = { sewn: 'пришивной', glued: 'вклеиваемый' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  paragraph: (f) =>
    [
      // M: фермуар, the clasp frame of a purse.
      `Фермуар (${kinds[f.kind]}, ширина ${short(f.widthMm, 1)} мм, ${fixings[f.fixing]}). Петли ряда ${f.round}, которые лежат в нём: ${runsText(f.runs)}; длина по обе стороны от 12 часов одинаковая.`,
      `Левый шарнир, если смотреть на сторону с бисером, приходится между петлями ${f.left.inFrame} и ${f.left.inSeam}, правый — между ${f.right.inFrame} и ${f.right.inSeam}; остальной край сшивают с другой деталью.`,
      f.bare.length === 0
        ? 'Пустых петель для него нет.'
        : `Пустыми, то есть без бисерины, вяжут эти петли: ${f.bare.map(({ round, runs }) => `в ряду ${round} — ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  word: 'фермуар',
  mark: 'Край между двумя точками, шарнирами, лежит в фермуаре.',
};
