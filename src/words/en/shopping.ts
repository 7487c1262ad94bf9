import { pages } from './pages.js';

/** 12810 as 12,810. */
const count = (n: number): string => String(n).replace(/\B(?=(?:\d{3})+$)/g, ',');
const beads = (n: number): string => (n === 1 ? '1 bead' : `${count(n)} beads`);
/** 82.8, 9, 0.52: a number with no more decimals than asked for. */
const short = (n: number, digits: number): string => String(Number(n.toFixed(digits)));
/** 1,250.00 */
const money = (n: number): string => n.toFixed(2).replace(/\B(?=(?:\d{3})+\.)/g, ',');
/** 82.8, and 10,920 where tenths no longer matter. */
const tenths = (n: number): string => (n < 1000 ? n.toFixed(1) : count(Math.round(n)));
const cm = (mm: number): string => `${Math.ceil(mm / 10 - 1e-6)} cm`;
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)} to ${short(f[1], digits)}`;
const purses = (n: number): string => (n === 1 ? 'one purse' : `${count(n)} purses`);
const singles = (n: number): string => (n === 1 ? 'one single panel' : `${count(n)} single panels`);

/** Words of the command `shopping` and of its list. */
export const shopping = {
  ...pages.shopping,
  about: 'list everything to buy for one purse or for a batch',
  examples: `Examples:
  rondure chart fixtures/barley-moon.svg --rounds 12 -o moon
  rondure shopping moon/pattern.json
  rondure shopping moon/pattern.json --pieces 12 -o twelve.txt
  rondure shopping moon/pattern.json --thread-per-stitch 26 --thread-tex 125
