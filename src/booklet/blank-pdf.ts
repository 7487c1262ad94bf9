import { drawBlank } from '../core/pages/chart/blank.js';
import { blankPage } from '../core/pages/chart/blank-page.js';
import type { PanelSheet } from '../core/pages/panel/sheet.js';
import { pdfBook } from './pdf-book.js';

/**
 * An empty chart to colour by hand as a PDF of one page, in its own size.
 *
 * @param language of its words, BCP 47
 * @throws RondureError `glyph-missing`
 */
export async function blankPdf(sheet: PanelSheet, language = 'en'): Promise<Uint8Array> {
  const { pattern, words, fonts, geometry } = sheet;
  const { widthMm, heightMm } = blankPage(geometry);
  const subject = words.blank.describe(pattern.shape);
  const book = await pdfBook({ title: pattern.title, subject, language, fonts });
  drawBlank(book.page(widthMm, heightMm), sheet);
  return book.finish();
}
