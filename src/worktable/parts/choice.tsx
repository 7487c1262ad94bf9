import type { ActionId } from '../actions/action.js';
import { ActionButton } from './action-button.js';

/** One of a few: actions side by side under a name. */
export function Choice({ name, of }: { name: string; of: readonly ActionId[] }) {
  return (
    <fieldset class="choice">
      <legend>{name}</legend>
      <div class="row">
        {of.map((id) => (
          <ActionButton key={id} id={id} />
        ))}
      </div>
    </fieldset>
  );
}
