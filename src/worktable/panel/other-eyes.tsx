import { ActionButton } from '../parts/action-button.js';
import { view } from '../store/store.js';
import { words } from '../words.js';

/** Whose eyes look at the panel, where they are not the maker's own, and the way back to those. */
export function OtherEyes() {
  const { eyes } = view.value;
  if (eyes === 'usual') return null;
  return (
    <div class="other-eyes">
      <p>{words.value.beads.seenAs[eyes]}</p>
      <ActionButton id="own-eyes" />
    </div>
  );
}
