import { actions } from './actions.js';
import { beads } from './beads.js';
import { brush } from './brush.js';
import { coloured } from './coloured.js';
import { errors } from './errors.js';
import { keys } from './keys.js';
import { mending } from './mending.js';
import { pages } from './pages.js';
import { panel } from './panel.js';
import { picture } from './picture.js';
import { purse } from './purse.js';
import { shelf } from './shelf.js';
import { table } from './table.js';
import { work } from './work.js';
import type { WorktableWords } from '../index.js';

/** Every word of the page in Spanish: a step a file. No native speaker has checked it yet. */
export const es: WorktableWords = {
  actions,
  beads,
  brush,
  coloured,
  errors,
  keys,
  mending,
  pages,
  panel,
  picture,
  purse,
  shelf,
  table,
  work,
};
