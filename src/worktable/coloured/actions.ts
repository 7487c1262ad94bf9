import type { Action } from '../actions/action.js';
import type { BlankName } from '../../core/pages/blank-outputs.js';
import { tellTrouble } from '../store/store.js';
import { colouring } from './state.js';

async function save(name: BlankName): Promise<void> {
  try {
    const { saveBlank } = await import('./save-blank.js');
    await saveBlank(name);
  } catch (error) {
    tellTrouble(error);
  }
}

/** An empty chart to print, and the way back from the coloured page. */
export const colouredActions: readonly Action[] = [
  { id: 'blank-chart', icon: 'paper', do: () => void save('blank.pdf') },
  { id: 'blank-svg', icon: 'pages', do: () => void save('blank.svg') },
  { id: 'coloured-chart', icon: 'pencil', do: () => (colouring.value = true) },
];
