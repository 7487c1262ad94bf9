import { printPapers } from '../surface/print-sheet.js';
import { shiftedDown } from '../surface/shifted.js';
import { SvgSurface } from '../surface/svg-surface.js';
import { drawSwatchGuide, guideSheets } from './swatch-guide.js';
import type { SwatchGuide } from './guide-facts.js';

/**
 * The guide to a swatch as SVG, its sheets below each other; prints at its true size.
 *
 * @throws RondureError `glyph-missing`
 */
export function swatchGuideSvg(guide: SwatchGuide, paper: 'a4' | 'letter'): string {
  const { widthMm, heightMm } = printPapers[paper];
  const said = guide.words.swatch.guide;
  const surface = new SvgSurface({
    widthMm,
    heightMm: guideSheets * heightMm,
    pageHeightMm: heightMm,
    title: said.title,
    description: said.describe,
  });
  surface.beginGroup(swatchGuideMark);
  for (let sheet = 0; sheet < guideSheets; sheet++) {
    drawSwatchGuide(shiftedDown(surface, heightMm, sheet * heightMm), sheet, guide);
  }
  surface.endGroup();
  return surface.toString();
}

/** Id of the element that tells a guide of ours from other drawings. */
export const swatchGuideMark = 'rondure-swatch-guide';
