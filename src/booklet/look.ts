import type { Face, Fonts } from '../core/pages/surface/font.js';
import { printPapers } from '../core/pages/surface/print-sheet.js';
import type { PrintPaper } from '../core/pages/surface/print-sheet.js';
import { breaksBetweenLetters } from '../core/pages/surface/script.js';
import {
  mmPerPoint,
  setInLines,
  textWidth,
  unbroken,
  unparted,
} from '../core/pages/surface/text.js';
import type { TextStyle } from '../core/pages/surface/text.js';
import { sides } from '../words/pages/pairs.js';
import { plainTint } from './tint.js';
import type { Tint } from './tint.js';

/** Grey of what is read last: 7:1 and more on white. */
export const quiet = '#4a4a4a';

/** Sizes of a page and of its lettering, millimetres. */
export interface Look {
  readonly fonts: Fonts;
  readonly tint: Tint;
  readonly paper: PrintPaper;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Where running text ends; the foot stands below. */
  readonly bottom: number;
  /** Where running text begins: headings hang beside it, and drawings below them. */
  readonly textLeft: number;
  /** Large print: fewer columns, larger beads. */
  readonly large: boolean;
  /** Beads on charts are at least this large, or the chart is enlarged over several pages. */
  readonly leastBeadMm: number;
  /** Running text. */
  readonly body: TextStyle;
  readonly strong: TextStyle;
  readonly small: TextStyle;
  /** Lists and letters of beads. */
  readonly cell: TextStyle;
  readonly cellStrong: TextStyle;
  readonly foot: TextStyle;
  readonly heading: TextStyle;
  readonly subheading: TextStyle;
}

/** White on the left and the right of a page: two holes for a binder take 12. */
export const marginMm = 18;
/** Lists are figures and capitals, which nothing hangs below: their lines stand a little closer. */
const listLeading = 1.17;
/** Room of a hanging heading and the gap beside it, millimetres. */
const hangMm = 43;

/**
 * Clear print is 12 points at least (UKAAF guidance G003, RNIB clear print), large print 16 at
 * least and 18 better (RNIB, as cited by Hampshire County Council's page on accessible formats).
 *
 * @param hanging whether headings hang beside the text, which then has 55 to 70 letters a line
 */
export function lookOf(
  paper: PrintPaper,
  fonts: Fonts,
  {
    large = false,
    hanging = true,
    tint = plainTint,
  }: { large?: boolean; hanging?: boolean; tint?: Tint } = {},
): Look {
  const { widthMm, heightMm } = printPapers[paper];
  const style = (face: Face, points: number, ink?: string): TextStyle => ({
    face,
    sizeMm: points * mmPerPoint,
    ...(ink !== undefined && { ink }),
  });
  const { text } = fonts;
  const left = marginMm;
  return {
    fonts,
    tint,
    paper,
    widthMm,
    heightMm,
    left,
    right: widthMm - marginMm,
    top: 14,
    bottom: heightMm - (large ? 19 : 16),
    textLeft: left + (hanging && !large ? hangMm : 0),
    large,
    leastBeadMm: large ? 6 : 3.7,
    body: style(text.regular, large ? 18 : 12),
    strong: style(text.bold, large ? 18 : 12),
    small: style(text.regular, large ? 16 : 10, quiet),
    cell: { ...style(fonts.regular, large ? 18 : 12), ...(!large && { leading: listLeading }) },
    cellStrong: { ...style(fonts.bold, large ? 18 : 12), ...(!large && { leading: listLeading }) },
    foot: style(fonts.regular, large ? 16 : 10, quiet),
    heading: { ...style(text.bold, large ? 26 : 20, tint.accent), byWords: true },
    subheading: { ...style(text.bold, large ? 18 : 12, tint.accent), byWords: true },
  };
}

/** From one baseline to the next. */
export const lineMm = ({ sizeMm, leading = 1.25 }: TextStyle): number => leading * sizeMm;

/** Texts that were set in lines before, by the face that they are set in. */
const set = new WeakMap<Face, Map<string, readonly string[]>>();
/** So many are kept at most, in each face. */
const mostSet = 4000;

/**
 * A text in lines no wider than given, one language below the other; a word longer than a line is
 * broken where it must be. Pages are tried in more than one way, so most texts are set again and again.
 */
export function linesOf(text: string, style: TextStyle, widthMm: number): readonly string[] {
  const { face, sizeMm, byWords = false } = style;
  let known = set.get(face);
  if (!known || known.size > mostSet) set.set(face, (known = new Map()));
  const key = `${sizeMm} ${byWords} ${widthMm} ${text}`;
  let lines = known.get(key);
  if (!lines) known.set(key, (lines = brokenInLines(text, style, widthMm)));
  return lines;
}

function brokenInLines(text: string, style: TextStyle, widthMm: number): string[] {
  return sides(text).flatMap((side) => {
    const spaced = side.replace(/[\p{Cc}\s]+/gu, ' ').trim();
    // After a full-width stop the next sentence needs no space.
    const whole = unparted(spaced.replace(/(?<=[。！？]) /gu, ''));
    const isWide = (part: string) => textWidth(part.trimEnd(), style) > widthMm;
    const words = unbroken(whole, style);
    const fitting = words.some(isWide) ? unbroken(whole, { ...style, byWords: false }) : words;
    const parts = fitting.flatMap((part) => pieces(part, style, widthMm));
    return setInLines(parts, style, widthMm);
  });
}

/**
 * Lines of one text with the spaces between them, so that it is not read aloud as one word where a
 * line ends.
 */
export function readOn(lines: readonly string[]): string[] {
  return lines.map((line, n) =>
    n === lines.length - 1 || breaksBetweenLetters(line.slice(-1)) ? line : `${line} `,
  );
}

/** Parts that stay whole, set one after the other into lines no wider than given. */
export function filled(parts: readonly string[], style: TextStyle, widthMm: number): string[] {
  return setInLines(
    parts.map((part) => `${part} `),
    style,
    widthMm,
  );
}

function pieces(word: string, style: TextStyle, widthMm: number): string[] {
  if (textWidth(word.trimEnd(), style) <= widthMm) return [word];
  const parts: string[] = [];
  let part = '';
  for (const character of word.normalize('NFC')) {
    if (part !== '' && textWidth(part + character, style) > widthMm) {
      parts.push(part);
      part = '';
    }
    part += character;
  }
  return [...parts, part];
}
