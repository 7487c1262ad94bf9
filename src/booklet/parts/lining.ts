import { RondureError } from '../../core/errors.js';
import { liningPages } from '../../core/pages/lining/lining-pages.js';
import type { LiningPage } from '../../core/pages/lining/lining-pages.js';
import type { DrawnSteps } from '../../core/pages/lining/lining-piece.js';
import { safeArea } from '../../core/pages/surface/print-sheet.js';
import { planLining } from '../../core/purse/lining/plan.js';
import { onSide } from '../../words/pages/pairs.js';
import type { Side } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import { structured } from '../page-parts.js';
import { partName, whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';
import { handBlocks } from './hands.js';

/** The sheets of a template in one language; no panel where both take the same. */
export interface Template {
  readonly side: Side;
  readonly panel: number | undefined;
  readonly pages: readonly LiningPage[];
  /** Whether they show how the pieces are sewn and put in. */
  readonly drawn: boolean;
}

/**
 * The sheets for each panel that needs its own, once in every language, since they have no room for
 * two; none where the panel is too small or too large. They show the steps where that takes no more
 * of them.
 */
export function liningTemplates(flow: Flow, facts: BookletFacts): Template[] {
  const { pattern, each, fonts } = facts;
  const { title } = pattern;
  const { paper } = flow.look;
  const templates: Template[] = [];
  try {
    for (const [n, words] of each.entries()) {
      const side = n as Side;
      const drawn = flow.hangs ? drawnSteps(flow, facts) : undefined;
      for (const [panel, { name }] of pattern.panels.entries()) {
        const lining = planLining(pattern, { panel });
        const both = lining.pieces === 2;
        const own = both ? {} : { panel: onSide(name, side) };
        const sheet = { lining, title, ...own, words, fonts, marked: false };
        const said = liningPages(sheet, paper);
        const shown = drawn && liningPages({ ...sheet, drawn }, paper);
        const fits = shown !== undefined && shown.length <= said.length;
        const pages = fits ? shown : said;
        templates.push({ side, panel: both ? undefined : panel, pages, drawn: fits });
        if (both) break;
      }
    }
  } catch (error) {
    if (error instanceof RondureError && error.code === 'lining-impossible') return [];
    throw error;
  }
  return templates;
}

/** How the lining is sewn and put in, in a row as wide as a sheet. */
function drawnSteps(flow: Flow, facts: BookletFacts): DrawnSteps {
  const gapMm = 5;
  const blocks = handBlocks(flow, facts, ['lining']);
  const widthMm = (safeArea.widthMm - (blocks.length - 1) * gapMm) / blocks.length;
  const row = blocks.map((one) => {
    const block = one.wider?.(widthMm) ?? one;
    return block.withHead?.(safeArea.widthMm) ?? block;
  });
  const overMm = Math.max(...row.map((block) => block.overMm));
  return {
    page: flow.look,
    heightMm: overMm + Math.max(...row.map((block) => block.heightMm - block.overMm)),
    parts: (left, top) =>
      row.flatMap((block, n) =>
        block.parts(left + n * (widthMm + gapMm), top + overMm - block.overMm),
      ),
  };
}

/** The sheets, each on a page of its own. */
export function addLining(flow: Flow, facts: BookletFacts, templates: readonly Template[]): void {
  for (const { side, panel, pages } of templates) {
    const said = { ...facts, words: facts.each[side] };
    const { parts } = said.words.booklet;
    const named = panel === undefined ? parts.lining : partName(said, parts.lining, panel);
    pages.forEach((page, n) => {
      flow.page(onSide(whereOf(said, parts.lining, panel), side), undefined, {
        ...(n === 0 && { bookmark: { name: onSide(named, side) }, mark: 'lining' }),
      });
      const section = flow.section.add('Sect', { language: facts.languages[side] });
      flow.pages.at(-1)!.drawn.push(...structured(page.parts, section));
    });
  }
}
