import { colouring } from '../coloured/state.js';
import { atWork } from '../steps/work/work-store.js';
import { look, view } from '../store/store.js';
import type { Action, ActionId } from './action.js';
import { allActions } from './known.js';
import { overTable } from './over.js';

/** A key as it is written in the list of actions. */
export function keyOf(event: KeyboardEvent): string {
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  const control = event.ctrlKey || event.metaKey ? 'Ctrl+' : '';
  const shift = event.shiftKey && (event.key.length > 1 || control) ? 'Shift+' : '';
  return control + shift + key;
}

/** Keys that a slider has for itself. */
const slides = /^(Arrow(Left|Right|Up|Down)|Home|End|PageUp|PageDown)$/;

/** What can be done by key while something lies over the table: nothing that would change what is not seen. */
const whileCovered: readonly ActionId[] = ['shelf', 'save-piece', 'open', 'help'];

function hasKeyNow({ id, step }: Action): boolean {
  if (overTable()) return whileCovered.includes(id);
  if (atWork.peek()) return step === 'work' || id === 'save-piece';
  return step === undefined || step === view.peek().step;
}

/** What a key does now; none while something is typed. */
export function actionFor(event: KeyboardEvent): Action | undefined {
  const at = event.target as HTMLElement | null;
  const typing = at?.closest(
    'input, textarea, select, [contenteditable]',
  ) as HTMLInputElement | null;
  const pressed = keyOf(event);
  const types = typing && typing.type !== 'range' && typing.type !== 'checkbox';
  // Files are opened and saved from a field, too: the browser would take these keys for itself.
  if (types && !/^Ctrl\+[osy]$/.test(pressed)) return undefined;
  if (typing?.type === 'range' && slides.test(pressed)) return undefined;
  if (/^( |Enter)$/.test(pressed) && at?.closest('button, summary, a')) return undefined;
  return allActions().find(
    (one) => one.keys?.includes(pressed) && hasKeyNow(one) && (one.possible?.() ?? true),
  );
}

/** Escape puts aside what lies over the table, else the card of a heap. */
function putAside(): boolean {
  const covers = overTable();
  if (covers) covers.putAside();
  else if (view.peek().card !== undefined) look({ card: undefined, litBead: undefined });
  else return false;
  return true;
}

/** Listens for the keys of all actions. */
export function listenForKeys(): void {
  window.addEventListener('keydown', (event) => {
    // The screen for a coloured chart has keys of its own.
    if (event.defaultPrevented || event.altKey || colouring.peek()) return;
    if (event.key === 'Escape' && putAside()) return;
    const action = actionFor(event);
    if (!action) return;
    event.preventDefault();
    action.do(keyOf(event));
  });
}
