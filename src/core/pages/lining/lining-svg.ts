import { liningOnePage } from './lining-pages.js';
import type { LiningSheet } from './lining-piece.js';
import type { PrintPaper } from '../surface/print-sheet.js';
import { SvgSurface } from '../surface/svg-surface.js';

/**
 * A lining template as an SVG page in millimetres; the paths `cut-line` and `seam-line` are exact:
 * straight lines and circular arcs.
 *
 * @throws RondureError `glyph-missing`
 */
export function liningSvg(sheet: LiningSheet, paper: PrintPaper): string {
  const page = liningOnePage(sheet, paper);
  const { words } = sheet;
  const surface = new SvgSurface({
    widthMm: page.widthMm,
    heightMm: page.heightMm,
    title: words.lining.title(sheet),
    description: words.booklet.alt.lining,
  });
  for (const part of page.parts) part.draw(surface);
  return surface.toString();
}
