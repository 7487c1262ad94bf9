import { effect } from '@preact/signals';
import { uppermost } from './over.js';

/** Written into the browser's history, address unchanged, while something hides the table. */
const away = { away: true };
const isAway = () => (history.state as Partial<typeof away> | null)?.away === true;

/**
 * The browser's own way back leads to the table, one layer at a time, and only from there off the page: on a phone it
 * is a button that thumbs know. Begins once the last piece lies on the table.
 */
export function followBrowserBack(): void {
  let returning = false;
  // A page opened anew, with nothing over the table, has nothing to come back from.
  if (isAway() && !uppermost()) history.replaceState(null, '');
  const write = () => {
    const hidden = uppermost() !== undefined;
    if (returning || hidden === isAway()) return;
    if (hidden) return history.pushState(away, '');
    returning = true;
    history.back();
  };
  effect(write);
  window.addEventListener('popstate', () => {
    if (returning) returning = false;
    else if (!isAway()) uppermost()?.putAside();
    write();
  });
}
