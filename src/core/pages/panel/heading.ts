import { acrossRange } from '../../panel/across.js';
import { sides } from '../../../words/pages/pairs.js';
import type { CellKind, PanelSheet } from './sheet.js';
import type { Surface } from '../surface/surface.js';
import { drawText, mmPerPoint, shortened } from '../surface/text.js';

/** From one line on the shape to the next. */
const stepMm = 4.4;

/** Space a heading takes from the top margin: two lines on the shape for each language. */
export function headingMm({ words, pattern }: PanelSheet): number {
  return 16.5 + 2 * stepMm * (sides(words.chart.workLine(pattern.shape)).length - 1);
}

/** Title and lines on the shape; what is too long for the page ends in an ellipsis. */
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
  const big = { face: fonts.bold, sizeMm: 16 * mmPerPoint };
  const small = { face: fonts.regular, sizeMm: 9.5 * mmPerPoint };
  const { left, top, widthMm } = place;
  drawText(surface, shortened(title, big, widthMm), big, left, top + 4.6);
  said.flat().forEach((line, n) => {
    drawText(surface, shortened(line, small, widthMm), small, left, top + 10.2 + stepMm * n);
  });
}
