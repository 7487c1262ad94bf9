import { acrossMm } from '../geometry/edge.js';
import type { CellKind, PanelSheet } from './sheet.js';
import type { Surface } from './surface.js';
import { drawText, mmPerPoint, shortened } from './text.js';

/** Space a heading takes from the top margin. */
export const headingMm = 16.5;

/** Title and two lines on the shape; what is too long for the page ends in an ellipsis. */
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
      acrossMm: acrossMm(shape),
    }),
    words.chart.workLine(shape),
  ];
  const big = { face: fonts.bold, sizeMm: 16 * mmPerPoint };
  const small = { face: fonts.regular, sizeMm: 9.5 * mmPerPoint };
  const { left, top, widthMm } = place;
  drawText(surface, shortened(title, big, widthMm), big, left, top + 4.6);
  lines.forEach((line, n) => {
    drawText(surface, shortened(line, small, widthMm), small, left, top + 10.2 + 4.4 * n);
  });
}
