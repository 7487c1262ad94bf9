import { noLetterFree } from './refusals.js';
import { numbersIn } from '../pages/numbers.js';

const { count } = numbersIn('en-GB');

/** Words of `recolour`: other beads for a pattern that is there. */
export const recolour = {
  about: 'give a pattern other beads, without its picture',
  examples: `Examples:
  rondure chart fixtures/barley-moon.svg -o moon
  rondure recolour moon/pattern.json --swap A=op-08 -o moon-bright
  rondure recolour moon/pattern.json --merge B=C --limit 5 -o moon-plain
`,
  swap: 'the bead of letter A becomes BEAD (id or name); several with commas, or given again',
  merge: 'all stitches of B get the bead of C; several with commas, or given again',
  leaveOut:
    'letters, ids or names of beads to do without: their stitches get the nearest of the others',
  limit: 'at most K colours, the best of those there are',
  beads:
    'a palette: where --swap finds its beads; without --swap the pattern’s beads are chosen again out of it',
  beadsDefault: 'our mixed palette, for --swap',
  limitDefault: 'as many as there are',
  panel: 'swap only in this panel, by name or number',
  panelDefault: 'all',
  fromRound: 'swap only from this round on: what is worked already stays',
  fromRoundDefault: 'the first',
  jarRunsOut: (f: { letter: string; name: string; needed: number; inStock: number }) =>
    `${f.name} (${f.letter}) is needed ${count(f.needed)} times, and your jar holds about ${count(f.inStock)}: ${count(f.needed - f.inStock)} are lacking. Swap only a part of it (--panel, --from-round), or take another bead.`,
  noLetterFree,
  row: 'recoloured',
  done: (f: { stitches: string; one: boolean; mean: string }) =>
    `${f.stitches} ${f.one ? 'stitch has' : 'stitches have'} another bead; ${f.mean} on average from the colours before (under 2 is hard to see)`,
};
