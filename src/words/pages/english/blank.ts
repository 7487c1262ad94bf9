import { shapeCounts } from './chart.js';
import type { English } from './spelling.js';

/** What stands on an empty chart to colour by hand. */
export const blank = ({ language, colour }: English) => {
  const verb = colour === 'colour' ? 'Colour' : 'Color';
  return {
    shapeLine: (f: { wedges: number; rounds: number; stitches: number; paper: string }) =>
      [...shapeCounts(language)(f), `print on ${f.paper}`].join('  ·  '),
    how: `${verb} one cell for each bead, well covered, one ${colour} for each bead ${colour}. Keep the four corner marks clean, then scan the page or photograph all of it, lying flat in even light.`,
  };
};
