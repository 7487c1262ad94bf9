/** 12810 as 12,810. */
const count = (n: number): string => String(n).replace(/\B(?=(?:\d{3})+$)/g, ',');
const beads = (n: number): string => (n === 1 ? '1 bead' : `${count(n)} beads`);
/** 82.8, 9, 0.52: a number with no more decimals than asked for. */
const short = (n: number, digits: number): string => String(Number(n.toFixed(digits)));
/** 1,250.00 */
const money = (n: number): string => n.toFixed(2).replace(/\B(?=(?:\d{3})+\.)/g, ',');
/** 82.8, and 10,920 where tenths no longer matter. */
const tenths = (n: number): string => (n < 1000 ? n.toFixed(1) : count(Math.round(n)));
/** Metres to buy: whole ones, tenths under 10. */
const metres = (mm: number): string =>
  mm < 10_000
    ? `${short(Math.ceil(mm / 100 - 1e-6) / 10, 1)} m`
    : `${count(Math.ceil(mm / 1000 - 1e-9))} m`;
const cm = (mm: number): string => `${Math.ceil(mm / 10 - 1e-6)} cm`;
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)} to ${short(f[1], digits)}`;
const purses = (n: number): string => (n === 1 ? 'one purse' : `${count(n)} purses`);
const singles = (n: number): string => (n === 1 ? 'one single panel' : `${count(n)} single panels`);

/** Words of the command `shopping` and of its list. */
export const shopping = {
  about: 'list everything to buy for one purse or for a batch',
  examples: `Examples:
  rondure chart fixtures/barley-moon.svg --rounds 12 -o moon
  rondure shopping moon/pattern.json
  rondure shopping moon/pattern.json --pieces 12 -o twelve.txt
  rondure shopping moon/pattern.json --thread-per-stitch 26 --thread-tex 125
