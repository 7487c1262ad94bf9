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
 * Polish. No native crocheter has checked it yet. To be looked at first: półsłupek / oczko ścisłe (M:
 * two names in print, both are given; a slip stitch is oczko zamykające throughout, since oczko ścisłe
 * is in print for that too), klin (M), dodawanie (M), przesunięcie (L: how far a stitch sits behind the
 * one below), za robótką and przed robótką (M: of the face that the beads lie on), uskok (M: the step of
 * a spiral), odcinek (M: one strung thread of several), bigiel (M: clasp frame), dopasować (M: to ease
 * in), O7 (M: short for a round).
 */
export const pl: PageWords = {
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
