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
 * German. No native crocheter has checked it yet. To be looked at first: Segment (M; Keil),
 * Auffädelreihenfolge, here Auffädelliste (M), Versatz (L: how far a stitch sits behind the one
 * below), Abschnitt (M: one strung thread of several), Zählplan (M: chart), Börse (M: purse),
 * Perlen abgewandt or zugewandt (M: beads away from or toward the worker, short, on charts).
 */
export const de: PageWords = {
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
