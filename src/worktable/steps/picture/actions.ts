import type { Action } from '../../actions/action.js';
import { beginPiece } from '../../keep/shelf.js';
import { chooseFile, pasteNow } from '../../picture-in/ways-in.js';
import { plainWish } from '../../sample/sample.js';
import { piece, pieces, wish } from '../../store/store.js';
import { words } from '../../words.js';
import { brushing } from './mind.js';
import { brushHere, brushOn, brushRadii, moveBrush, putBrushAway, sizeBrush } from './mind-keys.js';
import { placed, placeOf, shifted, sized, wheeled } from './place.js';

const hasPicture = () => piece.value.picture !== undefined;
const say = () => words.peek().picture.steps;

const lies = (
  place: 'subject' | 'fill' | 'fit' | 'inside',
): Pick<Action, 'possible' | 'on' | 'do'> => ({
  possible: hasPicture,
  on: () => placeOf(piece.value).place === place,
  do: () =>
    pieces.change(say().place, (now) => placed(now, { place, zoom: 1, shiftXmm: 0, shiftYmm: 0 })),
});

const kind = (art: 'auto' | 'photo' | 'drawing'): Pick<Action, 'possible' | 'on' | 'do'> => ({
  possible: () => hasPicture() && !piece.value.wish.paper,
  on: () => piece.value.wish.art === art && !piece.value.wish.paper,
  do: () => wish(say().art, { art }),
});

const nudge = (x: number, y: number) => () => wheeled(say().move, (now) => shifted(now, x, y));

const grow = (factor: number, degrees: number) => () =>
  wheeled(factor === 1 ? say().turn : say().size, (now) => {
    const { shiftXmm = 0, shiftYmm = 0 } = placeOf(now);
    return sized(now, factor, degrees, shiftXmm, shiftYmm);
  });

const isMinded = () => (piece.value.minded?.length ?? 0) > 0;

const brush = (what: 'mind' | 'unmind'): Pick<Action, 'possible' | 'on' | 'do'> => ({
  possible: hasPicture,
  on: () => brushing.value === what,
  do: () => (brushing.value = brushing.peek() === what ? undefined : what),
});

const withBrush: Pick<Action, 'possible'> = {
  possible: () => hasPicture() && brushing.value !== undefined,
};

const arrows = (before: string) =>
  ['Left', 'Right', 'Up', 'Down'].map((way) => `${before}Arrow${way}`);

/** What can be done with the picture. */
export const pictureActions: readonly Action[] = [
  { id: 'open', icon: 'folder', keys: ['Ctrl+o'], do: () => chooseFile(false) },
  { id: 'camera', icon: 'camera', do: () => chooseFile(true) },
  {
    id: 'paste',
    icon: 'paste',
    possible: () => 'clipboard' in navigator,
    do: () => void pasteNow(),
  },
  { id: 'sample', icon: 'bird', possible: () => !piece.value.sample, do: () => void beginPiece() },
  { id: 'place-subject', icon: 'bird', ...lies('subject') },
  { id: 'place-fill', icon: 'fill', ...lies('fill') },
  { id: 'place-fit', icon: 'fit', ...lies('fit') },
  { id: 'place-inside', icon: 'inside', ...lies('inside') },
  {
    id: 'mirror',
    icon: 'mirror',
    keys: ['m'],
    possible: hasPicture,
    on: () => placeOf(piece.value).mirror === true,
    do: () => pieces.change(say().place, (now) => placed(now, { mirror: !placeOf(now).mirror })),
  },
  {
    id: 'repeat',
    icon: 'repeat',
    possible: hasPicture,
    on: () => placeOf(piece.value).repeat === true,
    do: () =>
      pieces.change(say().place, (now) => {
        const repeat = !placeOf(now).repeat;
        return placed(now, { ...plainWish.place, repeat, place: repeat ? 'inside' : 'subject' });
      }),
  },
  {
    id: 'straighten',
    icon: 'straighten',
    possible: () => hasPicture() && differs(),
    do: () => pieces.change(say().place, (now) => placed(now, plainWish.place)),
  },
  { id: 'art-auto', icon: 'wand', ...kind('auto') },
  { id: 'art-photo', icon: 'picture', ...kind('photo') },
  { id: 'art-drawing', icon: 'pencil', ...kind('drawing') },
  {
    id: 'paper',
    icon: 'paper',
    possible: hasPicture,
    on: () => piece.value.wish.paper,
    do: () => wish(say().art, { paper: !piece.peek().wish.paper }),
  },
  {
    id: 'cut-out',
    icon: 'scissors',
    possible: hasPicture,
    on: () => piece.value.wish.cutOut,
    do: () => wish(say().background, { cutOut: !piece.peek().wish.cutOut }),
  },
  { id: 'mind', icon: 'pencil', ...brush('mind') },
  { id: 'unmind', icon: 'sponge', ...brush('unmind'), possible: isMinded },
  {
    id: 'mind-none',
    icon: 'close',
    possible: isMinded,
    do: () => pieces.change(say().mind, ({ minded: _gone, ...now }) => now),
  },
  // While the brush is taken up the arrows are its own.
  { id: 'mind-go', icon: 'pencil', keys: arrows(''), eachKey: true, ...withBrush, do: moveBrush },
  {
    id: 'mind-go-on',
    icon: 'pencil',
    keys: arrows('Shift+'),
    eachKey: true,
    ...withBrush,
    do: brushOn,
  },
  { id: 'mind-here', icon: 'pencil', keys: [' ', 'Enter'], ...withBrush, do: brushHere },
  {
    id: 'mind-larger',
    icon: 'nearer',
    keys: ['.'],
    ...withBrush,
    do: () => sizeBrush(brushRadii.step),
  },
  {
    id: 'mind-smaller',
    icon: 'farther',
    keys: [','],
    ...withBrush,
    do: () => sizeBrush(-brushRadii.step),
  },
  { id: 'mind-done', icon: 'close', keys: ['Escape'], ...withBrush, do: putBrushAway },
  { id: 'to-left', icon: 'to-left', keys: ['ArrowLeft'], possible: hasPicture, do: nudge(-1, 0) },
  { id: 'to-right', icon: 'to-right', keys: ['ArrowRight'], possible: hasPicture, do: nudge(1, 0) },
  { id: 'up', icon: 'up', keys: ['ArrowUp'], possible: hasPicture, do: nudge(0, -1) },
  { id: 'down', icon: 'down', keys: ['ArrowDown'], possible: hasPicture, do: nudge(0, 1) },
  {
    id: 'larger',
    icon: 'nearer',
    keys: ['Shift+ArrowUp'],
    possible: hasPicture,
    do: grow(1.05, 0),
  },
  {
    id: 'smaller',
    icon: 'farther',
    keys: ['Shift+ArrowDown'],
    possible: hasPicture,
    do: grow(1 / 1.05, 0),
  },
  {
    id: 'turn-left',
    icon: 'turn-back',
    keys: ['Shift+ArrowLeft'],
    possible: hasPicture,
    do: grow(1, -5),
  },
  {
    id: 'turn-right',
    icon: 'turn',
    keys: ['Shift+ArrowRight'],
    possible: hasPicture,
    do: grow(1, 5),
  },
];

function differs(): boolean {
  return JSON.stringify(placeOf(piece.value)) !== JSON.stringify(plainWish.place);
}
