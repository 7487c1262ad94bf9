import type { English } from './spelling.js';

/** What stands for pictures where the booklet is read aloud. */
export const alt = (_: English) => ({
  panel: (f: { panel: string }) => `Picture of the worked panel, bead face: ${f.panel}`,
  chart:
    'Chart of the panel. The list of rounds says the same in words, and the materials tell the letters.',
  lining: 'Cutting template of the lining at true size, with its marks.',
});

/** How one booklet of a pattern differs from another. */
export const edition = ({ grey, colour, colours }: English) => ({
  grey: 'for a black-and-white printer',
  large: 'large print',
  left: 'for the left hand',
  right: 'for the right hand',
  mirrored:
    'This edition is for the other hand than the pattern was made for: rounds, lists and counts are the same, and the picture comes out as its mirror image. Letters and numbers in it would be reversed; they take a pattern made for this hand.',
  fills: `Without ${colours} each bead has a ${grey}, and where there are many kinds of bead also a mark beside its letter: two bars, four dots, or none. The names tell the ${colour}.`,
});
