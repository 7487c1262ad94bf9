import { basename } from 'node:path';
import { create } from 'fontkit';
import type { Font } from 'fontkit';
import type { FurtherFont } from '../../core/pages/surface/font.js';
import { RondureError } from '../../core/errors.js';
import { readBytes } from './read-bytes.js';

type Fault = 'kind' | 'collection' | 'web' | 'damaged';

/** First four bytes (OpenType 1.9, Font File; WOFF 1.0 and 2.0). */
const faults: Record<string, Fault | undefined> = {
  '\u0000\u0001\u0000\u0000': undefined,
  OTTO: undefined,
  true: undefined,
  ttcf: 'collection',
  wOFF: 'web',
  wOF2: 'web',
};

/**
 * A user's font for characters that the bundled ones lack; one file serves regular and bold. Of a
 * variable font its default form is taken.
 *
 * @param n 0-based number among the fonts given
 * @throws RondureError `font-unreadable`, `font-forbids`, and those of `readBytes`
 */
export async function ownFont(path: string, n: number): Promise<FurtherFont> {
  const bytes = await readBytes(path);
  const file = basename(path);
  const kind = Buffer.from(bytes.subarray(0, 4)).toString('latin1');
  const why = kind in faults ? faults[kind] : 'kind';
  if (why !== undefined) throw new RondureError('font-unreadable', { file, why });
  const font = openFont(bytes, file);
  const may = font['OS/2']?.fsType;
  // OS/2 table, fsType: no embedding at all, no subsetting, bitmaps only.
  const alone = may?.noEmbedding && !may.viewOnly && !may.editable;
  if (alone || may?.noSubsetting || may?.bitmapOnly) {
    throw new RondureError('font-forbids', { file });
  }
  return {
    name: `own${n}`,
    mayHave: (character) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0),
    read: () => ({ regular: bytes, bold: bytes }),
  };
}

/** Damage shows when outlines are read: one of the first letters is tried. */
function openFont(bytes: Uint8Array, file: string): Font {
  try {
    const font = create(Buffer.from(bytes)) as Font;
    const [some = 0] = font.characterSet;
    void font.glyphForCodePoint(some).path.commands.length;
    if (!(font.unitsPerEm > 0)) throw new Error('no size of an em');
    return font;
  } catch (error) {
    throw new RondureError('font-unreadable', { file, why: 'damaged' }, { cause: error });
  }
}
