import type { Step } from '../step.js';
import { PagesCard } from './card.js';
import { actions } from './making.js';

/** From the pattern to paper. */
export const pagesStep: Step = {
  id: 'pages',
  icon: 'pages',
  name: (words) => words.pages.step,
  Card: PagesCard,
  actions,
};
