import type { Face, Fonts } from '../core/draw/font.js';
import { printPapers } from '../core/draw/print-sheet.js';
import type { PrintPaper } from '../core/draw/print-sheet.js';
import { breaksBetweenLetters } from '../core/draw/script.js';
import { mmPerPoint, setInLines, textWidth, unbroken, unparted } from '../core/draw/text.js';
import type { TextStyle } from '../core/draw/text.js';
import { sides } from '../words/pages/pairs.js';

/** Dark blue-green of headings and rules: 8:1 and more on white (W3C, WCAG 2.1, 1.4.6). */
export const accent = '#1f4e5f';
/** Grey of what is read last: 7:1 and more on white. */
export const quiet = '#4a4a4a';
/** Pale ground behind the head of a table. */
export const pale = '#e8eff1';

/** Sizes of a page and of its lettering, millimetres. */
export interface Look {
  readonly fonts: Fonts;
  readonly paper: PrintPaper;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Where running text ends; the foot stands below. */
  readonly bottom: number;
  /** Large print: fewer columns, larger beads. */
  readonly large: boolean;
  /** Beads on charts are at least this large, or the chart is enlarged over several pages. */
  readonly leastBeadMm: number;
  readonly body: TextStyle;
  readonly strong: TextStyle;
  readonly small: TextStyle;
  readonly foot: TextStyle;
  readonly heading: TextStyle;
  readonly subheading: TextStyle;
}

/**
 * Clear print is 12 points at least (UKAAF guidance G003, RNIB clear print), large print 16 at
 * least and 18 better (RNIB, as cited by Hampshire County Council's page on accessible formats).
 */
export function lookOf(paper: PrintPaper, fonts: Fonts, large = false): Look {
  const { widthMm, heightMm } = printPapers[paper];
  const style = (face: Face, points: number, ink?: string): TextStyle => ({
    face,
    sizeMm: points * mmPerPoint,
    ...(ink !== undefined && { ink }),
  });
  return {
    fonts,
    paper,
    widthMm,
    heightMm,
    left: 20,
    right: widthMm - 20,
    top: 18,
    bottom: heightMm - (large ? 20 : 18),
    large,
    leastBeadMm: large ? 6 : 4,
    body: style(fonts.regular, large ? 18 : 12),
    strong: style(fonts.bold, large ? 18 : 12),
    small: style(fonts.regular, large ? 16 : 10, quiet),
    foot: style(fonts.regular, large ? 14 : 9, quiet),
    heading: style(fonts.bold, large ? 26 : 20, accent),
    subheading: style(fonts.bold, large ? 20 : 14, accent),
  };
}

/** From one baseline to the next. */
export const lineMm = ({ sizeMm }: TextStyle): number => 1.34 * sizeMm;

/**
 * A text in lines no wider than given, one language below the other; a word longer than a line is
 * broken where it must be.
 */
export function linesOf(text: string, style: TextStyle, widthMm: number): string[] {
  return sides(text).flatMap((side) => {
    const spaced = side.replace(/[\p{Cc}\s]+/gu, ' ').trim();
    // After a full-width stop the next sentence needs no space.
    const whole = unparted(spaced.replace(/(?<=[。！？]) /gu, ''));
    const parts = unbroken(whole, style).flatMap((part) => pieces(part, style, widthMm));
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
