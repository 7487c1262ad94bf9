import type { PrintPaper } from '../core/draw/print-sheet.js';
import type { PanelSheet } from '../core/draw/sheet.js';
import type { Surface } from '../core/draw/surface.js';
import { panelFootprints } from '../core/geometry/footprints.js';
import { panelGeometry } from '../core/geometry/panel.js';
import { forOtherHand } from '../core/pattern/other-hand.js';
import { oneLine } from '../core/texts/lines.js';
import { flat, onSide, plain } from '../words/pages/pairs.js';
import { Flow } from './flow.js';
import { drawFoot } from './foot.js';
import type { FlowPage } from './flow.js';
import { lookOf } from './look.js';
import type { Look } from './look.js';
import { addBefore } from './parts/before.js';
import { addChart } from './parts/chart.js';
import { addCover } from './parts/cover.js';
import { addCautions, addLast } from './parts/ending.js';
import { greysOf } from './parts/facts.js';
import type { BookletFacts } from './parts/facts.js';
import { addMakingUp } from './parts/making-up.js';
import { addMaterials } from './parts/materials.js';
import { addRounds } from './parts/rounds.js';
import { addStringing } from './parts/stringing.js';

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
 * Lays out a whole pattern: cover, materials, instructions, charts, lists, making up, cautions.
 *
 * @throws RondureError `glyph-missing`, `script-unset`, and those of `planFrame` where the pattern
 *   has a frame
 */
export function layOutBooklet(given: BookletFacts, paper: PrintPaper): Layout {
  const facts = asSaid(forHand(given));
  const { pattern, words } = facts;
  const look = lookOf(paper, facts.fonts, facts.edition.large);
  const flow = new Flow(look, facts.languages, words.booklet.continued);
  const sheets = pattern.panels.map((_, panel) => sheetOf(facts, panel));
  addCover(flow, facts);
  addMaterials(flow, facts);
  addBefore(flow, facts, sheets[0]);
  for (const sheet of sheets) addChart(flow, facts, sheet);
  for (const { panel } of sheets) addRounds(flow, facts, panel);
  for (const { panel } of sheets) addStringing(flow, facts, panel);
  addMakingUp(flow, facts);
  addCautions(flow, facts);
  addLast(flow, facts);
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
function asSaid(facts: BookletFacts): BookletFacts {
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
function forHand(facts: BookletFacts): BookletFacts {
  const { pattern, edition } = facts;
  const other = edition.otherHand !== undefined && edition.otherHand !== pattern.shape.hand;
  return {
    ...facts,
    pattern: other ? forOtherHand(pattern) : pattern,
    edition: { ...edition, otherHand: other ? edition.otherHand : undefined },
  };
}

function sheetOf(facts: BookletFacts, panel: number): PanelSheet {
  const { pattern, words, fonts } = facts;
  const { startDegrees } = pattern.panels[panel];
  const geometry = panelGeometry(pattern.shape, { startDegrees });
  const footprints = panelFootprints(geometry);
  return { pattern, panel, geometry, footprints, words, fonts, greys: greysOf(facts) };
}
