import type { Action, ActionId } from './action.js';

let known: readonly Action[] = [];

/** Makes actions known to the buttons, keys and help that name them; once, before anything is shown. */
export function makeKnown(actions: readonly Action[]): void {
  known = actions;
}

/** Every action, in the order of the list of keys. */
export const allActions = (): readonly Action[] => known;

/** One of them by its id. */
export function actionNamed(id: ActionId): Action {
  const found = known.find((one) => one.id === id);
  if (!found) throw new Error(`no action ${id}`);
  return found;
}
