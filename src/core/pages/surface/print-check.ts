import type { Words } from '../../../words/index.js';
import type { Fonts } from './font.js';
import type { PagePart } from './page-part.js';
import type { Surface } from './surface.js';
import { drawText, mmPerPoint } from './text.js';

const black = '#000000';
const fine = { stroke: black, widthMm: 0.2 } as const;
const inch = 25.4;
/** Sides of the two squares, millimetres. */
export const testSquaresMm = [50, 2 * inch] as const;
/** What the ruler takes from top to bottom. */
export const rulerHeightMm = 16;

interface Lettering {
  readonly words: Words;
  readonly fonts: Fonts;
}

/** A test square as a part of a page; `print` says what it is for, in its place. */
export function testSquarePart(
  lettering: Lettering,
  which: 0 | 1,
  at: { x: number; y: number },
  print: string,
): PagePart {
  const { check } = lettering.words.lining;
  return {
    as: 'picture',
    alt: `${which === 0 ? check.mm : check.inch}. ${print}`,
    draw: (surface) => drawTestSquare(surface, which, at.x, at.y, lettering),
  };
}

/** A ruler as a part of a page; `print` says what it is for, in its place. */
export function rulerPart(
  lettering: Lettering,
  area: { left: number; right: number; bottom: number },
  print: string,
): PagePart {
  const { check } = lettering.words.lining;
  return {
    as: 'picture',
    alt: `${check.cm}, ${check.in}. ${print}`,
    draw: (surface) => drawRuler(surface, area, lettering),
  };
}

/** A square to measure the print by, its top left corner at x, y. */
export function drawTestSquare(
  surface: Surface,
  which: 0 | 1,
  x: number,
  y: number,
  { words, fonts }: Lettering,
): void {
  const side = testSquaresMm[which];
  const square = Float64Array.of(x, y, x + side, y, x + side, y + side, x, y + side);
  surface.beginGroup(which === 0 ? 'square-50-mm' : 'square-2-in');
  surface.strokePath([square], { ...fine, closed: true });
  const said = words.lining.check;
  const text = which === 0 ? said.mm : said.inch;
  const style = { face: fonts.bold, sizeMm: 14 * mmPerPoint };
  drawText(surface, text, style, x + side / 2, y + side / 2 + 1.7, 'middle');
  // Arrows from side to side say what is to be measured.
  const level = y + side / 2 + 8;
  const lines = [Float64Array.of(x + 0.6, level, x + side - 0.6, level)];
  for (const [tip, back] of [
    [x + 0.6, 3],
    [x + side - 0.6, -3],
  ]) {
    lines.push(Float64Array.of(tip + back, level - 1.2, tip, level, tip + back, level + 1.2));
  }
  surface.strokePath(lines, fine);
  surface.endGroup();
}

/** A ruler of centimetres above and inches below one line, as long as there is room for. */
function drawRuler(
  surface: Surface,
  { left, right, bottom }: { left: number; right: number; bottom: number },
  { words, fonts }: Lettering,
): void {
  const y = bottom - rulerHeightMm / 2;
  const room = right - left - 12;
  const style = { face: fonts.regular, sizeMm: 11 * mmPerPoint };
  const cm = Math.floor(room / 10);
  const inches = Math.floor(room / inch);
  const ticks: Float64Array[] = [
    Float64Array.of(left, y, left + Math.max(cm * 10, inches * inch), y),
  ];
  surface.beginGroup('ruler');
  for (let n = 0; n <= 10 * cm; n++) {
    const up = n % 10 === 0 ? 3.6 : n % 5 === 0 ? 2.6 : 1.6;
    ticks.push(Float64Array.of(left + n, y, left + n, y - up));
    if (n % 10 === 0 && n > 0)
      drawText(surface, String(n / 10), style, left + n, y - 4.4, 'middle');
  }
  for (let n = 0; n <= 8 * inches; n++) {
    const down = n % 8 === 0 ? 3.6 : n % 4 === 0 ? 2.6 : 1.6;
    const x = left + (n * inch) / 8;
    ticks.push(Float64Array.of(x, y, x, y + down));
    if (n % 8 === 0 && n > 0) drawText(surface, String(n / 8), style, x, y + 7.2, 'middle');
  }
  surface.strokePath(ticks, { stroke: black, widthMm: 0.15 });
  const end = right;
  drawText(surface, words.lining.check.cm, style, end, y - 4.4, 'end');
  drawText(surface, words.lining.check.in, style, end, y + 7.2, 'end');
  surface.endGroup();
}
