import type { Step } from '../step.js';
import { panelActions } from './actions.js';
import { PanelCard } from './card.js';

/** The shape of the panel and the maker's own stitch. */
export const panelStep: Step = {
  id: 'panel',
  icon: 'whole',
  name: (words) => words.panel.step,
  Card: PanelCard,
  actions: panelActions,
};
