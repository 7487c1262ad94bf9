import { materials } from '../../core/texts/materials.js';
import { shoppingList } from '../../core/texts/shopping.js';
import { fitText, threadItems, toolItems } from '../../core/texts/shopping-items.js';
import type { Flow } from '../flow.js';
import { drawTable } from '../table.js';
import { beadColumns, beadRows } from './bead-table.js';
import { whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** Room below each thing of a list, in lines. */
const closeLines = 0.2;

/** Beads with a sample, thread, tools. */
export function addMaterials(flow: Flow, facts: BookletFacts): void {
  const { pattern, words } = facts;
  const { look } = flow;
  const say = words.booklet.materials;
  const { materials: heading } = words.booklet.parts;
  const list = shoppingList(pattern);
  const panels = pattern.panels.length;
  flow.part({ heading, where: whereOf(facts, heading) });
  flow.paragraph(panels === 1 ? say.onePanel : say.twoPanels);

  const charted = materials(pattern);
  const rows = beadRows(flow, facts, list, charted);
  flow.subheading(say.beads, 30);
  if (rows.length === 0) flow.paragraph(words.shopping.noBeads);
  else {
    drawTable(flow, beadColumns(flow, facts), rows);
    const reserve = { percent: list.beadReservePercent, batch: false };
    flow.paragraph(words.shopping.beadReserveSaid(reserve), look.small);
  }
  if (list.undecided > 0) flow.paragraph(words.lists.openLeft(list.undecided));

  const { thread } = list;
  const { perStitch, lengths, fit } = thread;
  const items = threadItems(list, words).map((item) => item.text);
  flow.titled(say.thread, items, closeLines);
  const details = [
    words.shopping.threadSum({ ...thread, perStitchMm: perStitch.mm, tails: 2 * lengths }),
    perStitch.from === 'pattern' ? say.ownFigure : say.estimate,
    ...(thread.strungMm > 0 ? [words.shopping.lengths(thread)] : []),
    ...(fit ? [fitText(fit, words)] : []),
  ];
  flow.paragraph(details.join(' '), look.small);
  flow.titled(
    say.tools,
    toolItems(list, words).map((item) => item.text),
    closeLines,
  );
}
