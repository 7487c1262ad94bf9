import { create } from 'fontkit';
import type { Font as FontkitFont } from 'fontkit';
import { RondureError } from '../errors.js';

/** One outline; lengths in ems, y down, origin at the left end of the baseline. */
export interface Glyph {
  /** Unique among both faces: usable as an XML id. */
  readonly id: string;
  readonly character: string;
  readonly advance: number;
  /** SVG path commands M, L, Q, C, Z with their coordinates. */
  readonly outline: readonly { readonly command: string; readonly args: readonly number[] }[];
  /** Left, top, right and bottom of the ink; all 0 for a space. */
  readonly box: { left: number; top: number; right: number; bottom: number };
}

/** The outlines of one face, character by character; lengths in ems. */
export interface Face {
  /** @throws RondureError `glyph-missing` */
  glyph(character: string): Glyph;
  /** Whether the face can draw a character. */
  has(character: string): boolean;
  /** Height of a capital H, in ems. */
  readonly capHeight: number;
}

/** The two faces that every drawing is lettered with: `loadFonts` reads them. */
export interface Fonts {
  readonly regular: Face;
  readonly bold: Face;
}

/**
 * Reads the two faces that drawings are lettered with. Only the glyphs that are used are read.
 *
 * @param regular bytes of a TrueType file
 * @param bold bytes of a TrueType file
 */
export function loadFonts(regular: Uint8Array, bold: Uint8Array): Fonts {
  return { regular: loadFace(regular, 'r'), bold: loadFace(bold, 'b') };
}

const commands: Record<string, string> = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
};

function loadFace(bytes: Uint8Array, prefix: string): Face {
  // fontkit reads any Uint8Array; only its types ask for Node's Buffer.
  const font = create(bytes as Parameters<typeof create>[0]) as FontkitFont;
  const em = font.unitsPerEm;
  const made = new Map<string, Glyph>();

  function make(character: string): Glyph {
    const point = character.codePointAt(0) ?? 0;
    if (!font.hasGlyphForCodePoint(point)) {
      const code = `U+${point.toString(16).toUpperCase().padStart(4, '0')}`;
      throw new RondureError('glyph-missing', { character, code });
    }
    const glyph = font.glyphForCodePoint(point);
    const outline = glyph.path.commands.map(({ command, args }) => ({
      command: commands[command],
      args: args.map((value, place) => (place % 2 === 0 ? value : -value) / em),
    }));
    const { minX, minY, maxX, maxY } = glyph.bbox;
    const box =
      outline.length === 0
        ? { left: 0, top: 0, right: 0, bottom: 0 }
        : { left: minX / em, top: -maxY / em, right: maxX / em, bottom: -minY / em };
    return { id: `${prefix}${point}`, character, advance: glyph.advanceWidth / em, outline, box };
  }

  return {
    has: (character) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0),
    capHeight: font.capHeight / em,
    glyph(character) {
      let glyph = made.get(character);
      if (!glyph) made.set(character, (glyph = make(character)));
      return glyph;
    },
  };
}
