import { swatchErrors } from './swatch-errors.js';

/** A number with two places at most, without zeros at its end. */
const short = (value: number, places = 2) => String(Number(value.toFixed(places)));

/** How a swatch is to be worked and measured. */
export interface GuideFacts {
  wedges: number;
  rounds: number;
  increase: 'first' | 'middle' | 'last';
  construction: 'spiral' | 'joined';
  hand: 'right' | 'left';
  beadsFace: 'away' | 'toward';
  size: string;
  fromRound: number;
  toRound: number;
  markedWedge: number;
  rimWedge: number;
  /** One for every stitch. */
  beads: number;
}

/** The least and the most of an estimate, in its own unit. */
export interface EstimateEnds {
  least: number;
  most: number;
}
/** `2.31 (2.28 to 2.34)`, millimetres to a hundredth: finer than any ruler. */
const between = (f: { value: number } & EstimateEnds, places: number) =>
  `${f.value.toFixed(places)} (${f.least.toFixed(places)} to ${f.most.toFixed(places)})`;

/** What the rim looks like. */
/** The shape of a rim. */
export type Outline = 'polygon' | 'circle';

/** How a swatch lies on the table. */
export type SwatchLies = 'flat' | 'cups' | 'ruffles';

/** Words of the command `swatch`. */
export const swatch = {
  about: 'work out your stitch from a small trial panel that you measured',
  examples: `Examples:
  rondure swatch --guide -o swatch-guide.svg
  rondure swatch --rounds 10 --across 49mm --rim-stitches 23 -o swatch.json
  rondure swatch --rounds 10 --turn "24deg against" --dry-run
  rondure blank --swatch swatch.json -o mine
`,
  options: {
    output: 'the new file: swatch.json, or with --guide a .svg or .pdf',
    wedges: 'wedges of the swatch, 3 to 12',
    rounds: 'rounds of the swatch, 2 to 80',
    roundsDefault: 'needed with --across, --rim-stitches and --turn; guide: 10',
    across: 'widest place over the outer edges of the beads: 42mm, 4.2cm or 1.65in',
    rimStitches: 'stitches along the rim, from bead middle to bead middle',
    rimMm: 'the length along the rim that they take up, mm',
    turn: 'how far the first stitch of a wedge has moved from round to round: "24deg against" the work, "5deg with" it, or in stitches "2.5st against"',
    fromRound: 'the round from which the turn is measured',
    toRound: 'the round up to which the turn is measured',
    toRoundDefault: 'the last round',
    markedWedge: 'the wedge whose first stitches were marked',
    threadMm: 'thread worked up, mm',
    threadStitches: 'stitches that this thread made',
    fiftyBeads: 'length of 50 strung beads, pushed together: 75mm',
    beadMm: 'diameter of a bead, measured, mm',
    beadDefault: 'from the bead size, and the range in which that is sold',
    lies: 'how the swatch lies on the table',
    ruler: 'how finely you read the ruler: 0.5mm',
    protractor: 'how finely you read the turn, degrees',
    guide: 'print how to make and measure a swatch, with a turn gauge',
    photo: 'measure on a photograph from above, with --points',
    points: 'points in pixels of the photograph, see the guide, Your own stitch',
    pixels: 'how finely the points are read, pixels',
    rulerLength: 'true distance of the two points ruler= in the photograph',
    paper: 'paper of the guide',
    force: 'replace an earlier file of ours',
    dryRun: 'print what follows, write nothing',
    use: 'swatch.json: stitch width, round height and lean as measured',
  },
  needs: (f: { option: string; needs: string }) => `${f.option} needs ${f.needs}: give both.`,
  sayWhere: 'Say where the file should go: add -o swatch.json, or --dry-run.',
  roundOrder: 'which round comes first',
  guideMade: (f: { file: string | undefined; paper: 'a4' | 'letter' }) => {
    const name = { a4: 'A4', letter: 'Letter' }[f.paper];
    return f.file === undefined
      ? 'The guide can be made (trial run, nothing written).'
      : `How to make and measure a swatch is in ${f.file}: print its sheets at 100 % on ${name}, and check the squares.`;
  },
  guide: {
    title: 'Measure your stitch',
    describe:
      'How to make and measure a swatch, and a turn gauge to lay it on; to be printed at 100 %.',
    intro:
      'Every hand works a different stitch. A small trial panel, a swatch, tells how high, how wide and how slanting yours is, so that the chart and the finished size fit your hand.',
    steps: (f: GuideFacts) => [
      {
        head: 'Work it.',
        text: `String ${f.beads} beads (${f.size}) of one colour on the ball, and work ${f.rounds} rounds of ${f.wedges} wedges with the thread and hook of the purse, a bead on every stitch (the last sheet tells how the stitch is worked), increase in the ${f.increase} stitch of each wedge, ${f.construction === 'spiral' ? 'in a spiral' : 'every round joined'}, ${f.hand} hand. After round ${f.fromRound} mark the thread 1 m from the hook.`,
      },
      {
        head: 'Mark it.',
        text: `In round ${f.fromRound} and in round ${f.toRound}, put a loop of bright thread around the first stitch of wedge ${f.markedWedge}${f.markedWedge === 1 ? ' (the first stitch of the round)' : ''}.`,
      },
      {
        head: 'Look at it.',
        text: 'Damp it, pat it out, let it dry. Does it lie flat? When it stands up like a saucer it cups, when its rim waves it ruffles: then leave out step 4, and add --lies\u00a0cups or --lies\u00a0ruffles.',
      },
      {
        head: 'Across.',
        text: 'The widest place, over the outer edges of the beads, with callipers or between two upright blocks.',
      },
      {
        head: 'Along the rim.',
        text: `In the middle of wedge ${f.rimWedge}, lay a thread along the last round for 50 mm, over the middles of the beads, and count the stitches from bead middle to bead middle. Halves count.`,
      },
      {
        head: 'Turn.',
        text: `Lay it on the gauge, beads up, its hole on the cross, the marked stitch of round ${f.fromRound} on the line of 0. Lay a ruler from the cross over the marked stitch of round ${f.toRound}: read the degrees, and whether they are with or against the work.`,
      },
      {
        head: 'Thread.',
        text: `How many stitches did the metre make, from the end of round ${f.fromRound} until the mark reached the hook?`,
      },
      { head: 'Beads.', text: 'String 50 beads, push them together, measure the row.' },
    ],
    write: 'Write down',
    blanks: (f: GuideFacts) => [
      'across, mm',
      'stitches along 50 mm of the rim',
      `turn, round ${f.fromRound} to ${f.toRound}, degrees`,
      'with or against the work',
      'stitches from 1 m of thread',
      '50 beads, mm',
    ],
    then: (f: GuideFacts) =>
      `Then: rondure swatch --wedges ${f.wedges} --rounds ${f.rounds}${f.increase === 'last' ? '' : ` --increase ${f.increase}`}${f.construction === 'spiral' ? '' : ' --construction joined'}${f.hand === 'right' ? '' : ' --hand left'}${f.beadsFace === 'away' ? '' : ' --beads-face toward'}${f.size === '11/0' ? '' : ` --size "${f.size}"`}${f.markedWedge === 1 ? '' : ` --marked-wedge ${f.markedWedge}`} --across … --rim-stitches … --turn "…\u00a0against" --stitch … --from-round ${f.fromRound} --to-round ${f.toRound} --thread-mm 1000 --thread-stitches … --fifty-beads … -o swatch.json`,
    care: 'Take care: keep beads and needles away from small children. Wear goggles when you break a bead. Rest eyes and hands every half hour. Where you live or sell, local rules come first.',
    stitchTitle: 'The stitch',
    stitchIntro:
      'Take the one that you will work the purse in, and keep to it: thread, hook, loops and hand make the size. A swatch in one of them says nothing about the others. What you say of it with your measures stands below each.',
    ways: {
      'both-loops': 'Bead single crochet (US), double crochet (UK), under both loops',
      'bead-side-loop': 'The same under one loop, the one on the side of the beads',
      slip: 'Slip-stitch bead crochet',
    },
    chooseWay: (way: 'both-loops' | 'bead-side-loop' | 'slip') =>
      `When you give your measures: --stitch ${way}`,
    gaugeTitle: 'Turn gauge',
    round: (r: number) => `round ${r}`,
    lean: (lean: number) => `lean ${lean}`,
    with: 'with the work',
    against: 'against the work',
    scale:
      'Print at 100 %, “actual size”. Measure the squares: when they are off by more than half a millimetre, print again without scaling. Grey: rounds and wedges of a usual stitch, to centre the piece. Outside the scale: where the marked stitch comes to lie with a lean of 0, 0.25 and 0.5 stitches.',
  },
  rulerNeeds:
    'A known length in the photograph needs --ruler-length and two points ruler=x,y in --points: give both.',
  twoLeans: 'both give the lean',
  notWithGuide: 'the guide is made before anything is measured',
  expected: {
    ruler: (mm: number) => `a precision above 0 and up to ${mm} mm`,
    guideName: 'a name that ends in .svg or .pdf',
    turn: 'how far and which way, with or against the work: "24deg against", "5deg with", or in stitches "2.5st against"',
    points:
      'points such as "centre=512,480; rim1=512,60; 5/1=700,300" (rim and wedge, or round/wedge, = x,y), one of them the centre',
    inside: (f: { width: number; height: number }) =>
      `points inside the photograph, which is ${f.width} × ${f.height} pixels`,
    stitch: (f: { rounds: number; wedges: number }) =>
      `rounds from 1 to ${f.rounds} and wedges from 1 to ${f.wedges}`,
    once: 'every stitch once',
  },
  title: (f: { file: string | undefined }) =>
    f.file === undefined ? 'Your swatch (nothing written)' : `Your swatch is in ${f.file}`,
  rows: {
    worked: 'worked',
    height: 'round height',
    width: 'stitch width',
    lean: 'lean',
    flat: 'lies flat',
    thread: 'thread',
    bead: 'bead length',
  },
  worked: (f: {
    wedges: number;
    rounds: number;
    increase: string;
    outline: string;
    construction: string;
    hand: string;
  }) =>
    `${f.wedges} wedges, ${f.rounds} rounds, increase ${f.increase}, ${f.outline}, ${f.construction}, ${f.hand} hand`,
  mm: (f: { value: number } & EstimateEnds) => `${between(f, 2)} mm`,
  lean: (f: { value: number } & EstimateEnds) => `${between(f, 2)} stitches`,
  flat: (f: { value: number; wedges: number; outline: Outline } & EstimateEnds) =>
    `with ${between(f, 1)} increases a round, as a ${f.outline}: take ${f.wedges} wedges`,
  perStitch: (f: { value: number } & EstimateEnds) => `${between(f, 1)} mm a stitch`,
  unknown: 'not measured',
  note: (f: { spiralLean: boolean }) =>
    `In brackets: what the precision of your ruler and of your count allows.${f.spiralLean ? ' The lean from a spiral swatch is good to about 0.1 of a stitch, whatever the ruler says.' : ''} Use it: --swatch swatch.json with frame, chart, blank or rounds.`,
  cure: {
    cups: (f: { wedges: number }) =>
      `The swatch cups: ${f.wedges} increases a round are too few for your hand. Work it again with ${f.wedges < 12 ? `${f.wedges + 1} wedges, or with ` : ''}a thinner hook or tighter posts so that rounds become lower.`,
    ruffles: (f: { wedges: number }) =>
      `The swatch ruffles: ${f.wedges} increases a round are too many for your hand. Work it again with ${f.wedges > 3 ? `${f.wedges - 1} wedges, or with ` : ''}a larger hook so that rounds become higher.`,
  },
  warnings: {
    noHeight: (f: { lies: SwatchLies }) =>
      `A swatch that ${f.lies} gives no round height from its width: the width tells only how long the rim is. Its other measurements hold.`,
    rimShort: (f: { wedges: number; flat: number }) =>
      `The rim is too short for that width: with this stitch ${short(f.flat, 1)} increases a round would lie flat, and you made ${f.wedges}. If it cups, say --lies cups; otherwise measure width and rim once more.`,
    rimLong: (f: { wedges: number; flat: number }) =>
      `The rim is too long for that width: with this stitch ${short(f.flat, 1)} increases a round would lie flat, and you made ${f.wedges}. If it ruffles, say --lies ruffles; otherwise measure width and rim once more.`,
    heights: (f: { widthMm: number; photoMm: number }) =>
      `The width gives a round height of ${f.widthMm.toFixed(2)} mm, the photograph ${f.photoMm.toFixed(2)} mm (which is taken): check --across, --ruler-length and that the ruler lies level with the beads.`,
    leanRough: (f: { off: number }) =>
      `The lean is rough (± ${short(f.off)}): the rounds of the turn lie close together. Measure from a lower --from-round to the last round.`,
    outlineUnsure: (f: { outline: Outline; other: Outline; increase: string } & EstimateEnds) =>
      `With a lean of ${short(f.least)} to ${short(f.most)} and the increase in the ${f.increase} stitch the rim may come out as a polygon or as a circle; ${f.outline} is taken, and the brackets allow for both. Look at the swatch: if its rim ${f.other === 'polygon' ? 'has a corner in every wedge' : 'has no corners'}, say --outline ${f.other}, otherwise --outline ${f.outline}.`,
    photoMiss: (f: { pixels: number; wanted: number }) =>
      `The points lie ${short(f.pixels, 1)} pixels off where they should, more than the ${short(f.wanted, 1)} that you said: check their rounds and wedges, and that the piece lies flat.`,
    otherHand: (f: { swatch: string; panel: string }) =>
      `The swatch was worked with the ${f.swatch} hand, this panel is for the ${f.panel}: another hand works another stitch, so take its numbers as estimates and measure a swatch of the ${f.panel} hand.${f.panel === 'right' ? ` If you work with the ${f.swatch}, add --hand ${f.swatch}.` : ''}`,
    otherFace: (f: { swatch: string; panel: string }) =>
      `On the swatch beads lie ${f.swatch}, on this panel ${f.panel}: that is another stitch. Add --beads-face ${f.swatch}, or measure a new swatch.`,
    otherStitch: (f: { swatch: string; panel: string }) =>
      `The swatch was worked with --stitch ${f.swatch}, this panel is with --stitch ${f.panel}: measure a swatch in the stitch of the panel.`,
    otherIncrease: (f: { swatch: string; panel: string }) =>
      `The swatch was increased in the ${f.swatch} stitch, this panel in the ${f.panel}: the stitch and its lean still hold, the turn is worked out anew.`,
    otherWedges: (f: { swatch: number; panel: number }) =>
      `The swatch has ${f.swatch} wedges, this panel ${f.panel}: the stitch and its lean still hold, but see whether the panel lies flat.`,
    otherConstruction: (f: { swatch: string; panel: string }) =>
      `The swatch was worked ${f.swatch}, this panel ${f.panel}: the stitch holds, but joins may make rounds a little higher.`,
    otherBead: (f: { swatchMm: number; panelMm: number }) =>
      `The swatch was worked with beads of ${short(f.swatchMm)} mm, this panel has beads of ${short(f.panelMm)} mm: measure a swatch with these beads.`,
    notFlat: (f: { lies: SwatchLies; wedges: number }) =>
      `The swatch with ${f.wedges} wedges ${f.lies === 'cups' ? 'cupped' : 'ruffled'}, and so will this panel: try ${f.lies === 'cups' ? f.wedges + 1 : f.wedges - 1} wedges.`,
  },
  errors: swatchErrors,
};
