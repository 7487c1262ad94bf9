import { newEdition, takeNewEdition } from '../offline/offline.js';
import type { Action } from '../actions/action.js';
import { chooseFile } from '../picture-in/ways-in.js';
import { fileName, saveFile } from '../pages/save-file.js';
import { chart, piece, tell, tellTrouble } from '../store/store.js';
import { words } from '../words.js';
import { pieceEnding } from './is-zip.js';
import { beginPiece, copyPiece, openKept, readShelf } from './shelf.js';
import { keeping, pieceId, shelfOpen } from './state.js';
import { workHere } from './autosave.js';

async function savePiece(): Promise<void> {
  try {
    const name = fileName(piece.peek().title, pieceEnding);
    const { pieceFile } = await import('./piece-file.js');
    saveFile(await pieceFile(piece.peek(), chart.peek()?.settled?.pattern), name);
    tell(words.peek().table.saved(name));
  } catch (error) {
    tellTrouble(error);
  }
}

/** What can be done with whole pieces. */
export const keepActions: readonly Action[] = [
  {
    id: 'shelf',
    icon: 'shelf',
    keys: ['s'],
    on: () => shelfOpen.value,
    do() {
      shelfOpen.value = !shelfOpen.peek();
      if (shelfOpen.peek()) void readShelf();
    },
  },
  { id: 'begin-piece', icon: 'plus', do: () => void close(beginPiece()) },
  {
    id: 'copy-piece',
    icon: 'overlay',
    possible: () => pieceId.value !== undefined,
    do: () => void copyPiece(),
  },
  { id: 'open-piece', icon: 'folder', do: () => chooseFile(false) },
  { id: 'save-piece', icon: 'zip', keys: ['Ctrl+s'], do: () => void savePiece() },
  {
    id: 'new-edition',
    icon: 'wand',
    possible: () => newEdition.value !== undefined,
    do: () => void takeNewEdition(),
  },
  {
    id: 'work-here',
    icon: 'to-left',
    possible: () => keeping.value === 'elsewhere',
    do: () => void workHere(async (id) => void (await openKept(id))),
  },
];

async function close(done: Promise<void>): Promise<void> {
  await done;
  shelfOpen.value = false;
}
