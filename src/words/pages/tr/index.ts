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
 * What stands on pages, in Turkish: the reader is addressed with the polite imperative (siz).
 * No native crocheter has checked this language yet. To be checked first (M and L): boncuklu
 * tığ işi (bead crochet), sıra for round and row alike, dilim (wedge), boncuk dizme listesi
 * (stringing list), dizi (length of strung beads), kayma (lean), burs (clasp frame), cüzdan
 * (purse), kaydırma ilmek (slip stitch), the two strands on top of a stitch, S, si and ki as signs.
 */
export const tr: PageWords = {
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
