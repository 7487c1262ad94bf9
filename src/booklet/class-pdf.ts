import type { PrintPaper } from '../core/pages/surface/print-sheet.js';
import type { Pattern } from '../core/pattern/pattern.js';
import { flat } from '../words/pages/pairs.js';
import { Flow } from './flow.js';
import { drawFoot } from './foot.js';
import type { BookletFacts } from './facts.js';
import { asSaid, forHand, sheetOf } from './layout.js';
import { addLevelled } from './level.js';
import { lookOf } from './look.js';
import type { Look } from './look.js';
import { addWholeChart } from './parts/chart.js';
import { addWork } from './parts/work.js';
import { pdfBook } from './pdf-book.js';
import { StructureNode } from './structure.js';
import { threadBeads } from './thread-row.js';
import { tintOf } from './tint.js';

/** What tells the sheets of a class from our other PDFs. */
export const classCreator = 'Rondure class';

/** What is handed out: patterns, and to whom. */
export interface HandOut {
  readonly patterns: readonly Pattern[];
  /** As they were typed; where there are none, every pattern comes once and nobody's name stands on it. */
  readonly names: readonly string[];
}

/** One pattern for one name. */
interface Sheets {
  readonly facts: BookletFacts;
  readonly look: Look;
  readonly flow: Flow;
}

/**
 * A hand-out for a class as one PDF: name by name each pattern's chart, and what is strung and worked. The
 * name stands on every page. Each begins on an odd page, so that it can be printed on both sides.
 *
 * @param given all but the pattern
 * @returns the document and how many pages it has
 * @throws RondureError `glyph-missing`, `script-unset`
 */
export async function classPdf(
  given: Omit<BookletFacts, 'pattern'>,
  { patterns, names }: HandOut,
  paper: PrintPaper,
): Promise<{ bytes: Uint8Array; pages: number }> {
  const whom = names.length > 0 ? names : [''];
  const all = whom.flatMap((name) =>
    patterns.map((pattern) => sheetsFor({ ...given, pattern }, name, paper)),
  );
  const { words, fonts, languages, author, date, edition } = given;
  const titles = patterns.map((pattern) => asSaid({ ...given, pattern }).pattern.title);
  const book = await pdfBook({
    title: titles.join(', '),
    subject: flat(words.booklet.subject),
    author,
    creator: classCreator,
    language: languages[0],
    tagged: true,
    date,
    grey: edition.grey,
    fonts,
  });
  const root = new StructureNode('Document');
  let pages = 0;
  for (const { facts, look, flow } of all) {
    // The one before ended on the front of a sheet.
    if (pages % 2 === 1) {
      book.page(look.widthMm, look.heightMm);
      pages++;
    }
    for (const [n, page] of flow.pages.entries()) {
      const surface = book.page(look.widthMm, look.heightMm);
      if (n === 0) book.bookmark(facts.pattern.title);
      for (const { draw, node } of page.drawn) book.marked(node, () => draw(surface));
      const number = flat(words.booklet.pageOf({ page: n + 1, pages: flow.pages.length }));
      book.marked('foot', () => drawFoot(surface, facts, look, page, number));
      pages++;
    }
    root.children.push(...flow.root.children);
  }
  return { bytes: await book.finish(root), pages };
}

function sheetsFor(given: BookletFacts, name: string, paper: PrintPaper): Sheets {
  const plain = forHand(given);
  const { pattern } = plain;
  const { title } = asSaid(plain).pattern;
  const facts = asSaid({
    ...plain,
    edition: { ...plain.edition, once: true },
    pattern: { ...pattern, title: name ? `${name} · ${title}` : title },
  });
  const look = lookOf(paper, facts.fonts, {
    tint: tintOf(facts.pattern),
    large: facts.edition.large === true,
    hanging: facts.languages.length === 1,
  });
  const thread = threadBeads(facts, look.right - look.left);
  const flow = new Flow(look, facts.languages, facts.words.booklet.continued, thread);
  for (const panel of facts.pattern.panels.keys()) {
    addWholeChart(flow, facts, sheetOf(facts, panel));
    addLevelled(flow, () => addWork(flow, facts, panel));
  }
  return { facts, look, flow };
}
