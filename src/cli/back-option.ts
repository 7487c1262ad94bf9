import { basename } from 'node:path';
import type { Bead } from '../core/bead.js';
import { RondureError } from '../core/errors.js';
import type { BackWish } from '../core/make.js';
import { readBytes } from '../node/read-bytes.js';
import { readPicture } from '../node/read-picture.js';
import { en } from '../words/index.js';
import { beadNamed } from './chart-wish.js';

const plainMark = 'plain:';

/** The picture that `--back` names, if it names one; a file called same is `./same`. */
export function backFile(text: string | undefined): string | undefined {
  if (text === undefined || text === 'same' || text.startsWith(plainMark)) return undefined;
  return text;
}

/**
 * What `--back` asks for.
 * @throws RondureError `bead-unknown`, and those of reading a picture
 */
export async function readBack(
  text: string | undefined,
): Promise<((beads: readonly Bead[]) => BackWish) | undefined> {
  if (text === undefined) return undefined;
  if (text === 'same') return () => 'same';
  const file = backFile(text);
  if (file !== undefined) {
    const picture = await readPicture(await readBytes(file), file);
    const pictureName = file === '-' ? 'picture' : basename(file);
    return () => ({ picture, pictureName });
  }
  const name = text.slice(plainMark.length).trim();
  if (name === '') {
    throw new RondureError('option-value', {
      option: '--back',
      got: text,
      expected: en.expected.back,
    });
  }
  return (beads) => ({ plain: beadNamed(beads, '--back', name) });
}
