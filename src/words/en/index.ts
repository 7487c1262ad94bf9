import { beads } from './beads.js';
import { blank } from './blank.js';
import { booklet } from './booklet.js';
import { chart } from './chart.js';
import { cli } from './cli.js';
import { compare } from './compare.js';
import { edits } from './edits.js';
import { errors } from './errors.js';
import { warnings } from './warnings.js';
import { frame } from './frame.js';
import { lining } from './lining.js';
import { pages } from './pages.js';
import { lists } from './lists.js';
import { page } from './page.js';
import { place } from './place.js';
import { problems } from './problems.js';
import { pictureFormats } from './picture-formats.js';
import { read } from './read.js';
import { recolour } from './recolour.js';
import { shopping } from './shopping.js';
import { rounds } from './rounds.js';
import { sewing } from './sewing.js';
import { stringing } from './stringing.js';
import { swatch } from './swatch.js';

const english = {
  beadLooks: pages.beadLooks,
  beads,
  blank,
  booklet,
  chart,
  cli,
  compare,
  edits,
  errors,
  warnings,
  frame,
  hands: pages.hands,
  lining,
  lists,
  page,
  pictureFormats,
  place,
  problems,
  read,
  recolour,
  shopping,
  rounds,
  sewing,
  stringing,
  swatch,
};

type English = typeof english;
/** Every sentence of one language; a language that lacks a word does not compile. */
export interface Words extends English {}
/** English, the language of the command line and of `RondureError.message`. */
export const en: Words = english;
