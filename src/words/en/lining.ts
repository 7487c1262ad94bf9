import { numbersIn } from '../pages/numbers.js';
import { liningImpossible } from './lining-impossible.js';
import { pages } from './pages.js';

const { fixed } = numbersIn('en-GB');
/** 95 as 95.0: sizes to cut by are said to a tenth. */
const tenth = (mm: number): string => fixed(mm, 1);
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
    gap: 'gap for turning, 0 to 200 mm; none is needed where the lining is put in as it is sewn',
    paper: 'paper to print on',
    language: 'language of the sheet',
    force: 'replace an earlier template of this name',
  },
  impossible: liningImpossible,
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
