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
 * What stands on pages, in simplified Chinese. No native crocheter has checked it yet. Terms of
 * little certainty: 串珠钩编 (bead crochet; or 钩珠), 分区 (wedge; or 扇形区), 偏移 (lean), 珠面 (bead
 * face), 背向 and 朝向钩编者 (away from and toward the worker), 铰链 (hinge), 钩片 (panel), 试片
 * (swatch), 线长 and 段 (length of thread), 吃势 (ease along the frame), 松量 (ease of the lining),
 * 空 (bare).
 */
export const zh: PageWords = {
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
