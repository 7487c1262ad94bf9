import { create } from 'fontkit';
import type { Font as FontkitFont } from 'fontkit';
import { RondureError } from '../../errors.js';
import { scriptOf, setLetterByLetter } from './script.js';

/** One outline; lengths in ems, y down, origin at the left end of the baseline. */
export interface Glyph {
  /** Unique among all faces: usable as an XML id. */
  readonly id: string;
  /** The character that it shows. */
  readonly character: string;
  /** Which font file it is from: a key of `Fonts.file`. */
  readonly file: string;
  /** How far it moves on, in ems. */
  readonly advance: number;
  /** Whether it has no ink, as a space. */
  readonly isBlank: boolean;
  /** SVG path commands M, L, Q, C, Z with their coordinates. */
  readonly outline: readonly { readonly command: string; readonly args: readonly number[] }[];
  /** Left, top, right and bottom of the ink; all 0 for a space. */
  readonly box: { left: number; top: number; right: number; bottom: number };
}

/** The outlines of one face, character by character; lengths in ems. */
export interface Face {
  /**
   * The glyph of one character.
   *
   * @throws RondureError `glyph-missing`, `script-unset`
   */
  glyph(character: string): Glyph;
  /** Whether the face can draw a character. */
  has(character: string): boolean;
  /** Height of a capital H, in ems. */
  readonly capHeight: number;
  /** Where lines of a text may end between letters; spaces alone where it is left out. */
  readonly lineBreaks?: LineBreaks | undefined;
}

/** Places after which a line may end, in UTF-16 units from the start (UAX #14). */
export type LineBreaks = (text: string) => readonly number[];

/** The two faces that every drawing is lettered with: `loadFonts` reads them. */
export interface Fonts {
  /** The upright face. */
  readonly regular: Face;
  /** The bold face. */
  readonly bold: Face;
  /** What running text and titles are set in; the same two where there is no face of its own. */
  readonly text: { readonly regular: Face; readonly bold: Face };
  /** Bytes of the TrueType or OpenType file that a glyph is from. */
  file(name: string): Uint8Array;
}

/** Bytes of the TrueType or OpenType files of one family; they may be the same file. */
export interface FontFiles {
  /** Bytes of the upright face. */
  readonly regular: Uint8Array;
  /** Bytes of the bold face. */
  readonly bold: Uint8Array;
}

/** A family for characters that those before it lack; read only when it is needed. */
export interface FurtherFont {
  /** A short name of small letters, unique among them. */
  readonly name: string;
  /** Whether it comes before the main family for the characters that it has. */
  readonly first?: boolean;
  /** Whether it is worth reading for a character. */
  mayHave(character: string): boolean;
  /** Its files, read when a letter of it is wanted. */
  read(): FontFiles;
}

/** How faces are put together. */
export interface FontChoice {
  /** Fonts for letters that the bundled ones lack. */
  readonly further?: readonly FurtherFont[];
  /** A family for running text, before the main one. */
  readonly text?: FontFiles;
  /** Whether whoever makes the drawing can give a font of their own: part of the error's cure. */
  readonly canAdd?: boolean;
  /** Where lines may end; the usual rules when undefined. */
  readonly lineBreaks?: LineBreaks;
}

/**
 * Reads the two faces that drawings are lettered with. Only the glyphs that are used are read, and
 * further families only when a character asks for them.
 *
 * @param regular bytes of a TrueType or OpenType file
 * @param bold bytes of a TrueType or OpenType file
 */
export function loadFonts(
  regular: Uint8Array,
  bold: Uint8Array,
  { further = [], text, canAdd = false, lineBreaks }: FontChoice = {},
): Fonts {
  const main = part({ name: '', mayHave: () => true, read: () => ({ regular, bold }) });
  const rest = further.map((font) => ({ font, part: part(font) }));
  const chain = [
    ...rest.filter(({ font }) => font.first).map((one) => one.part),
    main,
    ...rest.filter(({ font }) => !font.first).map((one) => one.part),
  ];
  const running = text && part({ name: 'text', mayHave: () => true, read: () => text });
  const withText = running
    ? chain.flatMap((one) => (one === main ? [running, main] : [one]))
    : chain;
  const files = new Map(withText.flatMap((one) => one.names.map((name) => [name, one] as const)));
  const faces = (parts: readonly Part[]) => ({
    regular: { ...chainedFace(parts, 'regular', canAdd), lineBreaks },
    bold: { ...chainedFace(parts, 'bold', canAdd), lineBreaks },
  });
  const plain = faces(chain);
  return {
    ...plain,
    text: running ? faces(withText) : plain,
    file: (name) => files.get(name)!.files()[name.startsWith('bold') ? 'bold' : 'regular'],
  };
}

