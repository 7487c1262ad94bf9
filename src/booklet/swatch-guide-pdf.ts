import { printPapers } from '../core/pages/surface/print-sheet.js';
import type { PrintPaper } from '../core/pages/surface/print-sheet.js';
import { drawSwatchGuide, guideSheets } from '../core/pages/swatch/swatch-guide.js';
import type { SwatchGuide } from '../core/pages/swatch/guide-facts.js';
import { pdfBook } from './pdf-book.js';

/**
 * The guide to a swatch as a PDF, a sheet a page.
 *
 * @throws RondureError `glyph-missing`
 */
export async function swatchGuidePdf(guide: SwatchGuide, paper: PrintPaper): Promise<Uint8Array> {
  const { widthMm, heightMm } = printPapers[paper];
  const said = guide.words.swatch.guide;
  const about = { title: said.title, subject: said.describe, language: 'en', fonts: guide.fonts };
  const book = await pdfBook(about);
  for (let sheet = 0; sheet < guideSheets; sheet++) {
    drawSwatchGuide(book.page(widthMm, heightMm), sheet, guide);
  }
  return book.finish();
}
