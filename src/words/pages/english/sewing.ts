import { runsText } from './frame.js';
import type { StitchSpan } from './frame.js';
import { numbersIn } from '../numbers.js';
import type { English } from './spelling.js';

/** The names of both panels. */
export interface Panels {
  /** Name of the front panel. */
  front: string;
  /** Name of the back panel. */
  back: string;
}

/** Stitches of the last rounds that meet, from 1. */
export interface Pair {
  /** Stitch of the front's last round, from 1. */
  front: number;
  /** Stitch of the back's last round, from 1. */
  back: number;
}

/** How the two panels of a purse are sewn together, by count. */
export const sewing = ({ language }: English) => {
  const { many } = numbersIn(language);
  return {
    lay: (f: Panels) =>
      `Lay the ${f.back} panel down with its beads underneath and the ${f.front} panel on it with its beads on top, both pictures upright, so that beads are on both outsides. Both panels are worked by the same hand; seen from the ${f.front}, the rounds of the ${f.back} run the other way.`,
    count: (f: Panels & { round: number; stitches: number }) =>
      `The rims are sewn by count. Round ${f.round}, the last, has ${f.stitches} stitches in each panel. Mark its first stitch in both panels, and count from there in the direction of work.`,
    meet: (f: Panels & { stitches: number }) =>
      `Stitch 1 of the ${f.front} meets stitch ${f.stitches} of the ${f.back}, stitch 2 meets stitch ${f.stitches - 1}, and so on: the two numbers always make ${f.stitches + 1}.`,
    meetShifted: (f: Panels & { stitch: number; meets: number }) =>
      `Stitch ${f.stitch} of the ${f.front} meets stitch ${f.meets} of the ${f.back}; from there count on in the ${f.front} and back in the ${f.back}.`,
    spiral:
      'In a spiral the end of the last round lies one row farther out than its beginning, and the steps of the two panels climb in opposite directions: the rims lie up to one row apart, most of all beside the step. Do not sew by eye: keep to the count, and let the seam draw the two rims together. The slip stitches after the last round are not counted.',
    joined:
      'The rims lie edge on edge all the way round. The slip stitch that closes the last round is not counted.',
    opening: (f: { marked: boolean }) =>
      `The top stays open for the frame: usually a little less than half of the rim, with its middle at 12 o’clock${f.marked ? ' (common practice, no source)' : ''}. Sew from one hinge of the frame down around 6 o’clock and up to the other; finish 5 to 10 mm below each hinge.`,
    openingOfFrame: (
      f: Panels & {
        frontInFrame: readonly StitchSpan[];
        backInFrame: readonly StitchSpan[];
        first: Pair | undefined;
        last: Pair | undefined;
        pairs: number;
        halves: number;
        /** Whether it is told elsewhere which stitches lie in the frame. */
        told: boolean;
      },
    ) => {
      const open = f.told
        ? 'The top stays open for the frame.'
        : `The top stays open for the frame: in it lie stitches ${runsText(f.frontInFrame)} of the last round of the ${f.front}, and ${runsText(f.backInFrame)} of the ${f.back}.`;
      if (!f.first || !f.last) return open;
      const pair = (one: Pair) =>
        `stitch ${one.front} of the ${f.front} with ${one.back} of the ${f.back}`;
      const eased =
        f.halves === 0
          ? ''
          : f.halves === 1
            ? ' One pair between seam and frame is not sewn: since the two rims do not climb alike, only one of its stitches lies in the frame. Ease the other in at the hinge.'
            : ` The ${f.halves} pairs between seam and frame are not sewn: since the two rims do not climb alike, only one stitch of each lies in the frame. Ease the other in at the hinge.`;
      return `${open} Sew ${many(f.pairs, { one: 'pair', other: 'pairs' })}, from ${pair(f.first)} around past 6 o’clock to ${pair(f.last)}.${eased}`;
    },
    work: 'Pin or tie the pairs of the table below together first, 6 o’clock before the others, and then sew stitch to stitch, under both loops of each stitch, with the crochet thread or a strong nylon or polyester thread, about three times as long as the seam.',
    /** How the frame is fixed, where the pattern knows one. */
    care: (fixing: 'sewn' | 'glued' | undefined) =>
      `Take care: count needles and pins before and after, and keep them and the beads away from small children. ${
        fixing === undefined ? '' : 'The frame may contain nickel, to which some people react. '
      }${
        fixing === 'glued'
          ? 'Glue in a room with fresh air, away from flames and children, and read the label. '
          : ''
      }Rest eyes and hands often. Where you live or sell, local rules come first.`,
    columns: (f: Panels) => ['on the clock', f.front, f.back],
    row: (f: {
      backName: string;
      frontHour: number;
      backHour: number;
      front: number;
      back: number;
    }) => [
      `${f.frontHour} o’clock (${f.backHour} on the ${f.backName})`,
      String(f.front),
      String(f.back),
    ],
  };
};
