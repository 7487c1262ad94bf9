import { numbersIn } from '../pages/numbers.js';

const { fixed, short: decimals } = numbersIn('en-GB');
/** 95 as 95.0: sizes to cut by are said to a tenth. */
const tenth = (mm: number): string => fixed(mm, 1);
/** 5 as 5, 2.54 as 2.5: what the maker typed. */
const short = (mm: number): string => decimals(mm, 1);

/** Why a lining cannot be made as it is wished. */
export const liningImpossible = {
  measured: (f: Range) =>
    `A panel of ${tenth(f.gotMm)} mm cannot be this one, which is ${tenth(f.panelMm ?? 0)} mm by the model: --measured takes ${range(f)} for it.`,
  across: (f: Range) =>
    `A lining ${tenth(f.gotMm)} mm across is beyond this template, which serves panels from ${range(f)}.`,
  ease: (f: Range) =>
    `An ease of ${short(f.gotMm)} mm is too much for a panel of ${tenth(f.panelMm ?? 0)} mm: --ease takes ${range(f)} for it.`,
  allowance: (f: Range) =>
    `An allowance of ${short(f.gotMm)} mm cannot be: --allowance takes ${range(f)}.`,
  gap: (f: Range) =>
    `A turning gap of ${short(f.gotMm)} mm finds no room in the seam: --gap takes ${range(f)} for this panel.`,
};

type Range = {
  readonly gotMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
  readonly panelMm: number | undefined;
};

/** Rounded inward, so that both ends are taken. */
const range = (f: Range): string =>
  `${Math.ceil(f.leastMm * 10 - 1e-6) / 10} to ${Math.floor(f.mostMm * 10 + 1e-6) / 10} mm`;
