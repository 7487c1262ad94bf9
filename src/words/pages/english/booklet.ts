import { numbersIn } from '../numbers.js';
import type { SizeRange } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists as listsIn } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import type { English } from './spelling.js';
import { work } from './work.js';

/** What stands on the pages of a booklet that no other file says. */
export const booklet = (english: English) => {
  const { language, colour, colours, licence, metre } = english;
  const { fixed, many, sizeInches, sizeMm } = numbersIn(language);
  const lists = listsIn(english);
  const tick = language === 'en-US' ? 'Check' : 'Tick';
  return {
    subject: 'Pattern for a round panel in bead crochet',
    kind: 'Round bead-crochet pattern',
    size: (f: { across: SizeRange }) =>
      `About ${sizeMm(f.across, 0)} mm (${sizeInches(f.across)} in) across when finished`,
    sizeFrom: {
      swatch: 'by a swatch of the pattern’s author',
      model: 'an estimate, until you have worked a swatch',
    },
    amounts: (f: { panels: number; rounds: number; beads: number; colours: number }) =>
      [
        f.panels === 1
          ? '1 panel, worked twice'
          : many(f.panels, { one: 'panel', other: 'panels' }),
        many(f.rounds, { one: 'round', other: 'rounds' }),
        lists.beads(f.beads),
        many(f.colours, { one: colour, other: colours }),
      ].join('  ·  '),
    by: (author: string) => `by ${author}`,

    /** What the two panels of a purse are called where the pattern says no more than this. */
    panelNames: { front: 'front', back: 'back' },
    pageOf: (f: { page: number; pages: number }) => `${f.page} of ${f.pages}`,
    panel: (f: { panel: string }) => `${f.panel} panel`,
    length: (f: { length: number; lengths: number }) => `length ${f.length} of ${f.lengths}`,
    continued: (heading: string) => `${heading}, continued`,
    parts: {
      cover: 'Cover',
      materials: 'Materials and tools',
      before: 'Before you start',
      chart: 'Chart',
      rounds: 'Round by round',
      stringing: 'Stringing list',
      making: language === 'en-US' ? 'Finishing' : 'Making up',
      lining: 'Lining template',
      cautions: 'Take care',
      last: 'About this pattern',
    },
    ofPanel: (f: { part: string; panel: string }) => `${f.part}: ${f.panel}`,

    materials: {
      beads: 'Beads',
      columns: {
        bead: 'Bead',
        name: 'Name',
        id: 'Code',
        charted: (panels: number): string => (panels === 1 ? 'In the chart' : 'In both charts'),
        reserve: 'For a purse, with reserve',
        grams: 'Grams to have',
      },
      total: 'All beads',
      unknownGrams: '–',
      onePanel:
        'The chart is one panel. A purse has two: the numbers with reserve are for a front and an equal back.',
      twoPanels: 'A purse has two panels, and this pattern has both.',
      thread: 'Thread',
      estimate: `The thread of a stitch differs from hand to hand: mark a ${metre}, work it, count the stitches, and correct this figure before you buy.`,
      ownFigure: 'The thread of a stitch is a figure of the pattern’s author.',
      tools: 'Tools, frame, lining',
    },

    before: before(english),

    rounds: {
      round: 'Round',
      work: 'Work',
      stitches: 'Stitches',
      beads: 'Beads',
      total: 'Total beads',
      how: 'Count when a round is done: the last column says how many beads are worked up to its end.',
    },

    stringing: {
      round: (f: { round: number; beads: number; part: boolean }) =>
        f.part
          ? `${lists.round(f.round)}, part: ${lists.beads(f.beads)}`
          : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
      total: (total: number) => `total ${lists.number(total)}`,
      totalGrams: (f: { total: number; grams: number }) =>
        `total ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
      tickOne: `String each line from the left. ${tick} a box when its line is on the thread, and count at every total.`,
      weigh:
        'The grams beside a total are those of the beads strung so far: weigh the thread before you begin and take its weight away. The scales must show tenths of a gram; beads of one jar differ in weight, so the count decides.',
      tick: `Down the left column first, then the right one; in each line from the left. ${tick} a box when its line is on the thread, and count at every total.`,
      weight: (f: { beads: number; grams: number; metres: number; threadM: number }) =>
        `${lists.beads(f.beads)} in all; strung they weigh about ${fixed(f.grams, 1)} g without the thread and are about ${fixed(f.metres, 2)} m long. Working them takes about ${fixed(f.threadM, 1)} m of thread, tails and reserve included.`,
      noWeight: (f: { beads: number; metres: number; threadM: number }) =>
        `${lists.beads(f.beads)} in all, about ${fixed(f.metres, 2)} m when strung. Working them takes about ${fixed(f.threadM, 1)} m of thread, tails and reserve included.`,
      rounds: (f: { first: number; last: number }) =>
        f.first === f.last ? `For round ${f.first}.` : `For rounds ${f.first} to ${f.last}.`,
      first: 'The first bead of this list goes on the thread first and is worked last.',
      nothing: 'No bead is decided yet, so there is nothing to string.',
    },

    work: work(english),
    making: making(english),
    enlarged: enlarged(english),
    wedgeChart: wedgeChart(english),
    level: level(english),
    edition: edition(english),
    alt: alt(english),

    last: {
      title: 'Title',
      author: 'Author',
      date: 'Date of this edition',
      licence,
      noLicence:
        'None is stated. Ask the author before you pass the pattern on or sell what you make.',
      version: 'Version',
      versionText: (f: { program: string; format: number }) =>
        `Made with Rondure ${f.program}, pattern format ${f.format}`,
      figures: 'The figures',
      figuresText:
        'Bead counts are exact. Grams, lengths of thread, sizes and tools are estimates until you have worked a swatch; what is said to be usual is common practice or from memory, without a published source.',
      read: 'To read it aloud',
      readText: `All lists in this booklet are text that can be searched, copied and read aloud. Every bead has a letter, so no two ${colours} need be told apart.`,
    },
  };
};
