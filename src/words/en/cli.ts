import { numbersIn } from '../pages/numbers.js';
import type { SizeRange } from '../pages/numbers.js';
import { tryHelp } from './usage.js';

const { sizeMm } = numbersIn('en-GB');

/** Words of the command line: help and the summary. */
export const cli = {
  about:
    'Turns a picture into a round bead-crochet panel that can really be made: chart, stringing list, shopping list.',
  chart: 'make a panel pattern from a picture',
  chartPicture: 'the picture: JPEG, PNG, WebP, GIF, TIFF, AVIF or SVG; - reads standard input',
  examples: `Examples:
  rondure chart fixtures/kingfisher.svg -o kingfisher
  rondure chart fixtures/barley-moon.svg --beads palettes/harbour.csv -o moon
  rondure chart fixtures/lighthouse.svg --across 7cm --hand left -o lighthouse
  rondure chart fixtures/kingfisher.svg --back fixtures/lighthouse.svg -o purse
`,
  allExamples: `Examples (fixtures and palettes lie in Rondure's own folder):
  rondure chart fixtures/kingfisher.svg -o bird
  rondure beads palettes/harbour.csv
  rondure redraw bird/pattern.json --force
  rondure blank --wedges 6 -o empty
`,
  exitCodes: `Exit codes:
  0    done
  1    a fault of this program
  2    wrong use: an option or a combination of options
  3    unusable input: picture, palette, pattern, rounds, swatch, frame or font
  4    a panel that cannot be made
  5    output that cannot be written
  130  interrupted`,
  groups: {
    files: 'Files:',
    shape: 'How the panel is worked:',
    picture: 'The picture:',
    colours: 'Colours:',
    frame: 'The purse frame:',
    thread: 'The thread:',
    amount: 'How much:',
    measured: 'What you measured:',
    making: 'Making up:',
    printing: 'What is written and printed:',
    rest: 'More options:',
  },
  options: {
    output: 'the new folder for the pattern and its charts',
    beads: 'your beads as CSV, JSON or GIMP palette; - reads standard input',
    from: 'go on from an earlier pattern.json (or wish.json): its choices hold where you type none',
    beadsDefault: 'a mixed palette of 120 colours',
    colours: 'most bead colours to use, 1 to 24',
    colors: 'the same as --colours',
    wedges: 'wedges, 3 to 12',
    rounds: 'rounds, 2 to 80',
    across: 'finished size instead of rounds: 90, 90mm, 9cm or 3.5in',
    acrossDefault: 'what --rounds gives',
    size: 'bead size, for instance 11/0',
    sizeDefault: "the palette's own, else 11/0",
    roundHeight: 'height of a round in mm, from your swatch',
    stitchWidth: 'width of a stitch in mm, from your swatch',
    stitchDefault: 'from the bead size',
    increase: 'which stitch of each wedge is doubled',
    lean: 'how far a stitch leans back over the one below, in stitches, -1 to 1',
    outline: 'shape of the rim',
    outlineDefault: 'polygon where it nests, else circle',
    construction: 'work in a spiral or join every round',
    hand: 'the hand that holds the hook',
    beadsFace: 'which way the beads lie: away from you or toward you',
    stitch:
      'single crochet under both loops or under the loop on the side of the beads alone, or slip stitch: told on the pages',
    stitchWayDefault: 'that of the swatch; else both-loops, with a lean up to 0.375 bead-side-loop',
    start: 'where round 1 begins, degrees clockwise from 12 o’clock',
    startDefault: "so that the rim's step lies at 12 o'clock",
    place:
      'subject: what stands on a clear or plain ground, as large as it goes inside the rim; fill: the shorter side spans the panel; fit: the longer side does; inside: all inside the rim',
    placeDefault: 'subject, and fill where none is found; inside with --repeat',
    zoom: 'enlarge the picture, for instance 1.2',
    shift: 'move the picture right and down, in mm, for instance 3,-2',
    rotate: 'turn the picture clockwise, in degrees',
    mirror: 'flip the picture left to right',
    repeat: 'put the picture on one wedge, its top toward the rim, and repeat it in every wedge',
    off: 'off',
    art: 'photo keeps mean colours; drawing keeps outlines; auto decides',
    paper:
      'the picture is a drawing on paper, scanned or photographed: make the paper white and keep its lines',
    ink: 'percent of a stitch that a dark outline must cover to win it, in a drawing, 1 to 100',
    detail: 'how much small things that stand out count, 0 (off) to 1',
    edges:
      'how much it counts that neighbours which differ in the picture differ in beads, 0 (off) to 1',
    lift: 'how far a picture of little contrast is stretched onto what your beads show, 0 (off) to 1',
    mask: 'a picture laid like PICTURE: white matters most, black counts as usual; - reads standard input',
    subject:
      'what to cut out of its ground, which then is --background: plain finds it on a ground of one colour; or a picture laid like PICTURE, white on the subject; - reads standard input',
    back: 'a second panel: a picture, “plain:” and a bead (plain:op-07), or “same” for the same picture; - reads standard input',
    backPlace: 'how the picture of the back lies, as --place',
    backZoom: 'enlarge the picture of the back, as --zoom',
    backShift: 'move the picture of the back, as --shift',
    backRotate: 'turn the picture of the back, as --rotate',
    backMirror: 'flip the picture of the back left to right: yes or no',
    asFront: 'as the front',
    background:
      'colour, bead or "bare" around the picture and under its transparent parts; auto: white, or a quiet bead where the outline would melt into white',
    keep: 'beads that must be used: ids or names, separated by commas',
    leaveOut: 'beads that must not be used: ids or names, separated by commas',
    proof: 'how long to look for a proof that no other choice of beads is nearer',
    tidy: 'fewer colour changes and stray beads, for this much more difference, in percent; 0 = off',
    dither:
      'mix colours bead by bead instead of tidying, 0 to 1 (0.75 is good): finer shades, many more colour changes',
    none: 'none',
    useStock: 'use no more of a bead than the palette has in stock (columns grams or count)',
    title: 'title of the pattern',
    titleDefault: "the picture's name",
    lengthBeads: 'most beads on one length of thread',
    lengthM: 'most strung beads on one length of thread, in metres',
    lengthDefault: '1.5 m',
    threadPerStitch: 'thread that one stitch takes, in mm, from your swatch',
    perStitchDefault: 'by bead size, 24 for 11/0',
    threadDiameter: 'how thick the thread is, in mm',
    threadTex: 'how thick the thread is, in tex: grams of 1,000 m',
    threadName: 'what the thread is called in the shopping list',
    reserve: 'thread to have over what the stitches take, in per cent',
    tail: 'what hangs out at each end of a length of thread: 20cm, 8in',
    spoolM: 'metres of thread on one ball or spool, to say how many to buy',
    spoolPrice: 'what one ball or spool costs',
    hook: 'the hook that you work with, in mm; it is kept in the pattern',
    hookDefault: 'what is usual for the bead',
    notKnown: 'not known',
    json: 'print the summary as one JSON object',
    quiet: 'print nothing but errors',
    force: 'replace the files of an earlier pattern in the folder; other files stay',
    dryRun: 'say what would be made, write nothing',
    version: 'print the version',
    help: 'show this help',
  },
  steps: {
    reading: 'Reading the picture …',
    choosing: 'Choosing beads …',
    drawing: 'Drawing the chart …',
    rendering: 'Painting the panel …',
    booklet: 'Setting the booklet …',
    writing: 'Writing the files …',
  },
  summary: {
    title: (f: { title: string; folder: string; dry: boolean }) =>
      f.dry ? `“${f.title}” (trial run, nothing written)` : `“${f.title}” is in ${f.folder}`,
    rows: {
      panel: 'panel',
      beads: 'beads',
      across: 'across',
      colours: 'colours',
      difference: 'difference',
      choice: 'choice',
      thread: 'thread',
      metres: 'needs',
      tidy: 'tidied',
      dither: 'dithered',
      art: 'picture',
      place: 'place',
      ground: 'ground',
      cutOff: 'cut off',
      kept: 'kept',
      stock: 'stock',
    },
    panel: (f: { wedges: number; rounds: number; stitches: string; panels: number }) =>
      `${f.panels > 1 ? 'two, each of ' : ''}${f.wedges} wedges, ${f.rounds} rounds, ${f.stitches} stitches`,
    ofPanel: (f: { panel: string; text: string }) => `${f.panel} ${f.text}`,
    across: (f: { across: SizeRange; wishMm: string | undefined }) =>
      [
        `${f.across.leastMm === f.across.mostMm ? '' : 'about '}${sizeMm(f.across, 1)} mm`,
        ...(f.wishMm === undefined ? [] : [` (you asked for ${f.wishMm} mm)`]),
        ...(f.across.leastMm === f.across.mostMm ? [] : ['; a swatch tells it exactly']),
      ].join(''),
    difference: (f: { mean: string; worst: string }) =>
      `${f.mean} on average, ${f.worst} at worst (under 2 is hard to see)`,
    choice: (f: { most: number; proven: boolean; percent: string }) => {
      const other = f.most === 1 ? 'no other bead' : `no other choice of up to ${f.most} beads`;
      return f.proven
        ? `${other} is nearer to the picture (proven)`
        : `${other} can be more than ${f.percent} % nearer to the picture`;
    },
    thread: (f: { changes: string; one: boolean }) =>
      f.one ? '1 colour change' : `${f.changes} colour changes`,
    tidy: (f: {
      changes: readonly [before: string, after: string];
      strays: readonly [before: string, after: string];
      cost: string;
    }) => {
      const [changes, strays] = [f.changes, f.strays].map(([before, after]) =>
        before === after ? `still ${after}` : `from ${before} to ${after}`,
      );
      return `colour changes ${changes}, stray beads ${strays}, for ${f.cost} % more difference`;
    },
    notTidied: (f: { strays: string; one: boolean }) =>
      `nothing to gain${f.strays === '0' ? '' : `; ${f.strays} stray ${f.one ? 'bead stays' : 'beads stay'}`}`,
    dither: (f: { strength: string }) =>
      `strength ${f.strength}: look at it from across the room; many colour changes`,
    art: (f: { art: 'photo' | 'drawing'; decided: boolean }) =>
      `${f.decided ? 'taken' : 'treated'} as a ${f.art}${f.decided ? ' (--art changes that)' : ''}`,
    kept: (f: {
      edges: string;
      features: number;
      kept: number;
      /** Colours of areas that became one, and the hour of a clock where; 0 in the middle. */
      merged: readonly { own: string; other: string; hour: number }[];
    }) =>
      [
        `${f.edges} % of the edges`,
        f.features === 0 ? [] : [`${f.kept} of ${f.features} small features`],
        f.merged
          .slice(0, 2)
          .map(
            ({ own, other, hour }) =>
              `${own === other ? `two areas of ${own} merge` : `${own} and ${other} merge`} ${hour === 0 ? 'in the middle' : `at ${hour} o’clock`}`,
          ),
        f.merged.length > 2 ? [`${f.merged.length - 2} more areas merge`] : [],
      ]
        .flat()
        .join(', '),
    place: (f: { laid: 'subject' | 'fit' | 'fill' | 'inside' }) =>
      f.laid === 'subject'
        ? 'the subject as large as it goes inside the rim (--place changes that)'
        : 'the shorter side spans the panel; no subject was told from its ground (--place changes that)',
    cutOff: (f: { rim: number; frame: number }) =>
      `${[
        ...(f.rim > 0 ? [`${f.rim} % of the picture lies beyond the rim`] : []),
        ...(f.frame > 0
          ? [`${f.frame} %${f.rim > 0 ? '' : ' of the picture'} lies under the frame`]
          : []),
      ].join(
        ', ',
      )}, its plain ground not counted${f.rim > 0 ? ' (--place inside, with no --zoom or --shift, shows all of it)' : ''}`,
    ground: (f: { id: string; name: string }) =>
      `${f.name} (${f.id}), so that the outline stands out; --background ffffff makes it white`,
    stock: (f: { runsOut: readonly string[]; tooFew: readonly string[]; cost: string }) =>
      [
        f.runsOut.length > 0 ? [`used up but for the reserve: ${f.runsOut.join(', ')}`] : [],
        f.tooFew.length > 0 ? [`too few of ${f.tooFew.join(', ')}`] : [],
        f.runsOut.length + f.tooFew.length === 0 ? ['enough of every bead, and a reserve'] : [],
        f.cost === '' ? [] : [f.cost],
      ]
        .flat()
        .join('; '),
    stockCost: (f: { mean: string; unlimited: string }) =>
      `with enough of every bead the difference would be ${f.unlimited} on average, not ${f.mean}`,
    metres: (f: { metres: string; panels: number }) =>
      `about ${f.metres} m of thread for ${f.panels === 1 ? 'this panel' : 'both panels'}`,
    warning: 'Note:',
  },
  untitled: 'Panel',
  error: 'Error:',
  notPrinted: (f: { detail: string }) =>
    `The summary could not be printed (${f.detail}): free some space, or send it elsewhere.`,
  bug: 'That was a fault of this program, not yours. Please report it with this text:',
  tryHelp,
};