type Weight = 'regular' | 'bold';

/** One family: its files, and its fonts once they are read. */
interface Part {
  readonly name: string;
  /** Of its files. */
  readonly names: readonly string[];
  mayHave(character: string): boolean;
  files(): FontFiles;
  font(weight: Weight): FontkitFont;
}

function part({ name, mayHave, read }: FurtherFont): Part {
  let files: FontFiles | undefined;
  const fonts: Partial<Record<Weight, FontkitFont>> = {};
  const readOnce = () => (files ??= read());
  return {
    name,
    names: ['regular', 'bold'].map((weight) => fileName(weight as Weight, name)),
    mayHave,
    files: readOnce,
    // fontkit reads any Uint8Array; only its types ask for Node's Buffer.
    font: (weight) =>
      (fonts[weight] ??= create(readOnce()[weight] as Parameters<typeof create>[0]) as FontkitFont),
  };
}

const fileName = (weight: Weight, part: string): string =>
  part === '' ? weight : `${weight}-${part}`;

/** Letters of scripts that have no blank one, and figures: they need not be looked at. */
const surelyInked =
  /^[\p{Script=Latin}\p{Script=Cyrillic}\p{Script=Greek}\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\d]$/u;

const commands: Record<string, string> = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
};

function chainedFace(chain: readonly Part[], weight: Weight, canAdd: boolean): Face {
  const made = new Map<string, Glyph>();

  function partWith(character: string): Part | undefined {
    const point = character.codePointAt(0) ?? 0;
    return chain.find(
      (one) => one.mayHave(character) && one.font(weight).hasGlyphForCodePoint(point),
    );
  }

  function make(character: string): Glyph {
    const point = character.codePointAt(0) ?? 0;
    const code = `U+${point.toString(16).toUpperCase().padStart(4, '0')}`;
    if (!setLetterByLetter(character)) {
      throw new RondureError('script-unset', { character, code, script: scriptOf(character) });
    }
    const from = partWith(character);
    if (!from) {
      const script = scriptOf(character);
      throw new RondureError('glyph-missing', { character, code, script, canAdd });
    }
    const font = from.font(weight);
    const em = font.unitsPerEm;
    const glyph = font.glyphForCodePoint(point);
    let read: Pick<Glyph, 'outline' | 'box'> | undefined;
    return {
      id: `${weight[0]}${from.name}${point}`,
      character,
      file: fileName(weight, from.name),
      advance: glyph.advanceWidth / em,
      get isBlank() {
        return !surelyInked.test(character) && this.outline.length === 0;
      },
      get outline() {
        return lines().outline;
      },
      get box() {
        return lines().box;
      },
    };

    /** Pages whose letters are text need widths alone: outlines are read where they are asked for. */
    function lines(): Pick<Glyph, 'outline' | 'box'> {
      if (read) return read;
      const outline = glyph.path.commands.map(({ command, args }) => ({
        command: commands[command],
        args: args.map((value, place) => (place % 2 === 0 ? value : -value) / em),
      }));
      const { minX, minY, maxX, maxY } = glyph.bbox;
      const box =
        outline.length === 0
          ? { left: 0, top: 0, right: 0, bottom: 0 }
          : { left: minX / em, top: -maxY / em, right: maxX / em, bottom: -minY / em };
      return (read = { outline, box });
    }
  }

  const main = chain.find(({ name }) => name === '')!.font(weight);
  return {
    has: (character) => setLetterByLetter(character) && partWith(character) !== undefined,
    capHeight: main.capHeight / main.unitsPerEm,
    glyph(character) {
      let glyph = made.get(character);
      if (!glyph) made.set(character, (glyph = make(character)));
      return glyph;
    },
  };
}
