import { pages } from './pages.js';

/** sewing.txt: how the two panels of a purse are sewn together. */
export const sewing = {
  ...pages.sewing,
  title: (title: string) => `Sewing together the two panels of ${title}`,
  table: 'Stitches of the last round that meet:',
};
