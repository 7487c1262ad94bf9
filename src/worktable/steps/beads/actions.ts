import type { Action } from '../../actions/action.js';
import { saveFile } from '../../pages/save-file.js';
import { chooseAny } from '../../picture-in/ways-in.js';
import { piece, wish } from '../../store/store.js';
import { words } from '../../words.js';
import { openJarPhoto } from './jars.js';
import { layOurs, openPalette, paletteFile } from './palettes.js';

const ours = (name: 'drawers' | 'harbour' | 'pebbles'): Pick<Action, 'on' | 'do'> => ({
  on: () => piece.value.palette.name === `${name}.csv`,
  do: () => void layOurs(name),
});

/** What can be done with beads. */
export const beadActions: readonly Action[] = [
  { id: 'palette-drawers', icon: 'beads', ...ours('drawers') },
  { id: 'palette-harbour', icon: 'beads', ...ours('harbour') },
  { id: 'palette-pebbles', icon: 'beads', ...ours('pebbles') },
  {
    id: 'open-palette',
    icon: 'folder',
    do: () => chooseAny('.csv,.json,.gpl,.txt', false, (file) => void openPalette(file)),
  },
  {
    id: 'photo-jars',
    icon: 'camera',
    do: () => chooseAny('image/*', false, (file) => void openJarPhoto(file)),
  },
  {
    id: 'save-palette',
    icon: 'zip',
    do: () => saveFile(paletteFile(), piece.peek().palette.name.replace(/(\.[^.]*)?$/, '.csv')),
  },
  {
    id: 'stock',
    icon: 'jar',
    on: () => piece.value.wish.useStock,
    do: () => wish(words.peek().beads.steps.stock, { useStock: !piece.peek().wish.useStock }),
  },
  {
    id: 'mix',
    icon: 'mix',
    possible: () => !piece.value.wish.useStock,
    on: () => piece.value.wish.dither !== undefined,
    do: () => {
      const { dither } = piece.peek().wish;
      wish(words.peek().beads.steps.mix, { dither: dither === undefined ? 0.75 : undefined });
    },
  },
];
