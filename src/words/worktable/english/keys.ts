/** Names of keys that have no letter of their own. */
export const keys = {
  Control: 'Ctrl',
  Shift: 'Shift',
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
  Enter: 'Enter',
  ' ': 'Space',
};
