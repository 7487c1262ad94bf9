import { colouredActions } from '../coloured/actions.js';
import { keepActions } from '../keep/actions.js';
import { steps } from '../steps/list.js';
import type { Action } from './action.js';
import { focusCard } from './focus.js';
import { openStep } from '../store/store.js';
import { tableActions } from './table-actions.js';

/** Opens a step by the digit of its place on the way, and takes the keyboard to its card. */
const toStep: Action = {
  id: 'to-step',
  icon: 'to-right',
  keys: steps.map((_, n) => String(n + 1)),
  do(key) {
    const step = steps[Number(key) - 1];
    if (!step) return;
    openStep(step.id);
    focusCard();
  },
};

/** Every action: those of the table, then those of each step. */
export const actions: readonly Action[] = [
  ...tableActions,
  toStep,
  ...keepActions,
  ...colouredActions,
  ...steps.flatMap((step) => step.actions.map((one) => ({ step: step.id, ...one }))),
];
