import type { GuideFacts } from '../pages/english/swatch.js';
import { pages } from './pages.js';
import { swatchErrors } from './swatch-errors.js';

/** A number with two places at most, without zeros at its end. */
const short = (value: number, places = 2) => String(Number(value.toFixed(places)));

/** The least and the most of an estimate, in its own unit. */
export interface EstimateEnds {
  /** The least that the precision of the measurement allows. */
  least: number;
  /** The most. */
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
    language: 'language of the guide',
    force: 'replace an earlier file of ours',
    dryRun: 'print what follows, write nothing',
    use: 'swatch.json: stitch width, round height and lean as measured',
  },
  guideMade: (f: { file: string | undefined; paper: 'a4' | 'letter' }) => {
    const name = { a4: 'A4', letter: 'Letter' }[f.paper];
    return f.file === undefined
      ? 'The guide can be made (trial run, nothing written).'
      : `How to make and measure a swatch is in ${f.file}: print its sheets at 100 % on ${name}, and check the squares.`;
  },
  guide: pages.swatch.guide,
  /** The command that works out what was written down on the guide. */
  guideThen: (f: GuideFacts) =>
    `When you have measured: rondure swatch --wedges ${f.wedges} --rounds ${f.rounds}${f.increase === 'last' ? '' : ` --increase ${f.increase}`}${f.construction === 'spiral' ? '' : ' --construction joined'}${f.hand === 'right' ? '' : ' --hand left'}${f.beadsFace === 'away' ? '' : ' --beads-face toward'}${f.size === '11/0' ? '' : ` --size "${f.size}"`}${f.markedWedge === 1 ? '' : ` --marked-wedge ${f.markedWedge}`} --across … --rim-stitches … --turn "… against" --stitch both-loops --from-round ${f.fromRound} --to-round ${f.toRound} --thread-mm 1000 --thread-stitches … --fifty-beads … -o swatch.json (stitch 2 of the last sheet: --stitch bead-side-loop; stitch 3: --stitch slip; when it cups or ruffles, --lies cups or --lies ruffles in place of --across).`,
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
