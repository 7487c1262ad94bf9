import { signal } from '@preact/signals';
import { showKeptChart } from '../sample/kept-chart.js';
import { laySample } from '../sample/lay-sample.js';
import { samplePicture } from '../sample/sample.js';
import { look, pieces, tell } from '../store/store.js';
import { words } from '../words.js';
import { laidAnew, putAway, save } from './autosave.js';
import { database, strokesFrom } from './database.js';
import { fetchPiece } from './fetch-piece.js';
import { hold } from './hold.js';
import type { KeptPiece } from './record.js';
import { halfReadPhoto, keeping, pieceId } from './state.js';
import { alreadyWritten } from './store-piece.js';

/** A piece on the shelf. */
export type OnShelf = Pick<KeptPiece, 'id' | 'title' | 'savedAt' | 'removedAt' | 'look'>;

/** What lies on the shelf, the newest first; those taken off it last. */
export const onShelf = signal<readonly OnShelf[]>([]);

export async function readShelf(): Promise<void> {
  try {
    const all = await (await database()).getAll('pieces');
    onShelf.value = all
      .map(({ id, title, savedAt, removedAt, look }) => ({ id, title, savedAt, removedAt, look }))
      .sort((a, b) => Number(!!a.removedAt) - Number(!!b.removedAt) || b.savedAt - a.savedAt);
  } catch {
    keeping.value = 'refused';
  }
}

/** Lays a kept piece on the table. */
export async function openKept(id: string): Promise<boolean> {
  const fetched = await fetchPiece(id);
  if (!fetched) return false;
  if (pieceId.peek() !== id) await putAway();
  const ours = await hold(id);
  pieces.open(fetched.piece, fetched.past);
  laidAnew();
  if (fetched.whole) alreadyWritten(id, fetched.past);
  pieceId.value = id;
  keeping.value = ours ? 'kept' : 'elsewhere';
  sessionStorage.setItem('piece', id);
  look({ panel: 0, litStitch: -1, litBead: undefined });
  return true;
}

/** What lay on the table when this window, or else any, was closed; our sample where there is none. */
export async function openLast(): Promise<void> {
  // Where nothing is known of a piece, our sample will be wanted: its picture is fetched meanwhile.
  const file = sessionStorage.getItem('piece') === null ? samplePicture() : undefined;
  file?.catch(() => {});
  try {
    const db = await database();
    const last = sessionStorage.getItem('piece') ?? (await db.get('notes', 'last piece'));
    const kept = last === undefined || last === null ? undefined : await db.get('pieces', last);
    if (kept && !kept.removedAt && (await openKept(kept.id))) return;
  } catch {
    keeping.value = 'refused';
  }
  showKeptChart();
  await laySample(undefined, file);
}

/** A new piece: our sample, which waits for a picture. Says where the piece before it is. */
export async function beginPiece(): Promise<void> {
  const { title } = pieces.now.peek();
  if (await layNew()) tell(words.peek().shelf.waits(title));
}

/** @returns whether the piece before lies on the shelf */
async function layNew(): Promise<boolean> {
  let kept = false;
  await laySample(async () => {
    kept = await putAway();
  });
  look({ step: 'picture' });
  return kept;
}

/** Lays a piece that was saved as a file on the table, as a new one. */
export async function openSaved(file: File): Promise<void> {
  const { openPieceFile } = await import('./piece-file.js');
  const saved = await openPieceFile(file);
  await putAway();
  pieces.open(saved);
  look({ panel: 0, litStitch: -1, litBead: undefined });
  await keepAsNew();
}

/** A second piece like this one, which goes on from here. */
export async function copyPiece(): Promise<void> {
  await save();
  const { now, past } = pieces;
  const title = words.peek().shelf.copyOf(now.peek().title).slice(0, 200);
  const copy = { ...now.peek(), title };
  const before = past.peek();
  await putAway();
  pieces.open(copy, before);
  await keepAsNew();
}

async function keepAsNew(): Promise<void> {
  pieceId.value = crypto.randomUUID();
  await hold(pieceId.peek()!);
  await save();
  await readShelf();
}

/** Takes a piece off the shelf, or puts it back; nothing is thrown away. */
export async function setRemoved(id: string, removed: boolean): Promise<void> {
  const db = await database();
  const kept = await db.get('pieces', id);
  if (!kept) return;
  const { removedAt: _removedAt, ...rest } = kept;
  await db.put('pieces', removed ? { ...rest, removedAt: Date.now() } : rest);
  const { takenOff, putBack } = words.peek().shelf;
  tell((removed ? takenOff : putBack)(kept.title));
  if (removed && id === pieceId.peek()) await layNew();
  await readShelf();
}

/** Throws away what was taken off the shelf, its strokes, and pictures that no piece shows any more. */
export async function clearRemoved(): Promise<void> {
  const db = await database();
  for (const { id } of onShelf.peek().filter((one) => one.removedAt)) {
    await db.delete('strokes', strokesFrom(id, 0));
    await db.delete('pieces', id);
  }
  const shown = new Set<unknown>([halfReadPhoto]);
  for (const { piece } of await db.getAll('pieces')) {
    shown.add(piece.pictureId).add(piece.backPictureId);
  }
  for (const { changes } of await db.getAll('strokes')) {
    for (const { before, after } of changes) shown.add(before).add(after);
  }
  for (const name of await db.getAllKeys('pictures')) {
    if (!shown.has(name)) await db.delete('pictures', name);
  }
  await readShelf();
}
