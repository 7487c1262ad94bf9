import { recolour } from './recolour.js';
import { swatch } from './swatch.js';

/** One sentence for each warning code: what was noticed, and the cure. */
export const warnings = {
  'booklet-of-before': (f: { file: string }) =>
    `${f.file} in the folder was left as it is and may be of the pattern before: make it again with rondure booklet, or add --booklet.`,
  'thumbnail-damaged': (f: { panel: string | undefined }) =>
    `The small picture that the pattern keeps${f.panel === undefined ? '' : ` of its ${f.panel} panel`} is damaged, so that the comparison with it (compare.png) is left out; everything else is whole.`,
  'polygon-stretches': (f: { increase: string; lean: number }) =>
    `With the increase in the ${f.increase} stitch and a lean of ${f.lean} the corners of a polygon drift from round to round: the drawn outline is only a rough guide; --outline circle fits better.`,
  'panel-cups': (f: { wedges: number; flatWedges: number }) =>
    `${f.wedges} wedges are too few for this stitch to lie flat (about ${f.flatWedges} would): the panel will cup. Use more wedges, a wider stitch or a lower round.`,
  'panel-ruffles': (f: { wedges: number; flatWedges: number }) =>
    `${f.wedges} wedges are too many for this stitch to lie flat (about ${f.flatWedges} would): the rim will ruffle. Use fewer wedges, a narrower stitch or a higher round.`,
  'thread-per-stitch-unusual': (f: {
    gotMm: number;
    widthMm: number;
    usualLeastMm: number;
    usualMostMm: number;
  }) =>
    `${Number(f.gotMm.toFixed(1))} mm of thread for a stitch ${Number(f.widthMm.toFixed(2))} mm wide is far from the usual ${f.usualLeastMm.toFixed(0)} to ${f.usualMostMm.toFixed(0)} mm: measure it again (mark a metre, work it, count the stitches).`,
  'thread-too-thick': (f: { diameterMm: number; size: string; holeMm: number; mostMm: number }) =>
    `The thread (${f.diameterMm.toFixed(2)} mm) is too thick for the hole of ${f.size} beads (usually ${f.holeMm} mm, thread up to ${f.mostMm.toFixed(2)} mm): take a thinner thread or larger beads.`,
  'thread-too-thick-doubled': (f: {
    diameterMm: number;
    size: string;
    holeMm: number;
    mostMm: number;
  }) =>
    `The thread (${f.diameterMm.toFixed(2)} mm) goes through the hole of ${f.size} beads (usually ${f.holeMm} mm), but not folded at a needle's eye (up to ${f.mostMm.toFixed(2)} mm): stiffen its end, or string over a loop of thinner thread.`,
  'stitch-smaller-than-bead': (f: { what: 'width' | 'height'; gotMm: number; beadMm: number }) =>
    `A stitch ${f.what} of ${f.gotMm} mm is less than nine tenths of the bead (${f.beadMm} mm): the beads will not fit side by side. Measure a swatch, or use smaller beads.`,
  'swatch-no-height': swatch.warnings.noHeight,
  'swatch-rim-short': swatch.warnings.rimShort,
  'swatch-rim-long': swatch.warnings.rimLong,
  'swatch-heights-differ': swatch.warnings.heights,
  'swatch-lean-rough': swatch.warnings.leanRough,
  'jar-runs-out': recolour.jarRunsOut,
  'laid-beads-lost': (f: { lost: number }) =>
    `${f.lost === 1 ? '1 bead' : `${f.lost} beads`} laid by hand ${f.lost === 1 ? 'has' : 'have'} no stitch in this panel and ${f.lost === 1 ? 'was' : 'were'} left out: they hold for the wedges and rounds that they were laid on.`,
  'swatch-outline-unsure': swatch.warnings.outlineUnsure,
  'photo-points-miss': swatch.warnings.photoMiss,
  'swatch-other-hand': swatch.warnings.otherHand,
  'swatch-other-face': swatch.warnings.otherFace,
  'swatch-other-stitch': swatch.warnings.otherStitch,
  'swatch-other-increase': swatch.warnings.otherIncrease,
  'swatch-other-wedges': swatch.warnings.otherWedges,
  'swatch-other-construction': swatch.warnings.otherConstruction,
  'swatch-too-late': () =>
    'This pattern was laid out for another stitch than that of your swatch: the thread is now right, but size and lean are not. Make the chart again with --swatch to have both.',
  'swatch-other-bead': swatch.warnings.otherBead,
  'swatch-not-flat': swatch.warnings.notFlat,
  'kept-bead-unused': (f: { id: string }) =>
    `The bead “${f.id}” is kept, but no stitch comes nearest to it, so it is not in the chart.`,
  'palette-sizes-left-out': (f: { count: number; size: string; others: readonly string[] }) =>
    `${f.count === 1 ? '1 bead' : `${f.count} beads`} of the palette (size ${f.others.join(', ')}) left out: the panel is worked in ${f.size}. Use --size to choose another size.`,
  'palette-jars-shared': (f: { column: string }) =>
    `The palette’s column ${f.column} is not taken for the beads’ ids, since several beads share a cell of it or have none: the number of the row is the id.`,
  'palette-columns-ignored': (f: { columns: readonly string[] }) =>
    `The palette's ${f.columns.length === 1 ? 'column' : 'columns'} ${f.columns.join(', ')} ${f.columns.length === 1 ? 'is' : 'are'} not used.`,
  'beads-look-alike': (f: { pairs: readonly string[]; more: number }) =>
    `Easily mistaken for one another on the needle: ${pairList(f)}. Keep these beads in marked dishes, or use fewer --colours.`,
  'beads-look-alike-to-some': (f: {
    sights: readonly { sight: string; pairs: readonly string[]; more: number }[];
  }) =>
    `With colour-blind eyes these look alike: ${f.sights.map((one) => `${pairList(one)} (${one.sight})`).join('; ')}. Go by the letters, and keep the beads in marked dishes.`,
  'beads-alike-in-grey': (f: { pairs: readonly string[]; more: number }) =>
    `In a grey print these look alike: ${pairList(f)}. Go by the letters, or print in colour.`,
  'jars-empty': (f: { places: readonly string[] }) =>
    `Nothing is seen at ${f.places.join(', ')}, so no bead is made for ${f.places.length === 1 ? 'it' : 'them'}: a white bead on white paper needs a darker sheet, and its colour typed in by hand.`,
  'paper-too-bright': (f: { percent: number }) =>
    `${f.percent} % of the paper is burnt out to white in the photograph, so the beads may come out too light: take it again a little darker.`,
  'paper-too-dark': () =>
    'The paper in the photograph is dark, so the colours are rough: take it again in more light.',
  'jar-mixed': (f: { places: readonly string[] }) =>
    `The beads at ${f.places.join(', ')} are of several colours, or shine strongly: look at ${f.places.length === 1 ? 'its' : 'their'} sample before you use it.`,
  'ground-not-plain': (f: { file: string }) =>
    `The subject of ${f.file} could not be cut out: its border is not one colour all round. Paint a picture of the same shape, white on the subject and black elsewhere, and give it to --subject.`,
  'hardly-known': (f: {
    percent: number;
    features: number;
    featuresKept: number;
    colours: number;
    file?: string;
  }) =>
    `Only ${f.percent} % of the edges${f.features === 0 ? '' : ` and ${f.featuresKept} of ${f.features} small features`} of ${f.file ?? 'the picture'} can still be told on the panel: look at worked.png from arm's length before you begin. More rounds or more than ${f.colours} colours show more; so does a larger --zoom on what matters, or a plainer picture.`,
  'thin-lines-lost': (f: { percent: number; rounds?: number; file?: string }) =>
    `About ${f.percent} % of ${f.file === undefined ? "the picture's lines" : `the lines of ${f.file}`} are lost, because they are thinner than a bead. Add --paper, which draws thin lines thicker, or try --zoom, ${f.rounds === undefined ? 'more rounds' : `${f.rounds} rounds or so, at which they would show`}, or a picture with bolder lines.`,
  'motif-too-fine': (f: { percent: number; file?: string }) =>
    `${f.file === undefined ? 'The motif' : `The motif ${f.file}`} is finer than the beads of one wedge: about ${f.percent} % of its stitches hold two colours or more, and lines and gaps run into one another. Look at compare.png, and try more rounds, a larger --zoom, or a motif of a few bold shapes.`,
  'mask-says-nothing': (f: { name: string }) =>
    `The mask ${f.name} is of one tone all over the panel, so it changes nothing: paint what matters most white and the rest black.`,
  'one-colour-only': (f: { letter: string; name: string }) =>
    `Every stitch takes the same bead (${f.letter}, ${f.name}): the picture is lost, usually because its lines are thinner than a bead or it lies outside the panel. Try --zoom, --place or more rounds, or a picture with bolder shapes.`,
  'bead-unused': (f: { letter: string; name: string }) =>
    `No stitch carries bead ${f.letter} (${f.name}) any more; you need none of it.`,
  'stock-not-told': (f: { count: number; all: number }) =>
    f.count === f.all
      ? 'The palette does not say how many beads are in stock, so --use-stock limits nothing: add a column count, or grams and beadsPerGram, with what is in each jar.'
      : `Of ${f.count === 1 ? '1 bead' : `${f.count} beads`} the palette does not say how many are in stock (column count, or grams and beadsPerGram), so there are taken to be enough of ${f.count === 1 ? 'it' : 'them'}.`,
  'stock-estimated': (f: { count: number; perGram: readonly number[] }) =>
    `Grams in stock were turned into beads by the usual figure (${f.perGram.join(' or ')} beads a gram), which can be a quarter off: weigh a hundred of yours, and add the column beadsPerGram, or a count.`,
  'frame-ratio': (f: { rounds: number; ratio: number; from: number; to: number }) =>
    `With ${f.rounds} rounds the panel is ${f.ratio.toFixed(2)} times as wide as the frame; 1.10 to 1.30 is usual, which ${f.from === f.to ? `${f.from} rounds give` : `${f.from} to ${f.to} rounds give`}.`,
  'frame-opens-wide': (f: { percent: number }) =>
    `${f.percent} % of the rim lies in the frame (40 to 55 % is usual): the purse opens very wide, and its seam is short. Take more rounds, or check the height of the frame.`,
  'bead-made-up': (f: { letter: string; name: string }) =>
    `The palette has no bead for ${f.letter} (${f.name}), so it is drawn in a colour of ours: give your beads with --beads.`,
};

function pairList(f: { pairs: readonly string[]; more: number }): string {
  const more = f.more > 0 ? ` and ${f.more} more ${f.more === 1 ? 'pair' : 'pairs'}` : '';
  return `${f.pairs.join(', ')}${more}`;
}
