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
import type { English } from './spelling.js';
import { stringing } from './stringing.js';
import { swatch } from './swatch.js';

/** What stands on pages, in one of the Englishes. */
export const englishPages = (english: English) => ({
  beadLooks: beadLooks(english),
  blank: blank(english),
  booklet: booklet(english),
  chart: chart(english),
  frame: frame(english),
  hands: hands(english),
  lining: lining(english),
  lists: lists(english),
  rounds: rounds(english),
  sewing: sewing(english),
  shopping: shopping(english),
  stringing: stringing(english),
  swatch: swatch(english),
});
