import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('uk');

interface Span {
  readonly from: number;
  readonly to: number;
}

/** `1–30 і 111–140`. */
export const runsText = (runs: readonly Span[]): string =>
  runs.length === 0
    ? 'немає'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(' і ');

const kinds = { 'half-round': 'півкруглий', squared: 'прямокутний', oval: 'овальний' };
const fixings = { sewn: 'пришивний', glued: 'вклеюваний' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  paragraph: (f) =>
    [
      // M: фермуар, the clasp frame of a purse.
      `Фермуар (${kinds[f.kind]}, ширина ${short(f.widthMm, 1)} мм, ${fixings[f.fixing]}): у ньому лежать петлі ${runsText(f.runs)} ряду ${f.round}, на однакову довжину з обох боків від 12-ї години.`,
      `Лівий шарнір, якщо дивитися на бік із бісером, припадає між петлями ${f.left.inFrame} і ${f.left.inSeam}, правий — між ${f.right.inFrame} і ${f.right.inSeam}; нижче йде шов.`,
      f.bare.length === 0
        ? 'Порожніх петель для нього немає.'
        : `Порожніми, тобто без бісеринок, в’яжуть: ${f.bare.map(({ round, runs }) => `у ряду ${round} петлі ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  spread: (f) =>
    `На кожній деталі рівномірно розподілити петлі, що лежать у фермуарі (${f.stitches}), уздовж нього, ${short(f.railMm, 1)} мм від шарніра до шарніра${f.holes ? `: приблизно по ${short(f.holes.perSpace, 1)} на кожен проміжок між отворами, якщо вони йдуть через ${short(f.holes.spacingMm, 1)} мм. Порахувати отвори на своєму фермуарі` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` Край довший за фермуар на ${short(Math.abs(f.longerPercent), 1)} %: надлишок рівномірно розподілити.`
          : ` Край коротший за фермуар на ${short(Math.abs(f.longerPercent), 1)} %: рівномірно розтягнути його.`
    }`,
  word: 'фермуар',
  mark: 'Край між двома крапками, шарнірами, лежить у фермуарі.',
};
