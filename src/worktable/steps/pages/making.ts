import { signal } from '@preact/signals';
import type { Action } from '../../actions/action.js';
import { makeLists, makePages } from '../../pages/make-pages.js';
import { fileName, saveFile } from '../../pages/save-file.js';
import { chooseAny } from '../../picture-in/ways-in.js';
import { isSaid } from '../../said.js';
import type { PagesWish } from '../../store/piece.js';
import { chart, piece, pieces, tell, tellTrouble } from '../../store/store.js';
import { language, words } from '../../words.js';
import { putSheetsAway, sheets, showSheets } from './sheets.js';

/** Which file is being made. */
export const making = signal<'booklet' | 'share' | 'zip' | undefined>(undefined);

/** The lists as they stand, by the names of their files; undefined until they are wanted. */
export const lists = signal<Readonly<Record<string, string>> | undefined>(undefined);

/** Wishes the pages otherwise, as one step. */
export function wishPages(part: Partial<PagesWish>): void {
  pieces.change(words.peek().pages.steps.how, (now) => ({
    ...now,
    pages: { ...now.pages, ...part },
  }));
}

const pattern = () => chart.peek()?.settled?.pattern;
const ready = () => chart.value?.settled !== undefined && making.value === undefined;

async function make(what: 'booklet' | 'zip', as: NonNullable<typeof making.value>) {
  const made = pattern();
  if (!made) return undefined;
  making.value = as;
  try {
    return await makePages(what, made, piece.peek().pages ?? {}, language.peek());
  } catch (error) {
    tellTrouble(error);
    return undefined;
  } finally {
    making.value = undefined;
  }
}

async function save(what: 'booklet' | 'zip'): Promise<void> {
  const name = nameOf(what);
  const blob = await make(what, what);
  if (!blob) return;
  saveFile(blob, name);
  tell(words.peek().table.saved(name));
}

const nameOf = (what: 'booklet' | 'zip') =>
  fileName(piece.peek().title, what === 'zip' ? '.zip' : '-booklet.pdf');

/** Hands the booklet to another app, where the browser can. */
async function share(): Promise<void> {
  const blob = await make('booklet', 'share');
  if (!blob) return;
  const file = new File([blob], nameOf('booklet'), { type: 'application/pdf' });
  try {
    if (navigator.canShare?.({ files: [file] })) await navigator.share({ files: [file] });
    else saveFile(blob, file.name);
  } catch (error) {
    if ((error as Error).name !== 'AbortError') saveFile(blob, file.name);
  }
}

/** Makes the lists anew, to be read on the card. */
export async function readLists(): Promise<void> {
  const made = pattern();
  if (!made) return;
  try {
    lists.value = await makeLists(made, piece.peek().pages ?? {}, language.peek());
  } catch (error) {
    tellTrouble(error);
  }
}

const flag = (id: 'grey' | 'large', icon: Action['icon']): Action => ({
  id,
  icon,
  on: () => piece.value.pages?.[id] === true,
  do: () => wishPages({ [id]: piece.peek().pages?.[id] ? undefined : true }),
});

/** What can be made of the pattern. */
export const actions: readonly Action[] = [
  { id: 'booklet', icon: 'book', possible: ready, do: () => void save('booklet') },
  {
    id: 'look-booklet',
    icon: 'eye',
    possible: ready,
    on: () => sheets.value !== undefined,
    do: () => (sheets.peek() ? putSheetsAway() : void showSheets()),
  },
  {
    id: 'share-booklet',
    icon: 'to-right',
    possible: () => ready() && 'canShare' in navigator,
    do: () => void share(),
  },
  { id: 'zip', icon: 'zip', possible: ready, do: () => void save('zip') },
  { id: 'read-lists', icon: 'paper', possible: ready, do: () => void readLists() },
  flag('grey', 'mix'),
  flag('large', 'letter'),
  {
    id: 'other-hand',
    icon: 'mirror',
    on: () => piece.value.pages?.otherHand !== undefined,
    do: () => {
      const own = chart.peek()?.shape.hand ?? 'right';
      const other = own === 'right' ? 'left' : 'right';
      wishPages({ otherHand: piece.peek().pages?.otherHand ? undefined : other });
    },
  },
  {
    id: 'cover-photo',
    icon: 'camera',
    do: () => chooseAny('image/*', false, (file) => void layPhoto(file)),
  },
  {
    id: 'no-photo',
    icon: 'close',
    possible: () => piece.value.pages?.photo !== undefined,
    do: () => wishPages({ photo: undefined }),
  },
];

async function layPhoto(file: File): Promise<void> {
  try {
    const { takePhoto } = await import('../../pages/take-photo.js');
    wishPages({ photo: await takePhoto(file) });
  } catch (error) {
    tellTrouble(isSaid(error) ? error : words.peek().errors.pictureNotRead(file.name));
  }
}
