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
      `Левый шарнир, если смотреть на сторону с бисером, приходится между петлями ${f.left.inFrame} и ${f.left.inSeam}, правый — между ${f.right.inFrame} и ${f.right.inSeam}; ниже идёт шов.`,
      f.bare.length === 0
        ? 'Пустых петель для него нет.'
        : `Пустыми, то есть без бисерины, вяжут эти петли: ${f.bare.map(({ round, runs }) => `в ряду ${round} — ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  spread: (f) =>
    `На каждой детали равномерно распределить петли, лежащие в фермуаре (${f.stitches}), по всей его длине, ${short(f.railMm, 1)} мм от шарнира до шарнира${f.holes ? `: примерно по ${short(f.holes.perSpace, 1)} на каждый промежуток между отверстиями, если они идут через ${short(f.holes.spacingMm, 1)} мм. Посчитать отверстия на своём фермуаре` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` Край длиннее фермуара на ${short(Math.abs(f.longerPercent), 1)} %: излишек равномерно распределить.`
          : ` Край короче фермуара на ${short(Math.abs(f.longerPercent), 1)} %: равномерно растянуть его.`
    }`,
  word: 'фермуар',
  mark: 'Край между двумя точками, шарнирами, лежит в фермуаре.',
};
