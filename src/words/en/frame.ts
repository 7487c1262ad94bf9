import { runsText } from '../pages/english/frame.js';
import { numbersIn } from '../pages/numbers.js';
import type { SizeRange } from '../pages/numbers.js';
import { pages } from './pages.js';

const { sizeMm } = numbersIn('en-GB');

/** 7.5 hours as 7:30, and 0 as 12:00. */
const clock = (degrees: number): string => {
  const minutes = Math.round(degrees * 2) % 720;
  const hour = Math.floor(minutes / 60);
  return `${hour === 0 ? 12 : hour}:${String(minutes % 60).padStart(2, '0')}`;
};
const plural = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;

/** Words of `frame`, of `chart --frame`, and of the frame in the texts and on the chart. */
export const frame = {
  ...pages.frame,
  about: 'plan a panel for a purse frame: how large, and which stitches lie in the frame',
  examples: `Examples:
  rondure frame --width 85mm --height 45mm -o frame.json
  rondure chart fixtures/kingfisher.svg --frame frame.json -o bird
  rondure frame --kind squared --width 10cm --height 5cm --fixing glued
`,
  options: {
    output: 'the new file for the frame, to give to chart --frame',
    kind: 'half an ellipse; straight with rounded corners; or an ellipse that bends in again toward the hinges',
    width: 'width of the frame at its widest: 85, 85mm, 8.5cm or 3.3in',
    height: 'height of the frame, from the line between the hinges to its top',
    corner: 'corner radius of a squared frame',
    cornerDefault: '15mm, or as much as there is room for',
    hinge: 'distance between the hinges of an oval frame',
    hingeDefault: '0.8 of the width',
    fixing: 'sewn through holes, or glued into a channel',
    channel: 'depth of the channel of a glued frame',
    holes: 'distance between the holes of a sewn frame',
    fourMm: '4mm',
    needed: 'needed',
    ratio: 'width of the panel as it hangs over the width of the frame; 1.10 to 1.30 is usual',
    gather:
      'how much longer than the rail the rim is, in per cent; below 0 it is shorter and stretched',
    rounds: 'rounds, 2 to 80',
    roundsDefault: 'the number that suits the frame',
    force: 'replace an earlier frame.json',
    json: 'print the plan as one JSON object',
    frame: 'frame.json from rondure frame: sizes the panel, leaves the stitches in the frame bare',
    bareRounds: 'rounds without beads in the frame, 0 to 20',
    bareDefault: '2 for a sewn frame; the channel and 1 mm for a glued one',
  },
  rows: {
    rail: 'rail',
    panel: 'panel',
    rim: 'in the frame',
    stitches: 'its stitches',
    bare: 'bare',
    fit: 'fit',
    holes: 'holes',
    hinges: 'hinges',
    seam: 'seam',
  },
  title: (f: {
    kind: 'half-round' | 'squared' | 'oval';
    widthMm: string;
    heightMm: string;
    fixing: 'sewn' | 'glued';
  }) => `Frame, ${f.kind}, ${f.widthMm} mm wide, ${f.heightMm} mm high, ${f.fixing}`,
  saved: (file: string) => `Saved as ${file}: give it to rondure chart --frame.`,
  rail: (f: { mm: string }) => `${f.mm} mm from hinge to hinge`,
  panel: (f: { rounds: number; worn: SizeRange; ratio: string; recommended: boolean }) =>
    `${f.rounds} rounds${f.recommended ? ' (recommended)' : ''}, ${sizeMm(f.worn, 1)} mm wide as it hangs, ${f.ratio} times the frame`,
  rim: (f: { stitches: number; mm: string; percent: number }) =>
    `${plural(f.stitches, 'stitch', 'stitches')}, ${f.mm} mm (${f.percent} % of the rim), around 12 o'clock`,
  stitches: (f: { round: number; runs: readonly { from: number; to: number }[] }) =>
    `round ${f.round}: ${runsText(f.runs)}`,
  bareNone: 'no rounds: beads up to the rim',
  bare: (f: { rounds: number; stitches: number }) =>
    `${plural(f.rounds, 'round')} in the frame, ${plural(f.stitches, 'stitch', 'stitches')} without beads`,
  fit: (f: { percent: string; gather: boolean | undefined }) =>
    f.gather === undefined
      ? 'rim and rail are equally long'
      : f.gather
        ? `gather ${f.percent} %: the rim is that much longer than the rail`
        : `ease ${f.percent} %: the rim is that much shorter; stretch it evenly`,
  holes: (f: { spacingMm: string; spaces: number; stitches: number; more: number; mean: string }) =>
    `every ${f.spacingMm} mm, about ${f.spaces} spaces: ${f.mean} stitches a space (${
      f.more === 0
        ? `${f.stitches} in each`
        : `${f.stitches} in ${f.spaces - f.more} of them, ${f.stitches + 1} in ${f.more}`
    }); count your own holes`,
  hinge: (f: {
    side: 'left' | 'right';
    round: number;
    inFrame: number;
    inSeam: number;
    degrees: number;
  }) =>
    `${f.side}: between stitches ${f.inFrame} (frame) and ${f.inSeam} (seam), at ${clock(f.degrees)}`,
  seam: (f: {
    round: number;
    runs: readonly { from: number; to: number }[];
    mm: string;
    stitches: number;
  }) =>
    `${plural(f.stitches, 'stitch', 'stitches')}, ${f.mm} mm, to the other panel: ${runsText(f.runs)}`,
  notes: {
    estimate: (f: { swatch: boolean }) =>
      `All this is worked out from the size of a stitch${
        f.swatch
          ? ', that of your swatch: an estimate still, as good as the swatch. Measure the panel before you sew.'
          : ': an estimate until you have measured a swatch.'
      } Left, right and the times, which are places on a clock, are those of the bead face. Begin at the middle of frame and stretch, and work outward both ways; end the seam 5 to 10 mm below the hinges (common practice, no source).`,
    sewn: 'Take care: a frame may contain nickel, to which some people react; count your needles before and after. These are the usual cautions: see the rules where you live.',
    glued:
      'Take care: a frame may contain nickel, to which some people react; glue in a room with fresh air, away from flames and children, and read its label. These are the usual cautions: see the rules where you live.',
  },
  /** One row of the summary of `chart`. */
  summaryRow: 'frame',
  summary: (f: { stitches: number; round: number; bareRounds: number; bare: number }) =>
    `${f.stitches} stitches of round ${f.round} lie in it; ${
      f.bareRounds === 0
        ? 'none is bare'
        : `${plural(f.bare, 'stitch', 'stitches')} in ${plural(f.bareRounds, 'round')} bare`
    }`,
  group: 'The stretch of the rim that lies in the frame, and its hinges',
};
