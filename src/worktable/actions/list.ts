import { colouredActions } from '../coloured/actions.js';
import { keepActions } from '../keep/actions.js';
import { steps } from '../steps/list.js';
import type { Action } from './action.js';
import { tableActions } from './table-actions.js';

/** Every action: those of the table, then those of each step. */
export const actions: readonly Action[] = [
  ...tableActions,
  ...keepActions,
  ...colouredActions,
  ...steps.flatMap((step) => step.actions.map((one) => ({ step: step.id, ...one }))),
];
