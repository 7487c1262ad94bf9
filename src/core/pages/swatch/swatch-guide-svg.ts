import { printPapers } from '../surface/print-sheet.js';
import type { PrintPaper } from '../surface/print-sheet.js';
import { shiftedDown } from '../surface/shifted.js';
import { SvgSurface } from '../surface/svg-surface.js';
import type { SwatchGuide } from './guide-facts.js';
import { swatchGuideSheets } from './guide-sheets.js';

/**
 * The guide to a swatch as SVG, its sheets below each other; prints at its true size.
 *
 * @throws RondureError `glyph-missing`
 */
export function swatchGuideSvg(guide: SwatchGuide, paper: PrintPaper): string {
  const { widthMm, heightMm } = printPapers[paper];
  const said = guide.words.swatch.guide;
  const sheets = swatchGuideSheets(guide, paper);
  const surface = new SvgSurface({
    widthMm,
    heightMm: sheets.length * heightMm,
    pageHeightMm: heightMm,
    title: said.title,
    description: said.describe,
  });
  surface.beginGroup(swatchGuideMark);
  sheets.forEach((parts, n) => {
    const sheet = shiftedDown(surface, heightMm, n * heightMm);
    for (const part of parts) part.draw(sheet);
  });
  surface.endGroup();
  return surface.toString();
}

/** Id of the element that tells a guide of ours from other drawings. */
export const swatchGuideMark = 'rondure-swatch-guide';
