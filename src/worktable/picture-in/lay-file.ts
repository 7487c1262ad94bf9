import { isSaid } from '../said.js';
import { plainWish, ourPalette } from '../sample/sample.js';
import type { Piece } from '../store/piece.js';
import { look, opening, pieces, tellTrouble, told } from '../store/store.js';
import { words } from '../words.js';
import { isZip } from '../keep/is-zip.js';
import { openSaved } from '../keep/shelf.js';
import { openFile } from './open-file.js';

/** Opens a file and lays it on the panel, as one step that can be undone. */
export async function layFile(file: File): Promise<void> {
  opening.value = true;
  told.value = undefined;
  try {
    if (await isZip(file)) {
      await openSaved(file);
      return;
    }
    const opened = await openFile(file);
    const { picture: step } = words.peek();
    pieces.change(step.steps.open, (now) =>
      'pattern' in opened ? withPattern(opened.pattern) : withPicture(now, opened.picture),
    );
    look({ step: 'picture', litStitch: -1, litBead: undefined, overlay: 0, panel: 0 });
  } catch (error) {
    if (!isSaid(error)) console.error(error);
    tellTrouble(isSaid(error) ? error : words.peek().errors.pictureNotRead(file.name));
  } finally {
    opening.value = false;
  }
}

/** A new picture is laid as one lays it at first; of the sample nothing else stays. */
function withPicture(now: Piece, picture: NonNullable<Piece['picture']>): Piece {
  const { opened: _opened, minded: _minded, ...kept } = now;
  const wish = now.sample ? plainWish : { ...now.wish, place: plainWish.place, art: plainWish.art };
  return { ...kept, sample: false, title: titleFrom(picture.name), picture, wish, laid: {} };
}

function withPattern(pattern: NonNullable<Piece['opened']>): Piece {
  return {
    title: pattern.title,
    sample: false,
    opened: pattern,
    palette: ourPalette(),
    wish: plainWish,
    laid: {},
  };
}

/** A file's name without its ending, as a title; the same as on the command line. */
function titleFrom(name: string): string {
  // eslint-disable-next-line no-control-regex
  const base = name.replace(/\.[^.]{1,5}$/, '').replace(/[\u0000-\u001f\u007f]/g, ' ');
  return base.trim().slice(0, 200) || words.peek().table.untitled;
}
