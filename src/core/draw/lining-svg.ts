import { liningOnePage } from './lining-pages.js';
import type { LiningSheet } from './lining-piece.js';
import type { PrintPaper } from './print-sheet.js';
import { SvgSurface } from './svg-surface.js';

/**
 * A lining template as an SVG page in millimetres; the paths `cut-line` and `seam-line` are exact:
 * straight lines and circular arcs.
 *
 * @throws RondureError `glyph-missing`
 */
export function liningSvg(sheet: LiningSheet, paper: PrintPaper): string {
  const page = liningOnePage(sheet, paper);
  const { lining, words } = sheet;
  const surface = new SvgSurface({
    widthMm: page.widthMm,
    heightMm: page.heightMm,
    title: words.lining.title(sheet),
    description: words.lining.describe({
      seamMm: lining.seamAcrossMm,
      cutMm: lining.cutAcrossMm,
    }),
  });
  page.draw(surface);
  return surface.toString();
}
