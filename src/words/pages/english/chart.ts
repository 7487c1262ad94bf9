import { numbersIn } from '../numbers.js';
import type { SizeRange } from '../numbers.js';
import type { English } from './spelling.js';

/** The hand that holds the hook. */
export type HandWord = 'right' | 'left';
/** Which way the beads lie, as seen by the worker. */
export type FaceWord = 'away' | 'toward';

const face = (beadsFace: FaceWord): string =>
  beadsFace === 'away' ? 'beads away from the worker' : 'beads toward the worker';

/** How many wedges, rounds and stitches a panel has. */
export const shapeCounts =
  (language: English['language']) =>
  (f: { wedges: number; rounds: number; stitches: number }): string[] => {
    const { many } = numbersIn(language);
    return [
      many(f.wedges, { one: 'wedge', other: 'wedges' }),
      many(f.rounds, { one: 'round', other: 'rounds' }),
      many(f.stitches, { one: 'stitch', other: 'stitches' }),
    ];
  };

/** What stands on charts. */
export const chart = ({ language, anticlockwise }: English) => {
  const { many, sizeMm } = numbersIn(language);
  const clockwise = (direction: 1 | -1): string => (direction === 1 ? 'clockwise' : anticlockwise);
  return {
    chartTitle: (f: { title: string; panel?: string }) =>
      f.panel === undefined ? f.title : `${f.title}: ${f.panel}`,
    wedgesTitle: (f: { title: string; panel?: string }) =>
      f.panel === undefined
        ? `${f.title}: wedge by wedge`
        : `${f.title}: ${f.panel}, wedge by wedge`,
    shapeLine: (f: {
      wedges: number;
      rounds: number;
      stitches: number;
      beads: number;
      across: SizeRange;
    }) =>
      [
        ...shapeCounts(language)(f),
        many(f.beads, { one: 'bead', other: 'beads' }),
        `${sizeMm(f.across, 1)} mm across`,
      ].join('  ·  '),
    workLine: (f: {
      hand: HandWord;
      beadsFace: FaceWord;
      increase: 'first' | 'middle' | 'last';
      lean: number;
      construction: 'spiral' | 'joined';
    }) =>
      [
        `${f.hand === 'right' ? 'Right' : 'Left'} hand, ${face(f.beadsFace)}`,
        `increase in the ${f.increase} stitch of each wedge`,
        `lean ${f.lean} stitch`,
        f.construction === 'spiral' ? 'worked in a spiral' : 'joined rounds',
      ].join('  ·  '),
    start: 'start',
    direction: 'work this way',
    faceNote: (f: { hand: HandWord; beadsFace: FaceWord; direction: 1 | -1 }) =>
      `This is the bead face, the outside of the purse. Here the work runs ${clockwise(f.direction)} (${f.hand} hand, ${face(f.beadsFace)}).`,
    workerNote: (f: { beadsFace: FaceWord; direction: 1 | -1 }) =>
      f.beadsFace === 'away'
        ? `While crocheting you see the other face, where the work runs ${clockwise(f.direction === 1 ? -1 : 1)}.`
        : 'While crocheting you see this same face, since the beads lie toward you.',
    construction: {
      spiral: 'Spiral: each round runs straight on into the next, without joining.',
      joined: 'Joined rounds: each round is closed with a slip stitch, which is not drawn.',
    },
    marks: {
      pair: 'Increase: two stitches into the same one.',
      number: 'Round number, before the first stitch of its round.',
      tick: 'Ticks on the rim: every 10th stitch of the last round, counted from its first.',
      five: 'Every 5th round: dark number, heavy line outside it.',
      startLine: 'Start line: where every round begins.',
      join: 'Join: a new length of thread begins with this stitch.',
    },
    larger:
      'Larger letters: wedge by wedge in wedges.svg, and on the enlarged sheets of the PDF booklet.',
    bare: 'Bare stitch, no bead',
    undecided: 'Not decided yet',
    wedge: (f: { wedge: number }) => `Wedge ${f.wedge}`,
    wedgeWay: (f: { direction: 1 | -1 }): string =>
      f.direction === 1 ? 'Read every row from left to right' : 'Read every row from right to left',
    pageOf: (f: { page: number; pages: number }) => `page ${f.page} of ${f.pages}`,
  };
};
