import { RondureError } from '../../core/errors.js';
import { liningPages } from '../../core/draw/lining-pages.js';
import type { LiningPage } from '../../core/draw/lining-pages.js';
import { planLining } from '../../core/lining/plan.js';
import { frameParagraph } from '../../core/texts/rounds.js';
import { sewingParagraphs, sewingTable } from '../../core/texts/sewing.js';
import type { Words } from '../../words/index.js';
import type { Flow } from '../flow.js';
import { drawTable, textCell } from '../table.js';
import { partName, whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** Seam, frame and lining, and the lining template at true size. */
export function addMakingUp(flow: Flow, facts: BookletFacts): void {
  const { pattern, words } = facts;
  const { look } = flow;
  const say = words.booklet.making;
  const { making: heading } = words.booklet.parts;
  const { panels, frame } = pattern;
  const templates = liningTemplates(flow, facts);
  flow.part({ heading, where: whereOf(facts, heading) });
  flow.titled(say.panels, [panels.length === 2 ? say.two : say.one]);
  if (panels.length === 1) flow.titled(say.seam, [say.oneSeam]);
  else {
    flow.titled(say.seam, sewingParagraphs(pattern, words));
    const [head, ...pairs] = sewingTable(pattern, words);
    const columns = head.map((text, n) => ({
      head: text,
      widthMm: n === 0 ? flow.wide / 2 : flow.wide / 4,
    }));
    flow.subheading(say.pairs, 30);
    const rows = pairs.map((row) => row.map((text, n) => textCell(text, look.body, columns[n])));
    drawTable(flow, columns, rows);
  }
  const held = frame ? panels.map((panel) => frameParagraph(pattern, frame, panel, words)) : [];
  flow.titled(say.frame, [...new Set(held), say.frameText]);
  flow.titled(say.lining, [templates.length === 0 ? say.noTemplate : say.liningText]);
  const { lining: part } = words.booklet.parts;
  for (const { panel, pages } of templates) {
    pages.forEach((page, n) => {
      flow.page(
        whereOf(facts, part, panel),
        (surface) => {
          page.draw(surface);
          if (page.window) surface.clipped(page.window, () => page.drawInWindow?.(surface));
        },
        n === 0 ? (panel === undefined ? part : partName(facts, part, panel)) : undefined,
        n === 0 ? undefined : words.booklet.alt.lining,
      );
    });
  }
}

/** The sheets of a template; no panel where both take the same. */
interface Template {
  readonly panel: number | undefined;
  readonly pages: readonly LiningPage[];
}

/** The sheets for each panel that needs its own; none where the panel is too small or too large. */
function liningTemplates({ look }: Flow, { pattern, words, fonts }: BookletFacts): Template[] {
  const said: Words = {
    ...words,
    lining: { ...words.lining, estimate: words.lining.estimated, cut: cutText(words) },
  };
  const templates: Template[] = [];
  try {
    for (const [panel, { name }] of pattern.panels.entries()) {
      const lining = planLining(pattern, { panel });
      const { title } = pattern;
      const both = lining.pieces === 2;
      const sheet = { lining, title, ...(!both && { panel: name }), words: said, fonts };
      const pages = liningPages(sheet, look.paper);
      templates.push({ panel: both ? undefined : panel, pages });
      if (both) break;
    }
  } catch (error) {
    if (error instanceof RondureError && error.code === 'lining-impossible') return [];
    throw error;
  }
  return templates;
}

const cutText =
  ({ lining }: Words): Words['lining']['cut'] =>
  (f) =>
    f.pieces === 2 ? lining.cutTwo : lining.cutOne;
