import type { BlankName } from '../../core/pages/blank-outputs.js';
import { makeBlankFile } from '../pages/make-pages.js';
import { fileName, saveFile } from '../pages/save-file.js';
import { piece, tell } from '../store/store.js';
import { language, words } from '../words.js';
import { blankOf } from './blank-of.js';
import { rememberBlank } from './printed.js';

/**
 * Saves the empty chart of the piece on the table, to be printed and coloured.
 *
 * @throws RondureError, Said
 */
export async function saveBlank(name: BlankName): Promise<void> {
  const blank = blankOf(piece.peek());
  const saved = fileName(blank.title, `-${name}`);
  const file = await makeBlankFile(name, blank, language.peek());
  await rememberBlank(blank);
  saveFile(file, saved);
  tell(words.peek().coloured.saved(saved));
}
