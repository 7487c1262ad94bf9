import type { Step } from '../step.js';
import { workActions } from './actions.js';
import { WorkCard } from './card.js';

/** Stringing and crocheting, with the page beside the bead mat. */
export const workStep: Step = {
  id: 'work',
  icon: 'hook',
  name: (words) => words.work.step,
  Card: WorkCard,
  actions: workActions,
};
