import type { Change } from '../store/patch.js';
import type { Past } from '../store/history.js';
import type { Piece, PiecePicture } from '../store/piece.js';

/** A piece without the pixels of its picture, which is named by the SHA-256 of its file. */
export type ThinPiece = Omit<Piece, 'picture' | 'backPicture'> & {
  readonly pictureId?: string | undefined;
  readonly backPictureId?: string | undefined;
};

/** Parts of a piece that are pictures. */
const pictureParts: ReadonlySet<string> = new Set(['picture', 'backPicture']);

/** Whether a change is of a picture. */
export const isOfPicture = ({ path }: Pick<Change, 'path'>): boolean => pictureParts.has(path[0]);

/** One piece as the browser keeps it. */
export interface KeptPiece {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970: for the order on the shelf, nothing else. */
  readonly savedAt: number;
  /** When it was taken off the shelf; it can be brought back. */
  readonly removedAt?: number | undefined;
  readonly piece: ThinPiece;
  /** How many of its strokes are done; those after them were taken back. */
  readonly at: number;
  /** The panel as it looks, for the shelf. */
  readonly look?: Blob | undefined;
}

/** One step of a history as the browser keeps it: pictures by their ids. */
export interface KeptStroke {
  readonly name: string;
  readonly changes: readonly Change[];
}

const ids = new WeakMap<PiecePicture, string>();

/** Says what a picture is called in the database. */
export const nameStored = (picture: PiecePicture, id: string) => void ids.set(picture, id);

/** What a picture is called there; undefined until its file has been stored. */
export const storedName = (picture: PiecePicture): string | undefined => ids.get(picture);

/** SHA-256 of a file, in hexadecimal digits. */
export async function fingerprint(file: Blob): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', await file.arrayBuffer());
  return Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

export function thinPiece(piece: Piece): ThinPiece {
  const { picture, backPicture, ...rest } = piece;
  return {
    ...rest,
    ...(picture && { pictureId: ids.get(picture) }),
    ...(backPicture && { backPictureId: ids.get(backPicture) }),
  };
}

/** Every picture that a piece and its history show. */
export function picturesOf(piece: Piece, { done, undone }: Past): PiecePicture[] {
  const found = new Set<PiecePicture>();
  for (const one of [piece.picture, piece.backPicture]) if (one) found.add(one);
  for (const { changes } of [...done, ...undone]) {
    for (const change of changes) {
      if (!isOfPicture(change)) continue;
      for (const one of [change.before, change.after]) if (one) found.add(one as PiecePicture);
    }
  }
  return [...found];
}

/** A step as it is kept. */
export function thinStroke({ name, changes }: KeptStroke): KeptStroke {
  const thin = (value: unknown) => value && ids.get(value as PiecePicture);
  return {
    name,
    changes: changes.map((change) =>
      isOfPicture(change)
        ? { path: change.path, before: thin(change.before), after: thin(change.after) }
        : change,
    ),
  };
}

/** A step as it was, with its pictures; undefined where one of them is not to be had any more. */
export function fullStroke(
  { name, changes }: KeptStroke,
  pictureOf: (id: string) => PiecePicture | undefined,
): KeptStroke | undefined {
  let lost = false;
  const full = (id: unknown) => {
    if (id === undefined) return undefined;
    const picture = pictureOf(id as string);
    lost ||= picture === undefined;
    return picture;
  };
  const whole = changes.map((change) =>
    isOfPicture(change)
      ? { path: change.path, before: full(change.before), after: full(change.after) }
      : change,
  );
  return lost ? undefined : { name, changes: whole };
}
