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
 * Czech. No native crocheter has checked it yet. To be looked at first: kolo (M; řada), klín (M; díl,
 * which here is a panel), přidání (M), posun (L: how far a stitch sits behind the one below), úsek (M:
 * one strung thread of several), rámeček (M: clasp frame), kloub (M: its hinge; pant), peněženka (M:
 * purse; portmonka, kabelka), kouzelný kroužek (M: magic ring; magický kroužek), holé (L: bare).
 */
export const cs: PageWords = {
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
