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
 * Ukrainian. No native crocheter has checked it yet. To be looked at first: додавання (M; прибавка),
 * клин (M), нанизування (M), зсув (L: how far a stitch sits behind the one below), відрізок (M: one
 * strung thread of several), фермуар (M: clasp frame), деталь (M: panel), лінія зрізу (M: cut line),
 * часткова нитка (M: grain), припосадити (M: ease in).
 */
export const uk: PageWords = {
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
