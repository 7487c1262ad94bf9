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
 * What stands on pages, in Japanese. No native crocheter has checked it yet. Terms of little
 * certainty: 区画 (wedge; or セクション), ずれ (lean), ビーズ面 (bead face), 向こう側 and 手前側 (away
 * from and toward the worker), 蝶番 (hinge), パネル (panel), 試し編み (swatch), 糸1本 (length),
 * いせ込み (ease along the frame), ゆとり (ease of the lining), 7段 (sign of round 7).
 */
export const ja: PageWords = {
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
