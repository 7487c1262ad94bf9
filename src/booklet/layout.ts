import type { PrintPaper } from '../core/draw/print-sheet.js';
import type { PanelSheet } from '../core/draw/sheet.js';
import type { Surface } from '../core/draw/surface.js';
import { drawText, shortened, textWidth } from '../core/draw/text.js';
import { panelFootprints } from '../core/geometry/footprints.js';
import { panelGeometry } from '../core/geometry/panel.js';
import { forOtherHand } from '../core/pattern/other-hand.js';
import { oneLine } from '../core/texts/lines.js';
import { flat, plain } from '../words/pages/pairs.js';
import { Flow } from './flow.js';
import type { FlowPage } from './flow.js';
import { lookOf } from './look.js';
import type { Look } from './look.js';
import { addBefore } from './parts/before.js';
import { addChart } from './parts/chart.js';
import { addCover } from './parts/cover.js';
import { addCautions, addLast } from './parts/ending.js';
import { editionNames, greysOf } from './parts/facts.js';
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
  const said = (name: string) => plain(oneLine(name));
  return {
    ...facts,
    pattern: {
      ...pattern,
      title: said(pattern.title),
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

/** Title, part, panel and length on the left, the page number on the right. */
function drawFoot(
  surface: Surface,
  facts: BookletFacts,
  { foot: style }: Look,
  { where, ruled }: FlowPage,
  number: string,
): void {
  const { pattern, fonts } = facts;
  const [left, right] = [20, surface.widthMm - 20];
  const y = surface.heightMm - 7.5;
  if (ruled) {
    const rule = y - 4.2;
    surface.strokePath([[left, rule, right, rule]], { stroke: '#b9c6ca', widthMm: 0.25 });
  }
  const room = right - left - textWidth(number, style) - 6;
  const said = [where, ...editionNames(facts)].map(flat).join('  ·  ');
  const rest = shortened(`  ·  ${said}`, style, 0.85 * room);
  const title = shortened(pattern.title, style, room - textWidth(rest, style));
  drawText(surface, `${title}${rest}`, style, left, y);
  drawText(surface, number, { ...style, face: fonts.bold }, right, y, 'end');
}
