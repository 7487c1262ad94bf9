import type { Face, Glyph } from './font.js';
import { flat } from '../../../words/pages/pairs.js';
import { breaksBetweenLetters } from './script.js';
import type { GlyphRun, Surface } from './surface.js';

/** Millimetres in a typographic point: 1/72 inch of 25.4 mm. */
export const mmPerPoint = 25.4 / 72;

export interface TextStyle {
  readonly face: Face;
  /** Millimetres an em. */
  readonly sizeMm: number;
  /** Colour as #rrggbb; black when left out. */
  readonly ink?: string;
  /** Of heads: lines end between words in scripts that set no space there, too. */
  readonly byWords?: boolean;
  /** From one baseline to the next, ems, where it is not what the page has. */
  readonly leading?: number;
}

const black = '#000000';

/** The characters of a text, composed (é is one), one outline each; of two languages, both. */
function characters(text: string): string[] {
  return Array.from(flat(text).normalize('NFC'));
}

/** Widths of texts that were measured before, ems, by the face that they are set in. */
const measured = new WeakMap<Face, Map<string, number>>();
/** So many texts are kept at most, in each face. */
const mostMeasured = 20_000;

/** Width of a text on one line, millimetres. */
export function textWidth(text: string, { face, sizeMm }: TextStyle): number {
  let known = measured.get(face);
  if (!known || known.size > mostMeasured) measured.set(face, (known = new Map()));
  let ems = known.get(text);
  if (ems === undefined) {
    ems = 0;
    for (const character of characters(text)) ems += face.glyph(character).advance;
    known.set(text, ems);
  }
  return ems * sizeMm;
}

/** Draws one line of text; y is its baseline, x its left end, middle or right end. */
export function drawText(
  surface: Surface,
  text: string,
  style: TextStyle,
  x: number,
  y: number,
  anchor: 'start' | 'middle' | 'end' = 'start',
): void {
  const share = { start: 0, middle: 0.5, end: 1 }[anchor];
  let at = x - share * textWidth(text, style);
  const glyphs: GlyphRun['glyphs'][number][] = [];
  for (const character of characters(text)) {
    const glyph = style.face.glyph(character);
    if (!glyph.isBlank) glyphs.push({ glyph, x: at, y });
    at += glyph.advance * style.sizeMm;
  }
  surface.glyphs({ title: flat(text), sizeMm: style.sizeMm, ink: style.ink ?? black, glyphs });
}

/** The text itself when it fits, otherwise its beginning with an ellipsis. */
export function shortened(text: string, style: TextStyle, widthMm: number): string {
  if (textWidth(text, style) <= widthMm) return text;
  const kept = characters(text);
  while (kept.length > 0) {
    kept.pop();
    const tried = `${kept.join('').trimEnd()}…`;
    if (textWidth(tried, style) <= widthMm) return tried;
  }
  return '';
}

/** Words of one letter: in Czech, Polish, Russian and Ukrainian no line ends with one. */
const oneLetterWord =
  /(?<![\p{L}\p{N}])([aikosuvwzаивкосуяійз]|[VKSZOUWВКСУОИЯІЙЗ](?= \p{Ll})) (?=[\p{L}\p{N}„«(])/gu;

/**
 * The same text, in which no line ends between a number and its unit, after the number of a step,
 * before the hour of a clock, after a word of one letter (ČSN 01 6910; in the others the usage of
 * typesetters, from memory), or before French marks.
 */
export function unparted(text: string): string {
  return text
    .replace(oneLetterWord, '$1\u00a0')
    .replace(
      /(\d) (mm|cm|in|g|m|tex|мм|см|г|м|текс|%)(?![\p{Script=Latin}\p{Script=Cyrillic}\d])/gu,
      '$1\u00a0$2',
    )
    .replace(/(\(\d(?:, \d)*\)) (?=\S)/gu, '$1\u00a0')
    .replace(/(\d\.?) (?=o’clock|Uhr|hodin|h du cadran)/gu, '$1\u00a0')
    .replace(/ (?=[:;!?»])|(?<=«) /g, '\u00a0');
}

/** A number and what it counts, in scripts that set no space between them. */
const numberBefore = /\d$/;
const counted = /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u;

/**
 * Where a word ends in Japanese and Chinese as far as it can be told without a dictionary: after
 * particles and marks, where no kana follows. From memory.
 */
const wordEnd = /[はがをにでとのへも的是、，。；：？！）」』】·]$/u;
const wordStart = /^[^\p{Script=Hiragana}ー、，。；：？！）」』】·]/u;

/** The same parts, those of one word together. */
function wholeWords(parts: readonly string[]): string[] {
  const words: string[] = [];
  for (const part of parts) {
    const before = words.at(-1);
    const apart =
      before === undefined ||
      !breaksBetweenLetters(before.slice(-1) + part) ||
      /\s$/.test(before) ||
      /^[（「『【]/.test(part) ||
      (wordEnd.test(before) && wordStart.test(part));
    if (apart) words.push(part);
    else words[words.length - 1] += part;
  }
  return words;
}

/** A text in the parts that stay whole on a line, the spaces between them at their ends. */
export function unbroken(said: string, { face, byWords }: TextStyle): string[] {
  const text = flat(said);
  if (!face.lineBreaks || !breaksBetweenLetters(text)) return text.split(/(?<= )(?! )/);
  const parts: string[] = [];
  let from = 0;
  for (const to of face.lineBreaks(text)) {
    const part = text.slice(from, to);
    if (numberBefore.test(parts.at(-1) ?? '') && counted.test(part))
      parts[parts.length - 1] += part;
    else parts.push(part);
    from = to;
  }
  return byWords ? wholeWords(parts) : parts;
}

/** Parts set one after the other into lines no wider than given, of which `takenMm` of the first is taken. */
export function setInLines(
  parts: readonly string[],
  style: TextStyle,
  widthMm: number,
  takenMm = 0,
): string[] {
  const lines: string[] = [];
  let line = '';
  let wide = takenMm;
  for (const part of parts) {
    // Letters are as wide together as one by one.
    if (wide > 0 && wide + textWidth(part.trimEnd(), style) > widthMm) {
      lines.push(line.trimEnd());
      line = '';
      wide = 0;
    }
    line += part;
    wide += textWidth(part, style);
  }
  return line.trimEnd() === '' ? lines : [...lines, line.trimEnd()];
}

/** A text in lines no wider than given, `takenMm` of the first being taken; a longer word is shortened. */
export function wrapped(text: string, style: TextStyle, widthMm: number, takenMm = 0): string[] {
  const lines = setInLines(unbroken(unparted(text), style), style, widthMm, takenMm);
  return lines.map((line) => shortened(line, style, widthMm));
}

/** Origin that puts a glyph's ink, or for digits and capitals their cap height, centred on x, y. */
export function centredOn(
  glyph: Glyph,
  face: Face,
  sizeMm: number,
  x: number,
  y: number,
): { glyph: Glyph; x: number; y: number } {
  return {
    glyph,
    x: x - (sizeMm * (glyph.box.left + glyph.box.right)) / 2,
    y: y + (sizeMm * face.capHeight) / 2,
  };
}