`,
  output: 'a new file for the list: its name ends in .txt or .csv',
  outputDefault: 'the list is printed',
  pieces: 'how many purses, 1 to 10000; reserve and packets are worked out once for all of them',
  panels: 'panels of one purse, 1 or 2; a pattern with one panel serves both sides',
  panelsDefault: '2',
  beadReserve: 'beads to have over what is worked, per cent, at least 30 of each',
  clothWidth: 'width of the cloth that the lining is cut from, 20 to 500 cm',
  liningKind: 'what the lining is: cloth, or crocheted, the same panels without beads',
  force: 'replace an earlier shopping list',
  json: 'print the list as one JSON object',
  written: (f: { title: string; file: string; pieces: number; panels: number }) =>
    `The shopping list of “${f.title}” for ${f.panels === 2 ? purses(f.pieces) : singles(f.pieces)} is in ${f.file}.`,

  /** What every list begins with. */
  begins: 'Shopping list of ',
  title: (f: { title: string; pieces: number; panels: number }) =>
    `${shopping.begins}${f.title}, for ${f.panels === 2 ? purses(f.pieces) : singles(f.pieces)}`,
  forWhat: (f: { pieces: number; panels: number; patternPanels: number }) => {
    const all = f.pieces * f.panels;
    if (f.panels === 1)
      return `Every number is for ${all === 1 ? 'the one panel' : `all ${count(all)} panels together`}.`;
    const batch =
      f.pieces === 1 ? '' : ` Every number is for all ${count(f.pieces)} purses together.`;
    return f.patternPanels === 2
      ? `A purse has two panels, and this pattern has both.${batch}`
      : `A purse has two panels. This pattern has one, so it counts twice, for the front and for an equal back (materials.csv counts it once).${batch}`;
  },
  estimates: (f: { panels: number; swatch: boolean }) =>
    `${f.panels === 2 ? 'Thread, hook, frame, cloth and braid' : 'Thread, hook and cloth'} are estimates from the pattern and from usual figures (common practice, no source)${f.swatch ? '; stitch and thread are those of your swatch, as far as you measured them' : ': work a swatch before you buy a lot'}.`,
  heads: {
    beads: 'BEADS',
    thread: 'THREAD',
    tools: 'TOOLS, FRAME, LINING',
    care: 'TAKE CARE',
  },
  bead: (f: { letter: string; name: string; size: string | undefined; buy: string }) =>
    `${f.letter}  ${f.name}${f.size === undefined ? '' : `, ${f.size}`}: ${f.buy}`,
  buy: (f: {
    toBuy: number;
    grams: number | undefined;
    packGrams: number | undefined;
    packets: number | undefined;
    cost: number | undefined;
  }) => {
    if (f.toBuy === 0) return 'nothing to buy';
    const price = f.cost === undefined ? '' : ` for ${money(f.cost)}`;
    if (f.packets !== undefined && f.packGrams !== undefined) {
      const packets = f.packets === 1 ? '1 packet' : `${count(f.packets)} packets`;
      return `buy ${packets} of ${short(f.packGrams, 2)} g${price}`;
    }
    return f.grams === undefined ? `buy ${beads(f.toBuy)}` : `buy ${tenths(f.grams)} g`;
  },
  beadCounts: (f: {
    count: number;
    withReserve: number;
    grams: number | undefined;
    inStock: number | undefined;
    toBuy: number;
    toBuyGrams: number | undefined;
  }) => {
    const grams = (g: number | undefined) => (g === undefined ? '' : ` (${tenths(g)} g)`);
    if (f.count === 0) return 'not worked';
    const need =
      f.withReserve === f.count
        ? `${count(f.count)} worked${grams(f.grams)}`
        : `${count(f.count)} worked, ${count(f.withReserve)} with the reserve${grams(f.grams)}`;
    if (f.inStock === undefined) return need;
    const rest = f.toBuy === 0 ? '' : `, ${count(f.toBuy)} to buy${grams(f.toBuyGrams)}`;
    const enough =
      f.toBuy > 0 && f.inStock >= f.count ? '; the stock is enough if none is lost' : '';
    return `${need}; ${count(f.inStock)} in stock${rest}${enough}`;
  },
  beadTotal: (f: { count: number; withReserve: number; grams: number | undefined }) =>
    `In all ${beads(f.count)} worked, ${count(f.withReserve)} with the reserve${f.grams === undefined ? '' : `, ${tenths(f.grams)} g`}.`,
  money: (f: { cost: number; bought: number; priced: number }) => {
    if (f.priced === 0) return '';
    return f.priced === f.bought
      ? `Beads cost ${money(f.cost)} in all.`
      : `Beads cost ${money(f.cost)} for ${f.priced} of the ${f.bought} colours to buy; of the others no price or packet is known.`;
  },
  undecided: (stitches: number) =>
    `${stitches === 1 ? '1 stitch is' : `${count(stitches)} stitches are`} not decided yet: their beads are not in this list, their thread is.`,

  perStitchFrom: {
    pattern: () => 'The thread of a stitch is your own figure.',
    size: (f: { size: string | undefined; usualRangeMm: readonly [number, number] }) =>
      `The thread of a stitch is a usual figure for ${f.size ?? 'these beads'} (makers need ${range(f.usualRangeMm, 0)} mm): mark a metre, work it, count the stitches, and give --thread-per-stitch.`,
    width: (f: { size: string | undefined; usualRangeMm: readonly [number, number] }) =>
      `The thread of a stitch is taken as 11 stitch widths (makers need ${range(f.usualRangeMm, 0)} mm): mark a metre, work it, count the stitches, and give --thread-per-stitch.`,
  },
  seamSum: (f: { seamMm: number; seamThreadMm: number }) =>
    `Of each purse ${cm(f.seamMm)} of rim are sewn together: 3 times that, ${cm(f.seamThreadMm)}.`,
  frameSum: (f: { arcMm: number; frameThreadMm: number }) =>
    `Of each purse ${cm(f.arcMm)} of rim on either side are sewn into the frame: 5 times that on each side, ${cm(f.frameThreadMm)}.`,
  cordSum: (f: { arcMm: number }) =>
    `Of each purse ${cm(f.arcMm)} of rim on either side are glued into the frame.`,
  seamEstimate: 'The rail of the frame is not known: 45 % of the rim is counted for it.',
  units: { grams: 'g', beads: 'beads', metres: 'm', centimetres: 'cm', pieces: 'pieces' },
};
