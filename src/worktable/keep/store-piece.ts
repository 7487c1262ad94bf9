import type { Done, Past } from '../store/history.js';
import type { Piece } from '../store/piece.js';
import { database, strokesFrom } from './database.js';
import {
  fingerprint,
  nameStored,
  picturesOf,
  storedName,
  thinPiece,
  thinStroke,
} from './record.js';

/** What was written of a history last, so that only what is new is written. */
let written: { id: string; strokes: readonly Done[] } | undefined;

/** Forgets what was written: the next write is a whole one. */
export function forgetWritten(): void {
  written = undefined;
}

/** Says that the history of a piece stands in the database as it is. */
export function alreadyWritten(id: string, { done, undone }: Past): void {
  written = { id, strokes: [...done, ...[...undone].reverse()] };
}

/**
 * Keeps a piece and its history: picture files once, new steps apart, all in one transaction.
 *
 * @throws DOMException `QuotaExceededError` and whatever the browser refuses
 */
export async function storePiece(
  id: string,
  piece: Piece,
  past: Past,
  more: { savedAt: number; look?: Blob | undefined },
): Promise<void> {
  const db = await database();
  for (const picture of picturesOf(piece, past)) {
    if (storedName(picture) !== undefined || !picture.file) continue;
    const name = await fingerprint(picture.file);
    const have = await db.getKey('pictures', name);
    if (have === undefined) {
      await db.put('pictures', { name: picture.name, file: picture.file }, name);
    }
    nameStored(picture, name);
  }
  const strokes = [...past.done, ...[...past.undone].reverse()];
  const before = written?.id === id ? written.strokes : [];
  let from = 0;
  while (from < strokes.length && strokes[from] === before[from]) from++;
  const transaction = db.transaction(['pieces', 'strokes'], 'readwrite');
  const pieces = transaction.objectStore('pieces');
  const kept = await pieces.get(id);
  // Each of them fails for itself where the browser refuses one: none may be left unheard.
  const writes: Promise<unknown>[] = [transaction.done];
  const history = transaction.objectStore('strokes');
  if (before.length > from || before.length === 0)
    writes.push(history.delete(strokesFrom(id, from)));
  for (let n = from; n < strokes.length; n++) {
    writes.push(history.put(thinStroke(strokes[n]), [id, n]));
  }
  const look = more.look ?? kept?.look;
  writes.push(
    pieces.put({
      id,
      title: piece.title,
      savedAt: more.savedAt,
      piece: thinPiece(piece),
      at: past.done.length,
      ...(look && { look }),
    }),
  );
  await Promise.all(writes);
  written = { id, strokes };
}
