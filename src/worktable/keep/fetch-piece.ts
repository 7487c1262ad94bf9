import { openPicture } from '../picture-in/open-file.js';
import type { Done, Past } from '../store/history.js';
import type { Piece, PiecePicture } from '../store/piece.js';
import { database, strokesFrom } from './database.js';
import { fullStroke, isOfPicture, nameStored } from './record.js';
import type { KeptPiece, KeptStroke } from './record.js';

/** Pictures of a history that are opened again; what was done before older ones cannot be undone. */
const mostPictures = 4;

/** A piece as it stood, with its history. */
export interface Fetched {
  readonly id: string;
  readonly piece: Piece;
  readonly past: Past;
  /** Whether the whole history is there. */
  readonly whole: boolean;
}

/** Opens a kept piece; undefined where there is none of this id. */
export async function fetchPiece(id: string): Promise<Fetched | undefined> {
  const db = await database();
  const kept = await db.get('pieces', id);
  if (!kept) return undefined;
  const strokes = (await db.getAll('strokes', strokesFrom(id, 0))) as KeptStroke[];
  const opened = await openPictures(kept, strokes);
  const full = strokes.map((one) => fullStroke(one, (name) => opened.get(name)));
  // Only what hangs together with the present can be undone or done again.
  const firstDone = full.slice(0, kept.at).lastIndexOf(undefined) + 1;
  const lost = full.indexOf(undefined, kept.at);
  const { pictureId, backPictureId, ...rest } = kept.piece;
  const picture = opened.get(pictureId ?? '');
  const backPicture = opened.get(backPictureId ?? '');
  const piece: Piece = {
    ...rest,
    ...(picture && { picture }),
    ...(backPicture && { backPicture }),
  };
  const done = full.slice(firstDone, kept.at) as Done[];
  const undone = full.slice(kept.at, lost === -1 ? undefined : lost).reverse() as Done[];
  return { id, piece, past: { done, undone }, whole: firstDone === 0 && lost === -1 };
}

async function openPictures(kept: KeptPiece, strokes: readonly KeptStroke[]) {
  const wanted: string[] = [];
  const want = (name: unknown) => {
    if (typeof name === 'string' && !wanted.includes(name)) wanted.push(name);
  };
  want(kept.piece.pictureId);
  want(kept.piece.backPictureId);
  // The newest first: those are undone first.
  for (const { changes } of [...strokes].reverse()) {
    for (const change of changes) {
      if (isOfPicture(change)) [change.after, change.before].forEach(want);
    }
  }
  const db = await database();
  const opened = new Map<string, PiecePicture>();
  for (const name of wanted.slice(0, mostPictures)) {
    const stored = await db.get('pictures', name);
    if (!stored) continue;
    const file = new File([stored.file], stored.name, { type: stored.file.type });
    const picture = await openPicture(file);
    nameStored(picture, name);
    opened.set(name, picture);
  }
  return opened;
}
