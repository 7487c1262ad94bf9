const count = (n: number): string => String(n).replace(/\B(?=(?:\d{3})+$)/g, ',');
const plural = (n: number, one: string, many: string) => `${count(n)} ${n === 1 ? one : many}`;

/** Words of `booklet`: the command, and what stands on the pages that no other file says. */
export const booklet = {
  about: 'make a booklet of a pattern, as a PDF to print or to sell',
  examples: `Examples:
  rondure chart fixtures/kingfisher.svg --rounds 12 -o bird
  rondure booklet bird/pattern.json -o bird.pdf
  rondure booklet bird/pattern.json --paper letter --author "A. Maker" -o us.pdf
`,
  options: {
    output: 'the new file: its name ends in .pdf',
    paper: 'paper to print on',
    author: 'who made the pattern, for the cover and the last page',
    authorDefault: 'no author is named',
    licence: 'what a buyer may do with the pattern, for the last page',
    licenceDefault: 'none is stated',
    date: 'day of this edition, YYYY-MM-DD',
    dateDefault: 'no date is printed',
    force: 'replace an earlier booklet of this name',
  },
  sayWhere: 'Say where the booklet should go: add -o and a name that ends in .pdf.',
  ending: 'a name that ends in .pdf',
  day: 'a day of the calendar written as YYYY-MM-DD, for instance 2026-03-14',
  made: (f: { file: string; pages: number; paper: 'a4' | 'letter' }) =>
    `${f.file}: a booklet of ${plural(f.pages, 'page', 'pages')}, ${f.paper === 'a4' ? 'A4' : 'Letter'}. Print at 100 %, scaling off: the lining template is at true size.`,

  subject: 'Pattern for a round panel in bead crochet',
  kind: 'Round bead-crochet pattern',
  size: (f: { acrossMm: number }) =>
    `About ${f.acrossMm.toFixed(0)} mm (${(f.acrossMm / 25.4).toFixed(1)} in) across when finished`,
  sizeFrom: {
    swatch: 'by the maker’s swatch',
    model: 'an estimate, until you have worked a swatch',
  },
  amounts: (f: { panels: number; rounds: number; beads: number; colours: number }) =>
    [
      plural(f.panels, 'panel', 'panels'),
      plural(f.rounds, 'round', 'rounds'),
      plural(f.beads, 'bead', 'beads'),
      plural(f.colours, 'colour', 'colours'),
    ].join('  ·  '),
  by: (author: string) => `by ${author}`,

  pageOf: (f: { page: number; pages: number }) => `${f.page} of ${f.pages}`,
  panel: (f: { panel: string }) => `${f.panel} panel`,
  length: (f: { length: number; lengths: number }) => `length ${f.length} of ${f.lengths}`,
  continued: (heading: string) => `${heading}, continued`,
  parts: {
    cover: 'Cover',
    materials: 'Materials and tools',
    before: 'Before you start',
    chart: 'Chart',
    rounds: 'Round by round',
    stringing: 'Stringing list',
    making: 'Making up',
    lining: 'Lining template',
    cautions: 'Take care',
    last: 'About this pattern',
  },
  ofPanel: (f: { part: string; panel: string }) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Beads',
    columns: {
      bead: 'Bead',
      name: 'Name',
      id: 'Code',
      charted: (panels: number) => (panels === 1 ? 'In the chart' : 'In both charts'),
      reserve: 'For a purse, with reserve',
      grams: 'Grams to have',
    },
    total: 'All beads',
    unknownGrams: '–',
    onePanel:
      'The chart is one panel. A purse has two: the numbers with reserve are for a front and an equal back.',
    twoPanels: 'A purse has two panels, and this pattern has both.',
    thread: 'Thread',
    estimate:
      'The thread of a stitch differs from hand to hand: mark a metre, work it, count the stitches, and correct this figure before you buy.',
    ownFigure: 'The thread of a stitch is the maker’s own figure.',
    tools: 'Tools, frame, lining',
  },

  before: {
    swatch: 'Work a swatch first',
    swatchText: (f: {
      wedges: number;
      widthMm: string;
      heightMm: string;
      fiveMm: string;
      tenMm: string;
    }) =>
      `Work 10 rounds of ${f.wedges} wedges in one colour with your own beads, thread and hook. Lay them flat. This pattern counts on stitches ${f.widthMm} mm wide and rounds ${f.heightMm} mm high: after 5 rounds the swatch measures about ${f.fiveMm} mm across, after 10 rounds about ${f.tenMm} mm. If yours is larger, take a thinner hook; if it is smaller, a thicker one. If it cups, the stitches are too narrow for their height; if it ruffles, they are too wide.`,
    hand: 'Which hand, and which face',
    start: 'How to begin and to go on',
    read: 'How to read the list of rounds',
    string: 'How to string',
    signs: 'Signs and abbreviations',
    sign: 'Sign',
    meaning: 'Meaning',
    table: (second: string): [string, string][] => [
      ['R7', 'round 7, counted from the centre'],
      ['A, B', 'the beads: letters as in the table of materials and on the chart'],
      ['3A', 'three stitches with bead A; in the stringing list three beads A'],
      [`[A ${second}]`, 'two stitches worked into one and the same stitch below: an increase'],
      ['( ) x 7', 'what stands in the brackets, 7 times'],
      ['bare', 'a stitch without a bead'],
      ['sc, dc', 'single crochet in US terms is double crochet in UK terms'],
      ['sl st, ch', 'slip stitch; chain'],
    ],
    smallChart: (f: { paper: string }) =>
      `The chart has so many stitches that its letters are small on this paper. Read it enlarged on a screen, or have that page printed on ${f.paper}. The list of rounds says the same in words.`,
  },

  rounds: {
    round: 'Round',
    work: 'Work',
    stitches: 'Stitches',
    beads: 'Beads',
    total: 'Total beads',
    how: 'Count when a round is done: the last column says how many beads are worked up to its end.',
  },

  stringing: {
    round: (f: { round: number; beads: number; part: boolean }) =>
      `R${f.round}${f.part ? ', part' : ''}: ${plural(f.beads, 'bead', 'beads')}`,
    total: (total: number) => `total ${count(total)}`,
    tick: 'Down the left column first, then the right one; in each line from the left. Tick a box when its line is on the thread, and count at every total.',
    weight: (f: { beads: number; grams: string; metres: string; threadM: string }) =>
      `${plural(f.beads, 'bead', 'beads')} in all; strung they weigh about ${f.grams} g without the thread and are about ${f.metres} m long. Working them takes about ${f.threadM} m of thread, tails and reserve included.`,
    noWeight: (f: { beads: number; metres: string; threadM: string }) =>
      `${plural(f.beads, 'bead', 'beads')} in all, about ${f.metres} m when strung. Working them takes about ${f.threadM} m of thread, tails and reserve included.`,
    rounds: (f: { first: number; last: number }) =>
      f.first === f.last ? `For round ${f.first}.` : `For rounds ${f.first} to ${f.last}.`,
    first: 'The first bead of this list goes on the thread first and is worked last.',
    nothing: 'No bead is decided yet, so there is nothing to string.',
  },

  making: {
    panels: 'The panels',
    two: 'Work both panels, each by its own chart and list. Let them lie damp and flat under a cloth until dry, if your beads and thread can bear it.',
    one: 'Work the same panel twice: a purse has two. Let them lie damp and flat under a cloth until dry, if your beads and thread can bear it.',
    seam: 'The seam',
    oneSeam:
      'Lay the panels on one another, beads on both outsides and both pictures upright. Mark the first stitch of the last round in each, pin 12 o’clock to 12 o’clock and 6 o’clock to 6 o’clock, then the places between. Leave the top open for the frame, usually a little less than half of the rim (common practice, no source). Sew stitch to stitch, under both loops, with strong nylon or polyester thread about three times as long as the seam, from one hinge down around 6 o’clock to the other; finish 5 to 10 mm below each hinge.',
    pairs: 'Stitches of the last round that meet',
    frame: 'The frame',
    frameText:
      'Find the middle of the frame and of the open rim on each side and pin middle to middle. Sew from the middle outward to both hinges, through every hole of a frame with holes; a frame with a channel is glued as its maker says, one side after the other, and packed with paper cord. The usual ease along the frame is up to 10 % (from memory, unchecked).',
    lining: 'The lining',
    liningText:
      'The lining template in this booklet is at true size. Measure your finished panel before you cut, and draw the seam line wider or narrower by what it differs. Sew the lining, put it in with its right side showing inside, and sew its edge to the rim along the frame, below the holes or inside the channel’s edge.',
    noTemplate:
      'A panel of this size is outside what the lining template serves: lay the finished panel on the cloth, draw round it, and add 5 mm for the seam.',
  },
  liningEstimate: (f: { modelMm: number }) =>
    `ESTIMATE: ${f.modelMm.toFixed(1)} mm is the panel’s size by the model, not by a ruler. Measure the finished panel at its widest place, over bead edges, and cut by so much more or less.`,
  liningOne:
    'Cut 1 for this panel; the other panel has a sheet of its own. This side up on the wrong side of the cloth, the arrow along the grain. Solid line: cut. Dashed line: sew.',

  last: {
    title: 'Title',
    author: 'Author',
    date: 'Date of this edition',
    licence: 'Licence',
    noLicence:
      'None is stated. Ask the author before you pass the pattern on or sell what you make.',
    version: 'Version',
    versionText: (f: { program: string; format: number }) =>
      `Made with Rondure ${f.program}, pattern format ${f.format}`,
    figures: 'The figures',
    figuresText:
      'Bead counts are exact. Grams, metres of thread, sizes and tools are estimates from the pattern and from usual figures; what has no published source is called common practice or from memory where it stands.',
    read: 'To read it aloud',
    readText:
      'All lists in this booklet are text that can be searched, copied and read aloud. Every bead has a letter, so that no colour need be told apart.',
  },
};
