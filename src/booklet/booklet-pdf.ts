import type { PrintPaper } from '../core/pages/surface/print-sheet.js';
import { flat } from '../words/pages/pairs.js';
import { layOutBooklet } from './layout.js';
import type { BookletFacts } from './facts.js';
import { pdfBook } from './pdf-book.js';

/** What tells a booklet from our other PDFs. */
export const bookletCreator = 'Rondure booklet';

/**
 * A whole pattern as a booklet.
 *
 * @returns the document and how many pages it has
 * @throws RondureError those of `layOutBooklet`
 */
export async function bookletPdf(
  given: BookletFacts,
  paper: PrintPaper,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const { facts, look, flow, foot } = layOutBooklet(given, paper);
  const { pattern, words } = facts;
  const book = await pdfBook({
    title: pattern.title,
    subject: flat(words.booklet.subject),
    author: facts.author,
    creator: bookletCreator,
    language: facts.languages[0],
    tagged: true,
    date: facts.date,
    grey: facts.edition.grey,
    fonts: facts.fonts,
  });
  flow.pages.forEach((page, n) => {
    const surface = book.page(look.widthMm, look.heightMm);
    for (const { name, group } of page.bookmarks) book.bookmark(flat(name), group && flat(group));
    for (const { draw, node } of page.drawn) book.marked(node, () => draw(surface));
    book.marked('foot', () => foot(surface, page, n));
  });
  return { bytes: await book.finish(flow.root), pages: flow.pages.length };
}