`,
  output: 'a new file for the list: its name ends in .txt or .csv',
  outputDefault: 'the list is printed',
  outputForm: 'the name of a file that ends in .txt or .csv',
  pieces: 'how many purses, 1 to 10000; reserve and packets are worked out once for all of them',
  panels: 'panels of one purse, 1 or 2; a pattern with one panel serves both sides',
  panelsDefault: '2',
  twoPanels:
    'This pattern has two panels, so a purse cannot have one of them only: leave --panels out.',
  beadReserve: 'beads to have over what is worked, per cent, at least 30 of each',
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
  beadReserveSaid: (f: { percent: number; batch: boolean }) =>
    f.percent === 0
      ? 'Without a reserve: broken and odd beads are not counted.'
      : `The reserve is ${short(f.percent, 2)} %, at least 30 beads of each${f.batch ? ', worked out once for all purses' : ''}.`,
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
  noBeads: 'No beads are decided yet.',
  undecided: (stitches: number) =>
    `${stitches === 1 ? '1 stitch is' : `${count(stitches)} stitches are`} not decided yet: their beads are not in this list, their thread is.`,

  crochetThread: (f: { mm: number; name: string | undefined; grams: number | undefined }) =>
    `${f.name ?? 'Crochet thread'}: ${metres(f.mm)}${f.grams === undefined ? '' : `, about ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`}`,
  threadSum: (f: {
    stitches: number;
    perStitchMm: number;
    netMm: number;
    reservePercent: number;
    reserveMm: number;
    tails: number;
    tailMm: number;
    tailsMm: number;
  }) =>
    `${count(f.stitches)} stitches of ${short(f.perStitchMm, 1)} mm take ${tenths(f.netMm / 1000)} m; ${f.reservePercent === 0 ? '' : `a reserve of ${short(f.reservePercent, 1)} % adds ${tenths(f.reserveMm / 1000)} m, `}${count(f.tails)} tails of ${short(f.tailMm / 10, 1)} cm add ${tenths(f.tailsMm / 1000)} m.`,
  perStitchFrom: {
    pattern: () => 'The thread of a stitch is your own figure.',
    size: (f: { size: string | undefined; usualRangeMm: readonly [number, number] }) =>
      `The thread of a stitch is a usual figure for ${f.size ?? 'these beads'} (makers need ${range(f.usualRangeMm, 0)} mm): mark a metre, work it, count the stitches, and give --thread-per-stitch.`,
    width: (f: { size: string | undefined; usualRangeMm: readonly [number, number] }) =>
      `The thread of a stitch is taken as 11 stitch widths (makers need ${range(f.usualRangeMm, 0)} mm): mark a metre, work it, count the stitches, and give --thread-per-stitch.`,
  },
  lengths: (f: { lengths: number; strungMm: number }) =>
    `The beads take up ${(f.strungMm / 1000).toFixed(2)} m of it when strung, in ${f.lengths === 1 ? 'one length' : `${count(f.lengths)} lengths`}.`,
  thickness: (f: {
    size: string;
    holeMm: number;
    singleMostMm: number;
    doubledMostMm: number;
    doubledMostTex: number;
  }) =>
    `Through the hole of ${f.size}, usually ${short(f.holeMm, 2)} mm, goes a thread of up to ${short(f.singleMostMm, 2)} mm; folded at a needle's eye up to ${short(f.doubledMostMm, 2)} mm (about ${short(f.doubledMostTex, 0)} tex).`,
  thicknessGiven: (f: {
    size: string;
    holeMm: number;
    diameterMm: number;
    single: boolean;
    doubled: boolean;
  }) => {
    const start = `Your thread is ${short(f.diameterMm, 2)} mm thick, the hole of ${f.size} usually ${short(f.holeMm, 2)} mm:`;
    if (!f.single) return `${start} TOO THICK. Take a thinner thread or larger beads.`;
    return f.doubled
      ? `${start} it fits, also folded at a needle's eye.`
      : `${start} it fits singly, but not folded at a needle's eye. String with a stiffened thread end, or over a loop of thinner thread.`;
  },
  sewingThread: (f: { mm: number }) =>
    `Strong sewing thread, nylon or polyester of 70 to 135 tex or 2 to 6 strands: ${metres(f.mm)}`,
  sewingSum: (f: {
    seamMm: number;
    seamThreadMm: number;
    arcMm: number;
    frameThreadMm: number;
    glued: boolean;
  }) =>
    `Of each purse ${cm(f.seamMm)} of rim are sewn together (3 times that, ${cm(f.seamThreadMm)}), and ${cm(f.arcMm)} on either side ${f.glued ? 'are glued into the frame.' : `are sewn into the frame (5 times that on each side, ${cm(f.frameThreadMm)}).`}`,
  seamEstimate: 'The rail of the frame is not known: 45 % of the rim is counted for it.',
  cord: (f: { mm: number }) =>
    `Glue for the frame, and paper cord to pack its channel: ${cm(f.mm)}`,

  hook: (f: { range: readonly [number, number] | undefined; size: string | undefined }) =>
    f.range === undefined
      ? 'Crochet hook: as your swatch asks for'
      : `Crochet hook, ${range(f.range, 2)} mm for ${f.size ?? 'these beads'}: your swatch decides`,
  needle: (f: { range: readonly [number, number] | undefined }) =>
    f.range === undefined
      ? 'Beading needle that passes your beads'
      : `Beading needle, ${range(f.range, 2)} mm thick: it must pass every bead`,
  sewingNeedle: (f: { panels: number }) =>
    `Sewing needle, for ${f.panels === 2 ? 'seam, frame and lining' : 'ends and lining'}`,
  frame: (f: {
    pieces: number;
    widthMm: number;
    range: readonly [number, number] | undefined;
    kind: string | undefined;
    fixing: 'sewn' | 'glued' | undefined;
  }) => {
    const start = f.pieces === 1 ? 'Clasp frame' : `${count(f.pieces)} clasp frames`;
    const kind = f.kind === undefined ? '' : `, ${f.kind}`;
    const fixing = { sewn: ', to sew in', glued: ', to glue in' };
    const wide = `${f.range === undefined ? short(f.widthMm, 1) : `about ${short(f.widthMm, 0)}`} mm wide`;
    const can = f.range === undefined ? '' : ` (${range(f.range, 0)} mm can do)`;
    return `${start}${kind}${f.fixing ? fixing[f.fixing] : ''}, ${wide}${can}`;
  },
  lining: (f: {
    pieces: number;
    pieceWidthCm: number;
    pieceHeightCm: number;
    widthCm: number;
    heightCm: number;
    allowanceMm: number;
  }) =>
    `Lining cloth, ${f.widthCm} x ${f.heightCm} cm: ${f.pieces === 1 ? '1 piece' : `${count(f.pieces)} pieces`} of ${f.pieceWidthCm} x ${f.pieceHeightCm} cm, ${f.allowanceMm} mm allowance included`,
  braid: (f: { mm: number; pieces: number }) =>
    `Braid to cover the frame seam inside, if you like: ${cm(f.mm)}`,
  care: [
    'Every bead is a small part that a child under three can choke on: keep beads, needles and finished purses away from small children. A purse is not a toy.',
    'Breaking a wrong bead: goggles on, a cloth over the bead. Count needles and hooks before and after.',
    'Seal only synthetic ends with heat, and never near solvent glue; air the room when you glue.',
    'Metal frames may contain nickel. Rest eyes and hands every half hour; stop when something hurts.',
    'The usual cautions, not legal advice: if you sell, see the rules where you and your buyers live.',
  ],
  units: { grams: 'g', beads: 'beads', metres: 'm', centimetres: 'cm', pieces: 'pieces' },
};
