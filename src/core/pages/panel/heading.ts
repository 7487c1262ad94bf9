import { acrossRange } from '../../panel/across.js';
import { sides } from '../../../words/pages/pairs.js';
import type { CellKind, PanelSheet } from './sheet.js';
import type { Surface } from '../surface/surface.js';
import type { Face } from '../surface/font.js';
import { drawText, mmPerPoint, shortened, textWidth, wrapped } from '../surface/text.js';

/** From one line on the shape to the next. */
const stepMm = 4.4;

/** Space a heading takes from the top margin: two lines on the shape for each language. */
export function headingMm({ words, pattern }: PanelSheet): number {
  return 16.5 + 2 * stepMm * (sides(words.chart.workLine(pattern.shape)).length - 1);
}

/** Points of a title; a long one is set smaller, and one that is longer still in two lines. */
const titlePoints = [16, 14, 12, 11, 10];

/** Lines of a title with their baselines below its top, millimetres, as large as its width allows. */
function titleLines(title: string, face: Face, widthMm: number) {
  const styles = titlePoints.map((points) => ({ face, sizeMm: points * mmPerPoint }));
  const style = styles.find((one) => textWidth(title, one) <= widthMm);
  if (style) return { style, lines: [{ line: title, base: 4.6 }] };
  const least = styles.at(-1)!;
  const [first, ...rest] = wrapped(title, least, widthMm);
  const last = shortened(rest.join(' '), least, widthMm);
  return {
    style: least,
    lines: [
      { line: first, base: 2.2 },
      { line: last, base: 6.2 },
    ],
  };
}

/** Title and lines on the shape. */
export function drawHeading(
  surface: Surface,
  sheet: PanelSheet,
  kinds: readonly CellKind[],
  title: string,
  place: { left: number; top: number; widthMm: number },
): void {
  const { fonts, words, geometry } = sheet;
  const { shape } = geometry;
  const beads = kinds.reduce((sum, kind) => sum + (kind.bead ? kind.stitches.length : 0), 0);
  const lines = [
    words.chart.shapeLine({
      wedges: shape.wedges,
      rounds: shape.rounds,
      stitches: geometry.count,
      beads,
      across: acrossRange(sheet.pattern),
    }),
    words.chart.workLine(sheet.pattern.shape),
  ].map(sides);
  const languages = Math.max(...lines.map((line) => line.length));
  const said = Array.from({ length: languages }, (_, side) =>
    lines.map((line) => line[side] ?? line[0]),
  );
  const small = { face: fonts.regular, sizeMm: 9.5 * mmPerPoint };
  const { left, top, widthMm } = place;
  const { style, lines: titles } = titleLines(title, fonts.bold, widthMm);
  for (const { line, base } of titles) drawText(surface, line, style, left, top + base);
  said.flat().forEach((line, n) => {
    drawText(surface, shortened(line, small, widthMm), small, left, top + 10.2 + stepMm * n);
  });
}
