import { basename } from 'node:path';
import type { Bead } from '../../core/beads/bead.js';
import { RondureError } from '../../core/errors.js';
import type { BackWish } from '../../core/make.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { readPicture } from '../../node/read/read-picture.js';
import { beadNamed } from './bead-named.js';

/** What `--back` says: small letters and capitals alike; a file of such a name is `./same`. */
function parsed(text: string): 'same' | { plain: string } | { file: string } {
  if (/^same$/i.test(text)) return 'same';
  const plain = /^plain:\s*(.*?)\s*$/i.exec(text);
  if (!plain && text !== '') return { file: text };
  if (plain?.[1]) return { plain: plain[1] };
  throw new RondureError('option-value', {
    option: '--back',
    got: text,
    expected: { kind: 'back' },
  });
}

/**
 * The picture that `--back` names, if it names one.
 * @throws RondureError `option-value`
 */
export function backFile(text: string | undefined): string | undefined {
  const said = text === undefined ? undefined : parsed(text);
  return typeof said === 'object' && 'file' in said ? said.file : undefined;
}

/**
 * What `--back` asks for, once the beads are known.
 * @throws RondureError `option-value`, those of reading a picture and, later, `bead-unknown`
 */
export async function readBack(
  text: string | undefined,
): Promise<(beads: readonly Bead[]) => BackWish | undefined> {
  if (text === undefined) return () => undefined;
  const said = parsed(text);
  if (said === 'same') return () => 'same';
  if ('plain' in said) return (beads) => ({ plain: beadNamed(beads, '--back', said.plain) });
  const picture = await readPicture(await readBytes(said.file), said.file);
  const pictureName = said.file === '-' ? 'picture' : basename(said.file);
  return () => ({ picture, pictureName });
}
