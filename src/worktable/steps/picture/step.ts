import type { Step } from '../step.js';
import { pictureActions } from './actions.js';
import { PictureCard } from './card.js';
import { pictureHand } from './hand.js';

/** From a picture in the maker's hand to a picture on the panel. */
export const pictureStep: Step = {
  id: 'picture',
  icon: 'picture',
  name: (words) => words.picture.step,
  Card: PictureCard,
  actions: pictureActions,
  hand: pictureHand,
};
