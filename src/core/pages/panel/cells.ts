import type { Face } from '../surface/font.js';
import type { Polyline, Surface } from '../surface/surface.js';
import { centredOn, drawText, textWidth } from '../surface/text.js';

export const black = '#000000';
export const white = '#ffffff';
/** Thin lines between cells: 3:1 and more on white (W3C, WCAG 2.1, 1.4.11). */
export const cellLine = { stroke: '#555555', widthMm: 0.12, closed: true } as const;

/** Small dots for stitches without a bead. */
export function drawBareDots(
  surface: Surface,
  at: readonly (readonly [number, number])[],
  diameterMm: number,
): void {
  const dots = at.map(([x, y]) => [x, y, x, y]);
  surface.strokePath(dots, { stroke: '#555555', widthMm: diameterMm });
}

/** The mark of a join: white in a black outline, seen on any bead and on the black start line. */
export function drawJoin(surface: Surface, diamond: Polyline): void {
  surface.strokePath([diamond], { stroke: black, widthMm: 0.7, closed: true });
  surface.fillPath([diamond], { fill: white });
}

/** Bars that join the two stitches of each doubled pair: white under black, seen on any bead. */
export function drawPairBars(
  surface: Surface,
  bars: readonly Polyline[],
  widthMm: number,
  name: string,
  title: string,
): void {
  surface.strokePath(bars, { stroke: white, widthMm: widthMm * 1.9 });
  surface.beginGroup(name, title);
  surface.strokePath(bars, { stroke: black, widthMm });
  surface.endGroup();
}

/** Dark lines with a light rim, seen on any bead. */
export function drawStrongLines(
  surface: Surface,
  lines: readonly Polyline[],
  widthMm: number,
  name: string,
  title?: string,
): void {
  surface.strokePath(lines, { stroke: white, widthMm: widthMm + 0.3 });
  surface.beginGroup(name, title);
  surface.strokePath(lines, { stroke: black, widthMm });
  surface.endGroup();
}

/**
 * The same letter on many cells. Capitals stand on one line; where room is tight those that reach
 * below it (J, Q) are drawn smaller, so that they take no more height than another letter.
 */
export function drawLetters(
  surface: Surface,
  title: string,
  letter: string,
  style: { face: Face; capMm: number; ink: string; tight?: boolean },
  at: readonly (readonly [number, number])[],
): void {
  const { face, capMm, ink } = style;
  const glyph = face.glyph(letter);
  const hanging = style.tight ? Math.max(0, glyph.box.bottom) : 0;
  const sizeMm = capMm / (face.capHeight + hanging);
  const up = (sizeMm * hanging) / 2;
  const glyphs = at.map(([x, y]) => centredOn(glyph, face, sizeMm, x, y - up));
  surface.glyphs({ title, sizeMm, ink, glyphs });
}

/** Height of a round number's pill in heights of its digits. */
export const pillPerDigit = 1.24;

/** Width of a round number's pill, millimetres. */
export function pillWidthMm(face: Face, number: number, digitMm: number): number {
  const wide = textWidth(String(number), { face, sizeMm: digitMm / face.capHeight });
  return pillPerDigit * digitMm + Math.max(0, wide - 0.86 * digitMm);
}

/** A round number in its pill, centred on x, y; every fifth one light on dark. */
export function drawPill(
  surface: Surface,
  face: Face,
  number: number,
  x: number,
  y: number,
  digitMm: number,
): void {
  const sizeMm = digitMm / face.capHeight;
  const inverted = number % 5 === 0;
  const pillMm = digitMm * pillPerDigit;
  const text = String(number);
  const half = (pillWidthMm(face, number, digitMm) - pillMm) / 2;
  const line = [[x - half, y, x + half, y]];
  const [paper, ink] = inverted ? [black, white] : [white, black];
  surface.strokePath(line, { stroke: ink, widthMm: pillMm });
  surface.strokePath(line, { stroke: paper, widthMm: pillMm - 0.16 });
  drawText(surface, text, { face, sizeMm, ink }, x, y + digitMm / 2, 'middle');
}
