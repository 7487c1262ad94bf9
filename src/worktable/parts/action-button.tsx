import { actionNamed } from '../actions/known.js';
import type { ActionId } from '../actions/action.js';
import { words } from '../words.js';
import { Icon } from './icon.js';

/** The button of an action: its drawing and its word, its state, and its keys for whoever asks. */
export function ActionButton({
  id,
  look = 'plain',
}: {
  id: ActionId;
  look?: 'plain' | 'main' | 'quiet';
}) {
  const action = actionNamed(id);
  const pressed = action.on?.();
  return (
    <button
      type="button"
      class={`button ${look}`}
      data-action={id}
      disabled={!(action.possible?.() ?? true)}
      aria-pressed={pressed}
      aria-keyshortcuts={action.keys?.[0]?.replace('Ctrl', 'Control')}
      onClick={() => action.do()}
    >
      <Icon name={action.icon} />
      <span>{words.value.actions[id]}</span>
    </button>
  );
}
