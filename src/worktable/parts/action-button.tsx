import { useReducer, useRef } from 'preact/hooks';
import { actionNamed } from '../actions/known.js';
import type { ActionId } from '../actions/action.js';
import { words } from '../words.js';
import { Icon } from './icon.js';

/**
 * The button of an action: its drawing and its word, its state, and its keys for whoever asks. While
 * it has the keyboard it stays there even when there is nothing for it to do.
 */
export function ActionButton({
  id,
  look = 'plain',
}: {
  id: ActionId;
  look?: 'plain' | 'main' | 'quiet';
}) {
  const action = actionNamed(id);
  const pressed = action.on?.();
  const possible = action.possible?.() ?? true;
  const own = useRef<HTMLButtonElement>(null);
  const [, again] = useReducer((n: number, _: void) => n + 1, 0);
  const held = !possible && own.current !== null && own.current === document.activeElement;
  return (
    <button
      type="button"
      class={`button ${look}`}
      data-action={id}
      ref={own}
      disabled={!possible && !held}
      aria-disabled={held || undefined}
      onBlur={() => held && again()}
      aria-pressed={pressed}
      aria-keyshortcuts={action.keys?.[0]?.replace('Ctrl', 'Control')}
      onClick={() => possible && action.do()}
    >
      <Icon name={action.icon} />
      <span>{words.value.actions[id]}</span>
    </button>
  );
}
