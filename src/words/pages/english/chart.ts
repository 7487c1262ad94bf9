import { numbersIn } from '../numbers.js';
import type { English } from './spelling.js';

/** The hand that holds the hook. */
export type HandWord = 'right' | 'left';
/** Which way the beads lie, as seen by the worker. */
export type FaceWord = 'away' | 'toward';

const face = (beadsFace: FaceWord): string =>
  beadsFace === 'away' ? 'beads away from the worker' : 'beads toward the worker';

/** What stands on charts. */
export const chart = ({ language, anticlockwise }: English) => {
  const { fixed, many } = numbersIn(language);
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
      acrossMm: number;
    }) =>
      [
        many(f.wedges, { one: 'wedge', other: 'wedges' }),
        many(f.rounds, { one: 'round', other: 'rounds' }),
        many(f.stitches, { one: 'stitch', other: 'stitches' }),
        many(f.beads, { one: 'bead', other: 'beads' }),
        `${fixed(f.acrossMm, 1)} mm across`,
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
      number: 'Round number, in the first stitch of its round.',
      five: 'Every 5th round: dark number, heavy line outside it.',
      startLine: 'Start line: where every round begins.',
    },
    bare: 'Bare stitch, no bead',
    undecided: 'Not decided yet',
    wedge: (f: { wedge: number }) => `Wedge ${f.wedge}`,
    wedgeWay: (f: { direction: 1 | -1 }): string =>
      f.direction === 1 ? 'Read every row from left to right' : 'Read every row from right to left',
    pageOf: (f: { page: number; pages: number }) => `page ${f.page} of ${f.pages}`,
  };
};
