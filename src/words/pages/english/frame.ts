import { numbersIn } from '../numbers.js';
import type { English } from './spelling.js';

/** Neighbouring stitches, both from 1. */
export interface StitchSpan {
  /** First stitch, from 1. */
  readonly from: number;
  /** Last stitch, from 1. */
  readonly to: number;
}

/** Form of a purse frame. */
export type FrameKind = 'half-round' | 'squared' | 'oval';

/** `1 to 30 and 111 to 140`. */
export const runsText = (runs: readonly StitchSpan[]): string =>
  runs.length === 0
    ? 'none'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from} to ${to}`)).join(' and ');

/** Which stitches lie in the frame. */
export const frame = ({ language }: English) => {
  const { short } = numbersIn(language);
  const kinds: Record<FrameKind, string> = {
    'half-round': 'half-round',
    squared: 'squared',
    oval: 'oval',
  };
  const fixings = { sewn: 'sewn', glued: 'glued' };
  return {
    kinds,
    paragraph: (f: {
      kind: FrameKind;
      widthMm: number;
      fixing: 'sewn' | 'glued';
      round: number;
      runs: readonly StitchSpan[];
      bare: readonly { round: number; runs: readonly StitchSpan[] }[];
      left: { inFrame: number; inSeam: number };
      right: { inFrame: number; inSeam: number };
    }) =>
      `Frame (${kinds[f.kind]}, ${short(f.widthMm, 1)} mm wide, ${fixings[f.fixing]}): stitches ${runsText(f.runs)} of round ${f.round} lie in it, the same length on both sides of 12 o’clock. The left hinge, seen on the bead face, comes between stitches ${f.left.inFrame} and ${f.left.inSeam}, the right one between ${f.right.inFrame} and ${f.right.inSeam}; below them comes the seam. ${
        f.bare.length === 0
          ? 'No stitch is left bare for it.'
          : `Left bare, worked without a bead, are: ${f.bare.map(({ round, runs }) => `in round ${round} stitches ${runsText(runs)}`).join('; ')}.`
      }`,
    /** How the rim of a panel is spread over the frame; per cent, below 0 where the rim is shorter. */
    spread: (f: {
      stitches: number;
      railMm: number;
      holes: { perSpace: number; spacingMm: number } | undefined;
      longerPercent: number;
    }) =>
      `On each panel, spread the stitches in the frame (${f.stitches}) evenly over the rail, ${short(f.railMm, 1)} mm from hinge to hinge${f.holes ? `: about ${short(f.holes.perSpace, 1)} to each space between the holes, taken to be ${short(f.holes.spacingMm, 1)} mm apart. Count your own holes` : ''}.${
        Math.abs(f.longerPercent) < 0.05
          ? ''
          : f.longerPercent > 0
            ? ` The rim is ${short(Math.abs(f.longerPercent), 1)} % longer than the rail: ease it in evenly.`
            : ` The rim is ${short(Math.abs(f.longerPercent), 1)} % shorter than the rail: stretch it evenly.`
      }`,
    /** On the chart. */
    word: 'frame',
    mark: 'The rim between the two dots, the hinges, lies in the frame.',
  };
};
