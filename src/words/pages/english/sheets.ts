import type { English } from './spelling.js';

/** An enlarged chart on several sheets. */
export const enlarged = (_: English) => ({
  part: 'Chart, enlarged',
  sheet: (f: { sheet: number; sheets: number }) => `sheet ${f.sheet} of ${f.sheets}`,
  how: 'The map shows where this sheet lies. What is beyond a dotted line stands on the neighbouring sheet too; a triangle names it. The key of letters is on the whole chart and among the materials.',
});

/** One wedge, where all are alike. */
export const wedgeChart = (_: English) => ({
  part: 'Wedge chart',
  alike: (f: { wedges: number }) =>
    `All ${f.wedges} wedges are alike, and this is one of them: work every row ${f.wedges} times in its round.`,
  how: (f: { direction: 1 | -1 }): string =>
    f.direction === 1
      ? 'Bead face, rim up. Row 1 is the point, at the middle of the panel. Read every row from left to right. A black triangle on two stitches points to the one below that both are worked into.'
      : 'Bead face, rim up. Row 1 is the point, at the middle of the panel. Read every row from right to left. A black triangle on two stitches points to the one below that both are worked into.',
});

/** How demanding the project is (not the person who works it). */
export const level = (_: English) => ({
  title: 'Project level',
  intermediate: 'Intermediate: rounds that repeat; fine thread, thin hook',
  complex: 'Complex: a picture, followed bead by bead; fine thread, thin hook',
});
