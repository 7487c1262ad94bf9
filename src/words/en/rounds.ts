import { pages } from './pages.js';

/** rounds.txt: the heading, how to work, and what a line means. */
export const rounds = {
  ...pages.rounds,
  title: (f: { title: string; panel: string }) => `Rounds of ${f.title}, ${f.panel} panel`,
  stitchSize: (f: { size: string; widthMm: number; heightMm: number }) =>
    `${f.size}Stitch ${f.widthMm.toFixed(2)} mm wide, round ${f.heightMm.toFixed(2)} mm high.`,
  onePanel: 'This is one panel; a purse takes two.',
  ofTwo: (f: { panel: string; other: string; file: string }) =>
    `This is the ${f.panel} panel of two; the list of the ${f.other} panel is ${f.file}, and sewing.txt says how the two are sewn together.`,
  beadSize: (f: { size: string; diameterMm: number | undefined }) =>
    f.diameterMm === undefined ? `Beads ${f.size}. ` : `Beads ${f.size} (${f.diameterMm} mm). `,
  care: 'Take care: beads, needles and the purse are not for small children, who can choke on small parts. Wear goggles when you break a bead. Count needles and hooks before and after. Rest eyes and hands often. Where you live or sell, local rules come first.',
};
