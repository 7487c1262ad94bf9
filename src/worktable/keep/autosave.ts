import { effect } from '@preact/signals';
import { chart, piece, pieces, tell } from '../store/store.js';
import { words } from '../words.js';
import { database } from './database.js';
import { hold, release, takeOver, whenWanted } from './hold.js';
import { shelfLook } from './shelf-look.js';
import { keeping, pieceId, unsaved } from './state.js';
import { forgetWritten, storePiece } from './store-piece.js';

/** While a gesture goes on, it is kept this often, milliseconds. */
const midwayEveryMs = 400;

let saving: Promise<void> | undefined;
let again = false;
/** Whether the maker has done something since the piece was laid on the table. */
let touched = false;

/** Keeps the piece on the table after every step, and a long gesture now and then. */
export function startAutosave(): void {
  const counted = () => pieces.steps.value + pieces.marks.value;
  let before = pieces.steps.peek() + pieces.marks.peek();
  effect(() => {
    const now = counted();
    if (now === before) return;
    before = now;
    touched = true;
    unsaved.value = true;
    void save();
  });
  let timer: ReturnType<typeof setInterval> | undefined;
  effect(() => {
    clearInterval(timer);
    if (pieces.held.value) timer = setInterval(() => pieces.midway() && void save(), midwayEveryMs);
  });
  // The picture of the shelf, once the beads of the last step are known.
  effect(() => {
    if (chart.value?.settled && pieceId.peek() !== undefined) void save();
  });
  document.addEventListener('visibilitychange', () => {
    if (document.hidden && pieceId.peek() !== undefined) void save();
  });
  whenWanted(async () => {
    await save();
    // The other window has all of it: only what is done here from now on is a piece of its own.
    touched = false;
    keeping.value = 'elsewhere';
  });
}

/** Keeps the piece as it stands; a wish that comes meanwhile is granted after it. */
export function save(): Promise<void> {
  again = true;
  saving ??= (async () => {
    while (again) {
      again = false;
      await saveOnce();
    }
    unsaved.value = false;
  })().finally(() => (saving = undefined));
  return saving;
}

async function saveOnce(): Promise<void> {
  const past = pieces.past.peek();
  const midway = pieces.midway();
  const { work } = piece.peek();
  const untouched = past.done.length === 0 && past.undone.length === 0 && !midway && !work;
  if (pieceId.peek() === undefined && untouched) return;
  try {
    if (keeping.peek() === 'elsewhere') {
      if (!touched) return;
      // Another window keeps this piece: what is done here goes on as a piece of its own.
      pieceId.value = undefined;
      forgetWritten();
      tell(words.peek().shelf.copied);
    }
    if (pieceId.peek() === undefined) {
      pieceId.value = crypto.randomUUID();
      await hold(pieceId.peek()!);
      void navigator.storage?.persist?.();
    }
    const id = pieceId.peek()!;
    const drawn = chart.peek();
    // A gesture under way is kept without a new picture for the shelf.
    const look = drawn?.settled && !midway ? await shelfLook(drawn) : undefined;
    const done = midway ? [...past.done, midway] : past.done;
    await storePiece(id, piece.peek(), midway ? { done, undone: [] } : past, {
      savedAt: Date.now(),
      look,
    });
    const db = await database();
    await db.put('notes', id, 'last piece');
    sessionStorage.setItem('piece', id);
    if (keeping.peek() !== 'elsewhere' || pieceId.peek() === id) keeping.value = 'kept';
  } catch (error) {
    forgetWritten();
    keeping.value = (error as Error).name === 'QuotaExceededError' ? 'full' : 'refused';
  }
}

/** The piece in another window is worked on here from now on. */
export async function workHere(reopen: (id: string) => Promise<void>): Promise<void> {
  const id = pieceId.peek();
  if (id === undefined || !(await takeOver(id))) return;
  // Until it lies on the table as the other window left it, the table says that it is elsewhere.
  await reopen(id);
}

/** Says that what lies on the table now is as it was kept. */
export function laidAnew(): void {
  touched = false;
}

/**
 * Ends keeping of this piece, before another is laid on the table.
 *
 * @returns whether it lies on the shelf
 */
export async function putAway(): Promise<boolean> {
  await save();
  const kept = pieceId.peek() !== undefined && /^(kept|elsewhere)$/.test(keeping.peek());
  release();
  forgetWritten();
  pieceId.value = undefined;
  touched = false;
  keeping.value = 'nothing';
  sessionStorage.removeItem('piece');
  return kept;
}
