import { liningPages } from '../core/pages/lining/lining-pages.js';
import type { LiningSheet } from '../core/pages/lining/lining-piece.js';
import type { PrintPaper } from '../core/pages/surface/print-sheet.js';
import type { Language } from '../words/pages/languages.js';
import { structured } from './page-parts.js';
import { pdfBook } from './pdf-book.js';
import { StructureNode } from './structure.js';

/**
 * A lining template as a PDF, tagged as a booklet is.
 *
 * @returns the document and how many sheets it has
 * @throws RondureError `glyph-missing`
 */
export async function liningPdf(
  sheet: LiningSheet,
  paper: PrintPaper,
  language: Language,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const { words } = sheet;
  const title = words.lining.title(sheet);
  const book = await pdfBook({
    title,
    subject: words.booklet.alt.lining,
    language,
    tagged: true,
    fonts: sheet.fonts,
  });
  const root = new StructureNode('Document');
  const section = root.add('Sect');
  const pages = liningPages(sheet, paper);
  pages.forEach((page, n) => {
    const surface = book.page(page.widthMm, page.heightMm);
    if (n === 0) book.bookmark(title);
    for (const { draw, node } of structured(page.parts, section)) {
      book.marked(node, () => draw(surface));
    }
  });
  return { bytes: await book.finish(root), pages: pages.length };
}
