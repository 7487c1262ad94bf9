import { liningPages } from '../core/draw/lining-pages.js';
import type { LiningSheet } from '../core/draw/lining-piece.js';
import type { PrintPaper } from '../core/draw/print-sheet.js';
import { pdfBook } from './pdf-book.js';

/**
 * A lining template as a PDF.
 *
 * @returns the document and how many sheets it has
 * @throws RondureError `glyph-missing`
 */
export async function liningPdf(
  sheet: LiningSheet,
  paper: PrintPaper,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const { lining, words } = sheet;
  const book = await pdfBook({
    title: words.lining.title(sheet),
    subject: words.lining.describe({
      seamMm: lining.seamAcrossMm,
      cutMm: lining.cutAcrossMm,
    }),
    language: 'en',
    fonts: sheet.fonts,
  });
  const pages = liningPages(sheet, paper);
  for (const page of pages) {
    const surface = book.page(page.widthMm, page.heightMm);
    page.draw(surface);
    if (page.window) surface.clipped(page.window, () => page.drawInWindow?.(surface));
  }
  return { bytes: await book.finish(), pages: pages.length };
}
