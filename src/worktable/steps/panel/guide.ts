import { defaultSize, sizeOf } from '../../../core/beads/palette/sizes.js';
import { completeShape } from '../../../core/panel/shape.js';
import { makeSwatchGuide } from '../../pages/make-pages.js';
import type { GuideFacts } from '../../pages/messages.js';
import { saveFile } from '../../pages/save-file.js';
import type { Piece } from '../../store/piece.js';
import { piece, tell, tellTrouble } from '../../store/store.js';
import { language, words } from '../../words.js';
import { workedLike } from './worked-like.js';

/** A swatch of so many rounds, as `rondure swatch --guide` tells it for the same shape and beads. */
function guideOf(piece: Piece, rounds: number): GuideFacts {
  const { palette, wish } = piece;
  const { outline } = wish.shape;
  const shape = completeShape({
    ...workedLike(piece, rounds),
    ...(outline && { outline }),
    beadDiameterMm: palette.diameterMm,
  });
  const { name } = sizeOf(palette.beads[0]?.size ?? defaultSize);
  const fromRound = Math.min(2, rounds - 1);
  return { shape, size: name, fromRound, toRound: rounds, markedWedge: 1 };
}

/** Saves how a swatch is worked and measured, in the language of the pages. */
export async function saveGuide(rounds: number): Promise<void> {
  try {
    const name = 'swatch-guide.pdf';
    const { pages = {} } = piece.peek();
    const guide = guideOf(piece.peek(), rounds);
    saveFile(await makeSwatchGuide(guide, pages, language.peek()), name);
    tell(words.peek().table.saved(name));
  } catch (error) {
    tellTrouble(error);
  }
}
