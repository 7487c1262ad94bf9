import type { Step } from '../step.js';
import { purseActions } from './actions.js';
import { PurseCard } from './card.js';
import { PurseView } from './view.js';

/** Both panels as the finished purse hangs. */
export const purseStep: Step = {
  id: 'purse',
  icon: 'purse',
  name: (words) => words.purse.step,
  Card: PurseCard,
  View: PurseView,
  actions: purseActions,
};
