import { numbersIn } from '../pages/numbers.js';
import { pages } from './pages.js';

const { fixed, short: decimals } = numbersIn('en-GB');
/** 95 as 95.0: sizes to cut by are said to a tenth. */
const tenth = (mm: number): string => fixed(mm, 1);
/** 5 as 5, 2.54 as 2.5: what the maker typed. */
const short = (mm: number): string => decimals(mm, 1);
const paperName = { a4: 'A4', letter: 'Letter' } as const;

/** Words of `lining`: the template, the command, and what it says. */
export const lining = {
  ...pages.lining,
  about: 'make a cutting template for the lining, at true size',
  examples: `Examples:
  rondure chart fixtures/kingfisher.svg -o bird
  rondure lining bird/pattern.json --measured 95mm -o bird/lining.pdf
  rondure lining bird/pattern.json --paper letter --allowance 7mm -o lining.svg
`,
  pattern: 'pattern.json, or a chart.svg or chart.png of ours; - reads standard input',
  options: {
    output: 'the new file: .pdf to print, or .svg with millimetre units',
    panel: 'which panel, by name or number',
    panelDefault: 'the first',
    measured: 'the finished panel at its widest place, over bead edges: 95mm, 9.5cm',
    measuredDefault: 'the size by the model, an estimate',
    allowance: 'seam allowance all round, 0 to 30 mm',
    ease: 'how much narrower than the panel the lining is, 0 to 50 mm',
    opening: 'share of the rim that lies in the frame, per cent, 10 to 90',
    openingDefault: 'what the pattern’s frame takes, else 45',
    gap: 'gap for turning, 0 to 200 mm',
    gapDefault: '35mm, less on a small panel',
    paper: 'paper to print on',
    force: 'replace an earlier template of this name',
  },
  sayWhere: 'Say where the template should go: add -o and a name that ends in .pdf or .svg.',
  endings: 'a name that ends in .pdf or .svg',
  describe: (f: { seamMm: number; cutMm: number }) =>
    `Cutting template for a purse lining at true size: cut line ${tenth(f.cutMm)} mm and seam line ${tenth(f.seamMm)} mm across at the widest place.`,
  measured: (f: { measuredMm: number; modelMm: number }) =>
    `Made for a panel of ${tenth(f.measuredMm)} mm, as you measured it (by the model ${tenth(f.modelMm)} mm).`,
  estimate: (f: { modelMm: number }) =>
    `ESTIMATE: ${tenth(f.modelMm)} mm is the panel’s size by the model, not by a ruler. Measure the finished panel at its widest place, over bead edges, and make this sheet again with --measured before you cut.`,
  cut: (f: { pieces: 1 | 2 }): string =>
    f.pieces === 2
      ? pages.lining.cutTwo
      : 'Cut 1 for this panel (the other panel’s lining is turned another way: make its sheet with --panel): this side up on the wrong side of the cloth, the arrow along the grain. Solid line: cut. Dashed line: sew.',
  groups: { piece: 'Lining piece', check: 'Squares and ruler to check the print by' },
  impossible: {
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
  },
  made: (f: {
    file: string;
    cutMm: number;
    seamMm: number;
    estimate: boolean;
    pages: number;
    paper: 'a4' | 'letter';
    pdf: boolean;
  }) =>
    [
      `${f.file}: cut line ${tenth(f.cutMm)} mm, seam line ${tenth(f.seamMm)} mm at the widest place${f.estimate ? ', an estimate by the model: measure the panel and say --measured' : ''}.`,
      f.pdf
        ? `${f.pages === 1 ? '1 page' : `${f.pages} pages`}, ${paperName[f.paper]}: print at 100 %, scaling off, and measure the squares.`
        : 'Print at 100 %, scaling off, and measure the squares.',
    ].join('\n'),
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
