import type { Step } from '../step.js';
import { brushActions } from './actions.js';
import { BrushCard } from './card.js';
import { brushHand } from './hand.js';

/** Beads laid by hand. */
export const brushStep: Step = {
  id: 'brush',
  icon: 'brush',
  name: (words) => words.brush.step,
  Card: BrushCard,
  actions: brushActions,
  hand: brushHand,
};
