import type { Step } from '../step.js';
import { beadActions } from './actions.js';
import { BeadsCard } from './card.js';

/** From all beads to those on the mat. */
export const beadsStep: Step = {
  id: 'beads',
  icon: 'beads',
  name: (words) => words.beads.step,
  Card: BeadsCard,
  actions: beadActions,
};
