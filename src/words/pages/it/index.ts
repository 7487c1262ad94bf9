import type { PageWords } from '../index.js';
import { beadLooks } from './bead-looks.js';
import { blank } from './blank.js';
import { booklet } from './booklet.js';
import { chart } from './chart.js';
import { frame } from './frame.js';
import { hands } from './hands.js';
import { lining } from './lining.js';
import { lists } from './lists.js';
import { rounds } from './rounds.js';
import { sewing } from './sewing.js';
import { shopping } from './shopping.js';
import { stringing } from './stringing.js';
import { swatch } from './swatch.js';

/**
 * What stands on pages, in Italian: instructions in the infinitive, as printed patterns have them.
 * No native crocheter has checked this language yet. To be checked first (M and L): spicchio
 * (wedge), ordine and lista di infilatura (stringing), inclinazione (lean), tratto (length of
 * strung beads), montatura (clasp frame), snodo (hinge), agio and assorbire la differenza (ease),
 * faccia delle perline (bead face), G as the sign of a round, m.bss., poll.
 */
export const it: PageWords = {
  beadLooks,
  blank,
  booklet,
  chart,
  frame,
  hands,
  lining,
  lists,
  rounds,
  sewing,
  shopping,
  stringing,
  swatch,
};
