import { printPapers } from '../core/pages/surface/print-sheet.js';
import type { PrintPaper } from '../core/pages/surface/print-sheet.js';
import type { SwatchGuide } from '../core/pages/swatch/guide-facts.js';
import { swatchGuideSheets } from '../core/pages/swatch/guide-sheets.js';
import type { Language } from '../words/pages/languages.js';
import { structured } from './page-parts.js';
import { pdfBook } from './pdf-book.js';
import { StructureNode } from './structure.js';

/** What tells a guide to a swatch from our other PDFs. */
export const swatchGuideCreator = 'Rondure swatch guide';

/**
 * The guide to a swatch as a PDF, a sheet a page, tagged as a booklet is.
 *
 * @returns the document and how many sheets it has
 * @throws RondureError `glyph-missing`
 */
export async function swatchGuidePdf(
  guide: SwatchGuide,
  paper: PrintPaper,
  language: Language,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const { widthMm, heightMm } = printPapers[paper];
  const said = guide.words.swatch.guide;
  const book = await pdfBook({
    title: said.title,
    subject: said.describe,
    creator: swatchGuideCreator,
    language,
    tagged: true,
    fonts: guide.fonts,
  });
  const root = new StructureNode('Document');
  const sheets = swatchGuideSheets(guide, paper);
  sheets.forEach((parts, n) => {
    const surface = book.page(widthMm, heightMm);
    if (n === 0) book.bookmark(said.title);
    for (const { draw, node } of structured(parts, root.add('Sect'))) {
      book.marked(node, () => draw(surface));
    }
  });
  return { bytes: await book.finish(root), pages: sheets.length };
}
