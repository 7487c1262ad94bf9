/** 95 as 95.0: sizes to cut by are said to a tenth. */
const tenth = (mm: number): string => mm.toFixed(1);
/** 5 as 5, 2.54 as 2.5: what the maker typed. */
const short = (mm: number): string => String(Math.round(mm * 10) / 10);
const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`;
const paperName = { a4: 'A4', letter: 'Letter' } as const;

/** Words of `lining`: the template, the command, and what it says. */
export const lining = {
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
  title: (f: { title: string; panel?: string | undefined }) =>
    f.panel === undefined ? `Lining: ${f.title}` : `Lining: ${f.title}, ${f.panel}`,
  describe: (f: { seamMm: number; cutMm: number }) =>
    `Cutting template for a purse lining at true size: cut line ${tenth(f.cutMm)} mm and seam line ${tenth(f.seamMm)} mm across at the widest place.`,
  size: (f: { seamMm: number; cutMm: number; allowanceMm: number; easeMm: number }) =>
    `At the widest place: cut line ${tenth(f.cutMm)} mm, seam line ${tenth(f.seamMm)} mm (allowance ${short(f.allowanceMm)} mm all round, ${f.easeMm === 0 ? 'no\u00a0ease' : `ease ${short(f.easeMm)} mm`}).`,
  measured: (f: { measuredMm: number; modelMm: number }) =>
    `Made for a panel of ${tenth(f.measuredMm)} mm, as you measured it (by the model ${tenth(f.modelMm)} mm).`,
  estimate: (f: { modelMm: number }) =>
    `ESTIMATE: ${tenth(f.modelMm)} mm is the panel’s size by the model, not by a ruler. Measure the finished panel at its widest place, over bead edges, and make this sheet again with --measured before you cut.`,
  cut: (f: { pieces: 1 | 2 }): string =>
    f.pieces === 2
      ? 'Cut 2 (one for each panel): this side up on the wrong side of the cloth, the arrow along the grain. Solid line: cut. Dashed line: sew.'
      : 'Cut 1 for this panel (the other panel’s lining is turned another way: make its sheet with --panel): this side up on the wrong side of the cloth, the arrow along the grain. Solid line: cut. Dashed line: sew.',
  sew: (f: { gapMm: number }) =>
    `Right sides together, sew from one hinge mark round the bottom to the other${f.gapMm > 0 ? `, and leave ${short(f.gapMm)} mm open between the bars for turning` : ''}.`,
  hinges: (f: { share: number; from: 'asked' | 'usual' | 'frame' }) =>
    ({
      asked: `Hinge marks (dots): ${percent(f.share)} of the rim lies in the frame, as you said.`,
      frame: `Hinge marks (dots): ${Math.round(100 * f.share)} % of the rim lies in the frame, by the pattern’s frame.`,
      usual: `Hinge marks (dots): an estimate, ${percent(f.share)} of the rim in the frame (common practice, no source): mark where your frame ends.`,
    })[f.from],
  spiral:
    'The spiral’s step at the rim is left out: the outline is the closed ring halfway up the step.',
  print:
    'Print at 100 %, scaling off. Measure both squares: when one is wrong by more than 0.5 mm, do not cut.',
  caution:
    'Take care: count pins and needles before and after, and keep them, scissors and beads away from small children. Seal frayed edges with a flame only on synthetic cloth, never near glue; air the room when you glue. Where you live or sell, local rules come first.',
  sheets: (f: { rows: number; columns: number }) =>
    f.rows * f.columns === 1
      ? 'The piece is on the next sheet.'
      : `The piece is on the next ${f.rows * f.columns} sheets, ${f.rows} high and ${f.columns} wide. They overlap: cut one of two neighbours along the dotted line, lay it on the other so that crosses lie on crosses, and tape them together.`,
  sheet: (f: { row: number; column: number; rows: number; columns: number }) =>
    f.rows * f.columns === 1
      ? 'The piece'
      : `Row ${f.row} of ${f.rows}, column ${f.column} of ${f.columns}`,
  marks: {
    pieces: (f: { pieces: 1 | 2 }) => `cut ${f.pieces}`,
    cut: (f: { mm: number }) => `cut line ${tenth(f.mm)} mm`,
    seam: (f: { mm: number }) => `seam line ${tenth(f.mm)} mm`,
    estimate: 'estimate',
    grain: 'grain',
    top: 'centre top',
    hinge: 'hinge',
    gap: (f: { mm: number }) => `leave ${short(f.mm)} mm open`,
  },
  check: {
    mm: '50 mm',
    inch: '2 in',
    cm: 'cm',
    in: 'in',
    right: 'Is it? If not, print again at 100 %.',
  },
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
