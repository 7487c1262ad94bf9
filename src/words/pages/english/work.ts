import { numbersIn } from '../numbers.js';
import type { English } from './spelling.js';

/** The order of the work, and what stands on its pages. */
export const work = ({ language, colour }: English) => {
  const { count } = numbersIn(language);
  return {
    contents: 'Contents',
    glance: 'The work at a glance',
    /** Steps of the work, each in its line. */
    steps: {
      gather: 'Gather beads, thread and tools',
      swatch: 'Work a swatch and measure it',
      string: (f: { length: number; lengths: number }) =>
        f.lengths === 1 ? 'String the beads' : `String length ${f.length}`,
      rounds: (f: { first: number; last: number }) =>
        f.first === f.last ? `Work round ${f.first}` : `Work rounds ${f.first} to ${f.last}`,
      again: 'Work the same panel once more',
      seam: 'Sew the panels together',
      frame: 'Fix the purse in its frame',
      lining: 'Line it with cloth',
    },
    print: 'Before you print',
    printText: (f: { side: string }) =>
      `Print at 100 %, scaling off. Each side of this square must measure ${f.side}. If it does not, nothing in this booklet that is drawn at true size is true: set the printer to 100 % or “actual size” and print again.`,
    /** Stands before where a length is joined on. */
    stop: 'Stop',
    seePage: (f: { page: number }) => `See page ${f.page}.`,
    part: 'String and work',
    heads: { string: 'Beads to string', total: 'Total', grams: 'g', count: 'Beads' },
    /** `brackets`: whether there are repeated parts. */
    tick: (f: { brackets: boolean }) =>
      `Each line${f.brackets ? ', and each repeat of a part in brackets,' : ''} has a box: tick it when its beads are on the thread. Runs of more than 20 are split in tens. The total behind a line counts the beads of this length up to its end.`,
    /** Where both panels are worked by one list. */
    twoBoxes: 'Two boxes side by side are one for each panel.',
    roundsTick:
      'A thin upright line parts the wedges. Tick the box when a round is done; its total is that of all beads worked so far.',
    mixed: (f: { beads: number; stitches: number }) =>
      `${count(f.beads)}/${count(f.stitches)} means ${count(f.beads)} beads in ${count(f.stitches)} stitches; the rest are bare.`,
    /** A round in full, where its short name could be taken for a bead. */
    round: (round: number): string => `Round ${round}`,
    working: {
      part: 'Chart as you see it',
      note: (f: { hand: 'right' | 'left'; mirrored: boolean }) =>
        `This is the face that you look at while you work, turned as it lies in your hand: the start is on top and the work runs to the ${f.hand === 'right' ? 'left' : 'right'}, away from the hook.${
          f.mirrored
            ? ' The beads lie behind, so that the picture is the other way round than on the finished purse.'
            : ''
        }`,
      wedges: 'Numbers in rings count the wedges in the direction of work.',
      hook: 'hook',
      use: 'Follow the chart as you see it while you work; hold the finished panel beside the chart of the bead face.',
    },
    sector: {
      name: (f: { from: number; to: number }) =>
        f.from === f.to ? `wedge ${f.from}` : `wedges ${f.from} to ${f.to}`,
      how: 'Pale beads at the sides belong to the neighbouring wedges. Numbers stand before the first stitch of each round.',
    },
    time: (f: { time: string }) => `Time: ${f.time}`,
    rights: {
      title: 'Rights',
      none: 'This booklet names no author and no licence. Keep it for your own use until whoever you have it from tells you what else you may do with it.',
      authorOnly: (f: { author: string }) =>
        `The pattern is by ${f.author}, who states no licence. Ask before you pass the pattern on or sell what you make.`,
      contact: 'Corrections',
      contactText: (f: { contact: string }) =>
        `Found a mistake, or something unclear? Write to ${f.contact}.`,
    },
    yours: {
      title: 'Your purse',
      madeFor: 'Made for',
      begun: 'Begun',
      finished: 'Finished',
      swatch: 'My swatch',
      bead: 'Beads',
      thread: 'Thread',
      hook: 'Hook',
      after: (f: { rounds: number }) => `Across after ${f.rounds} rounds`,
      notes: 'Notes',
    },
    alt: {
      square: 'A square to measure the print by.',
      photo: 'Photograph of the finished piece.',
      purse: (f: { panel: string }) =>
        `Drawing of the closed purse in its frame, ${f.panel} panel.`,
      working: `Chart of the panel as the worker sees it. The list of rounds says the same in words, and the materials tell the letters.`,
      sector: (f: { wedges: string }) =>
        `Enlarged chart, ${f.wedges}. The list of rounds says the same in words.`,
    },
    listing: {
      size: 'Size',
      level: 'Level',
      beads: 'Beads',
      tools: 'You also need',
      file: 'In the file',
      fileText: (f: { pages: number; paper: string; languages: string }) =>
        `One PDF, ${f.pages} pages, ${f.paper}, ${f.languages}. It can be searched and read aloud; every bead has a letter, so that no ${colour} need be told apart.`,
      digital: 'This is a pattern to download and print. Beads and tools are not included.',
    },
  };
};
