import { strFromU8, unzipSync } from 'fflate';
import { patternText } from '../../core/pattern/serialise.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { zipOf } from '../pages/zip.js';
import { openPicture } from '../picture-in/open-file.js';
import { Said } from '../said.js';
import type { Piece, PiecePicture } from '../store/piece.js';
import { words } from '../words.js';
import { readSavedPiece, savedPieceText } from './piece-schema.js';

/** Bytes that a piece may unpack to; a picture is far below. */
const mostBytes = 300_000_000;

/** One file that holds the whole piece: what is wished, the picture, the beads, and the pattern as it stands. */
export async function pieceFile(piece: Piece, pattern: Pattern | undefined): Promise<Blob> {
  const { picture, backPicture, ...rest } = piece;
  const files = new Map<string, string | Uint8Array>();
  const [front, back] = [nameFor('picture', picture), nameFor('back', backPicture)];
  files.set('piece.json', savedPieceText({ piece: rest, picture: front, back }));
  if (pattern) files.set('pattern.json', patternText(pattern));
  for (const [name, file] of [
    [front, picture?.file],
    [back, backPicture?.file],
  ] as const) {
    if (name && file) files.set(name, new Uint8Array(await file.arrayBuffer()));
  }
  return new Blob([zipOf(files) as BlobPart], { type: 'application/zip' });
}

/** What a picture is called in the zip. */
const nameFor = (folder: string, picture: PiecePicture | undefined): string | undefined =>
  picture?.file && `${folder}/${picture.name.replace(/[/\\]/g, '-')}`;

/**
 * Opens such a file.
 *
 * @throws Said
 */
export async function openPieceFile(file: File): Promise<Piece> {
  const { shelf } = words.peek();
  const parts = unpack(new Uint8Array(await file.arrayBuffer()));
  const json = parts?.['piece.json'];
  const saved = json && readSavedPiece(strFromU8(json));
  if (saved === 'newer') throw new Said(shelf.fileNewer(file.name));
  if (!saved) throw new Said(shelf.fileDamaged(file.name));
  const { piece, picture: front, back } = saved;
  const opened = async (name: string): Promise<PiecePicture> => {
    const bytes = parts?.[name];
    if (!bytes) throw new Said(shelf.fileDamaged(file.name));
    const own = new File([bytes as BlobPart], name.replace(/^(picture|back)\//, ''));
    return openPicture(own);
  };
  return {
    ...piece,
    ...(front !== undefined && { picture: await opened(front) }),
    ...(back !== undefined && { backPicture: await opened(back) }),
  };
}

function unpack(bytes: Uint8Array): Record<string, Uint8Array> | undefined {
  let sum = 0;
  try {
    return unzipSync(bytes, {
      filter({ originalSize }) {
        sum += originalSize;
        return sum <= mostBytes;
      },
    });
  } catch {
    return undefined;
  }
}
