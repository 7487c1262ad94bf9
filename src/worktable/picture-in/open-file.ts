import type { Pattern } from '../../core/pattern/pattern.js';
import type { PiecePicture } from '../store/piece.js';
import { decodePicture } from './decode.js';

/** What a file holds: a chart of ours, or a picture. */
export type Opened = { readonly pattern: Pattern } | { readonly picture: PiecePicture };

/**
 * Opens a file of the maker's: a pattern.json, chart.svg or chart.png of ours as what it is, all
 * else as a picture.
 *
 * @throws RondureError with the sentences of the command line
 */
export async function openFile(file: File): Promise<Opened> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const { patternIn } = await import('./pattern-in.js');
  const pattern = patternIn(bytes, file.name);
  return pattern ? { pattern } : { picture: await openPicture(file) };
}

/** Opens a file that is a picture. */
export async function openPicture(file: File): Promise<PiecePicture> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  return { name: file.name, picture: await decodePicture(bytes, file.name), file };
}
