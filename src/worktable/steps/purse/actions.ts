import type { Action, ActionId } from '../../actions/action.js';
import type { IconName } from '../../parts/icon.js';
import { openFile } from '../../picture-in/open-file.js';
import type { Frame } from '../../../core/purse/frame/measures.js';
import type { Piece } from '../../store/piece.js';
import { purseLook, trueSize } from '../../store/purse.js';
import type { PurseLook } from '../../store/purse.js';
import { chart, look, piece, pieces, tell, tellTrouble } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { shapeOf } from '../panel/shape-wish.js';
import { fitted, measured, withKind } from './frame-wish.js';

const hasPicture = () => piece.value.picture !== undefined;

function change(step: 'frame' | 'back', recipe: (now: Piece) => Piece): void {
  try {
    pieces.change(words.peek().purse.steps[step], recipe);
  } catch (error) {
    tellTrouble(error);
  }
}

const kind = (id: ActionId, icon: IconName, of: Frame['kind'] | undefined): Action => ({
  id,
  icon,
  possible: hasPicture,
  on: () => piece.value.wish.frame?.kind === of,
  do: () => change('frame', (now) => withKind(now, of)),
});

const fixing = (id: ActionId, icon: IconName, of: Frame['fixing']): Action => ({
  id,
  icon,
  possible: () => piece.value.wish.frame !== undefined,
  on: () => piece.value.wish.frame?.fixing === of,
  do: () => change('frame', (now) => measured(now, { fixing: of })),
});

const back = (id: ActionId, icon: IconName, of: 'same' | undefined): Action => ({
  id,
  icon,
  possible: hasPicture,
  on: () => piece.value.wish.back === of,
  do: () => {
    change('back', (now) => ({ ...now, wish: { ...now.wish, back: of, backPlace: undefined } }));
    if (of === undefined) look({ panel: 0 });
  },
});

const seen = (id: ActionId, icon: IconName, of: PurseLook, possible?: () => boolean): Action => ({
  id,
  icon,
  ...(possible && { possible }),
  on: () => purseLook.value === of,
  do: () => {
    purseLook.value = of;
    if (of === 'front' || of === 'back') look({ panel: of === 'back' ? 1 : 0, litStitch: -1 });
  },
});

const twoPanels = () => (chart.value?.panels.length ?? 0) > 1;

/** What can be done with the purse. */
export const purseActions: readonly Action[] = [
  back('back-none', 'close', undefined),
  back('back-same', 'two-parts', 'same'),
  {
    id: 'back-own',
    icon: 'picture',
    possible: hasPicture,
    on: () => piece.value.wish.back === 'own',
    do: chooseBack,
  },
  kind('frame-none', 'close', undefined),
  kind('frame-half-round', 'frame-half-round', 'half-round'),
  kind('frame-squared', 'frame-squared', 'squared'),
  kind('frame-oval', 'frame-oval', 'oval'),
  fixing('frame-sewn', 'needle', 'sewn'),
  fixing('frame-glued', 'paper', 'glued'),
  {
    id: 'fit-frame',
    icon: 'fit',
    possible: () => piece.value.wish.frame !== undefined,
    do: fit,
  },
  seen('purse-both', 'two-parts', 'both'),
  seen('purse-front', 'purse', 'front'),
  seen('purse-back', 'other-face', 'back', twoPanels),
  seen('purse-inside', 'purse-open', 'inside', () => piece.value.wish.frame !== undefined),
  {
    id: 'true-size',
    icon: 'ruler',
    on: () => trueSize.value,
    do: () => {
      trueSize.value = !trueSize.peek();
    },
  },
];

/** As many rounds as the frame asks for, and says what that changed. */
function fit(): void {
  const say = words.peek().purse;
  const before = shapeOf(piece.peek()).rounds;
  try {
    const next = fitted(piece.peek());
    const after = shapeOf(next).rounds;
    if (after === before) return tell(say.fits(figure(before)));
    pieces.change(say.steps.fit, () => next);
    tell(say.fitNow({ before: figure(before), after: figure(after) }));
  } catch (error) {
    tellTrouble(error);
  }
}

/** Lays a picture of its own on the back. */
function chooseBack(): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = 'image/*,.svg';
  input.addEventListener('change', () => void layBack(input.files?.[0]));
  input.click();
}

async function layBack(file: File | undefined): Promise<void> {
  if (!file) return;
  try {
    const opened = await openFile(file);
    if (!('picture' in opened)) return tellTrouble(words.peek().errors.pictureNotRead(file.name));
    change('back', (now) => ({
      ...now,
      backPicture: opened.picture,
      wish: { ...now.wish, back: 'own', backPlace: undefined },
    }));
  } catch (error) {
    tellTrouble(error);
  }
}
