import type { WorktableWords } from '../index.js';

/** Names of keys that have no letter of their own. */
export const keys: WorktableWords['keys'] = {
  Control: 'Ctrl',
  Shift: 'Shift',
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
  Enter: 'Enter',
  ' ': '空格',
};
