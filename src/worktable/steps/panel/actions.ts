import { signal } from '@preact/signals';
import type { Action, ActionId } from '../../actions/action.js';
import { piece, pieces } from '../../store/store.js';
import { words } from '../../words.js';
import { shaped } from './shape-wish.js';
import { swatchRounds } from './swatch-form.js';
import type { Piece } from '../../store/piece.js';

type ShapePart = Piece['wish']['shape'];

/** One choice of the way of working: pressed where it holds. */
function way<K extends keyof ShapePart>(
  id: ActionId,
  icon: Action['icon'],
  key: K,
  value: ShapePart[K],
  usual = false,
): Action {
  return {
    id,
    icon,
    on: () => (piece.value.wish.shape[key] ?? (usual ? value : undefined)) === value,
    do: () =>
      pieces.change(words.peek().panel.steps.way, (now) =>
        shaped(now, { [key]: value } as Partial<ShapePart>),
      ),
  };
}

/** Whether the guide to a swatch is being made. */
const guiding = signal(false);

async function saveSwatchGuide(): Promise<void> {
  guiding.value = true;
  try {
    const { saveGuide } = await import('./guide.js');
    await saveGuide(swatchRounds.peek());
  } finally {
    guiding.value = false;
  }
}

/** What can be done with the shape. */
export const panelActions: readonly Action[] = [
  {
    id: 'swatch-guide',
    icon: 'paper',
    possible: () => !guiding.value,
    do: () => void saveSwatchGuide(),
  },
  way('hand-right', 'hand-right', 'hand', 'right', true),
  way('hand-left', 'hand-left', 'hand', 'left'),
  way('face-away', 'face-away', 'beadsFace', 'away', true),
  way('face-toward', 'face-toward', 'beadsFace', 'toward'),
  way('rounds-spiral', 'spiral', 'construction', 'spiral', true),
  way('rounds-joined', 'rings', 'construction', 'joined'),
  way('increase-last', 'to-right', 'increase', 'last', true),
  way('increase-middle', 'straighten', 'increase', 'middle'),
  way('increase-first', 'to-left', 'increase', 'first'),
  way('outline-own', 'wand', 'outline', undefined, true),
  way('outline-polygon', 'corners', 'outline', 'polygon'),
  way('outline-circle', 'whole', 'outline', 'circle'),
];
