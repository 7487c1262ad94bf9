import type { FunctionComponent } from 'preact';
import type { WorktableWords } from '../../words/worktable/index.js';
import type { Action } from '../actions/action.js';
import type { PanelHand } from '../panel/hand.js';
import type { IconName } from '../parts/icon.js';

/** A step of the way from picture to purse: a folder here, and its words in a file of their own. */
export interface Step {
  readonly id: string;
  readonly icon: IconName;
  name(words: WorktableWords): string;
  /** What lies on the card. */
  readonly Card: FunctionComponent;
  /** What lies in the middle of the table instead of the panel. */
  readonly View?: FunctionComponent;
  /** What the maker can do there, besides what holds everywhere. */
  readonly actions: readonly Action[];
  /** What a finger does on the panel; elsewhere it lights up stitches. */
  readonly hand?: PanelHand;
}
