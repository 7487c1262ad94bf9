import type { PrintPaper } from '../core/pages/surface/print-sheet.js';
import type { PanelSheet } from '../core/pages/panel/sheet.js';
import type { Surface } from '../core/pages/surface/surface.js';
import { wedgesAlike } from '../core/pages/chart/wedges-alike.js';
import { layPanel } from '../core/panel/lay.js';
import { forOtherHand } from '../core/pattern/other-hand.js';
import { oneLine } from '../core/pages/lists/lines.js';
import { flat, onSide, plain } from '../words/pages/pairs.js';
import { Flow } from './flow.js';
import { drawFoot } from './foot.js';
import type { FlowPage } from './flow-page.js';
import { addLevelled } from './level.js';
import { lookOf } from './look.js';
import type { Look } from './look.js';
import { addBefore } from './parts/before.js';
import { addContents } from './parts/contents.js';
import { contentsOf, stepsOf } from './parts/steps.js';
import { addChart, isEnlarged } from './parts/chart.js';
import { addCover } from './parts/cover.js';
import { addCautions, addLast } from './parts/ending.js';
import { greysOf } from './facts.js';
import type { BookletFacts } from './facts.js';
import { addLining, liningTemplates } from './parts/lining.js';
import { addMakingUp } from './parts/making-up.js';
import { addMaterials } from './parts/materials.js';
import { addWork } from './parts/work.js';
import { threadBeads } from './thread-row.js';
import { tintOf } from './tint.js';

/** A booklet laid out: its pages are known, nothing is drawn yet. */
export interface Layout {
  /** The pattern as the edition has it. */
  readonly facts: BookletFacts;
  readonly look: Look;
  readonly flow: Flow;
  /** Draws the foot of a page. */
  readonly foot: (surface: Surface, page: FlowPage, n: number) => void;
}

/**
 * Lays out a whole pattern in the order of the work: cover, contents, materials, instructions, each
 * panel with its charts and lists, making up, the last page.
 *
 * @throws RondureError `glyph-missing`, `script-unset`, and those of `planFrame` where the pattern
 *   has a frame
 */
export function layOutBooklet(given: BookletFacts, paper: PrintPaper): Layout {
  const facts = asSaid(forHand(given));
  const { pattern, words } = facts;
  const look = lookOf(paper, facts.fonts, {
    tint: tintOf(pattern),
    large: facts.edition.large === true,
    hanging: facts.languages.length === 1,
  });
  const thread = threadBeads(facts, look.right - look.left);
  const flow = new Flow(look, facts.languages, words.booklet.continued, thread);
  const sheets = pattern.panels.map((_, panel) => sheetOf(facts, panel));
  addCover(flow, facts, thread);
  const templates = liningTemplates(flow, facts);
  const has = {
    enlarged: (panel: number) => isEnlarged(flow, sheets[panel]),
    wedge: (panel: number) => wedgesAlike(sheets[panel]),
    lining: templates.length > 0,
  };
  addLevelled(flow, () => {
    addContents(flow, facts, contentsOf(facts, has), stepsOf(facts));
    addMaterials(flow, facts);
    addCautions(flow, facts);
    addBefore(flow, facts, sheets[0]);
  });
  for (const [n, sheet] of sheets.entries()) {
    addChart(flow, facts, sheet);
    addLevelled(flow, () => {
      addWork(flow, facts, sheet.panel);
      if (n < sheets.length - 1) return;
      addMakingUp(flow, facts, templates);
      addLast(flow, facts);
    });
  }
  addLining(flow, facts, templates);
  const pages = flow.pages.length;
  return {
    facts,
    look,
    flow,
    foot(surface, page, n) {
      drawFoot(surface, facts, look, page, flat(words.booklet.pageOf({ page: n + 1, pages })));
    },
  };
}

/** Names as they can stand on a line, and our own names of panels in the languages of the pages. */
export function asSaid(facts: BookletFacts): BookletFacts {
  const { pattern, words } = facts;
  const { front, back } = words.booklet.panelNames;
  const ours: Record<string, string> = { front, back };
  // Marks that turn the order of letters round are no letters, and a title in a window obeys them.
  const said = (name: string) => plain(oneLine(name)).replace(/\p{Bidi_Control}/gu, '');
  return {
    ...facts,
    pattern: {
      ...pattern,
      // A title of spaces is none.
      title: said(pattern.title).trim() || onSide(words.booklet.kind, 0),
      panels: pattern.panels.map((panel) => ({
        ...panel,
        name: ours[panel.name] ?? said(panel.name),
      })),
      beads: pattern.beads.map((bead) => ({ ...bead, id: said(bead.id), name: said(bead.name) })),
    },
  };
}

/** The pattern as the hand of the edition works it. */
export function forHand(facts: BookletFacts): BookletFacts {
  const { pattern, edition } = facts;
  const other = edition.otherHand !== undefined && edition.otherHand !== pattern.shape.hand;
  return {
    ...facts,
    pattern: other ? forOtherHand(pattern) : pattern,
    edition: { ...edition, otherHand: other ? edition.otherHand : undefined },
  };
}

/** One panel of the pattern, laid out for its drawings. */
export function sheetOf(facts: BookletFacts, panel: number): PanelSheet {
  const { pattern, words, fonts } = facts;
  const { startDegrees } = pattern.panels[panel];
  const { geometry, footprints } = layPanel(pattern.shape, { startDegrees });
  return { pattern, panel, geometry, footprints, words, fonts, greys: greysOf(facts) };
}
