import type { WorktableWords } from '../index.js';

/** Names of keys that have no letter of their own. */
export const keys: WorktableWords['keys'] = {
  Control: 'Strg',
  Shift: 'Umschalt',
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
  Enter: 'Eingabe',
  ' ': 'Leertaste',
};
