import { fitText } from '../../core/pages/lists/shopping-items.js';
import type { Flow } from '../flow.js';
import { addSideBySide } from '../flow-blocks.js';
import { lineMm } from '../look.js';
import { drawTable } from '../table.js';
import { beadColumns, beadRows } from './bead-table.js';
import { neededFor, whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** Beads with a sample, thread, tools. */
export function addMaterials(flow: Flow, facts: BookletFacts): void {
  const { pattern, words } = facts;
  const { look } = flow;
  const say = words.booklet.materials;
  const { materials: heading } = words.booklet.parts;
  const { list, charted, thread: items, tools } = neededFor(facts);
  const panels = pattern.panels.length;
  flow.part({ heading, where: whereOf(facts, heading), mark: 'materials', besideMm: 75 });
  flow.titled(say.beads, [panels === 1 ? say.onePanel : say.twoPanels], { keepMm: 24 });

  const rows = beadRows(flow, facts, list, charted);
  if (rows.length === 0) flow.paragraph(words.shopping.noBeads);
  else {
    drawTable(flow, beadColumns(flow, facts), rows, { sum: true });
    const reserve = { percent: list.beadReservePercent, batch: false };
    const notes = [
      words.shopping.beadReserveSaid(reserve),
      ...(list.beads.some(({ sample }) => sample) ? [words.shopping.samples] : []),
    ];
    flow.paragraph(notes.join(' '), look.small, 0.6, look.left);
  }
  if (list.undecided > 0) flow.paragraph(words.lists.openLeft(list.undecided));

  const { thread } = list;
  const { perStitch, lengths, fit } = thread;
  const details = [
    words.shopping.threadSum({ ...thread, perStitchMm: perStitch.mm, tails: 2 * lengths }),
    perStitch.from === 'pattern' ? say.ownFigure : say.estimate,
    ...(thread.strungMm > 0 ? [words.shopping.lengths(thread)] : []),
    ...(fit ? [fitText(fit, words)] : []),
  ];
  const about = details.join(' ');
  const half = (flow.wide - 8) / 2;
  const listMm = (texts: readonly string[]) =>
    texts.reduce(
      (sum, one) => sum + flow.highOf(one, look.body, half - 5) + 0.12 * lineMm(look.body),
      8,
    );
  const threadMm = listMm(items) + flow.highOf(about, look.small, half) + 8;
  addSideBySide(
    flow,
    [threadMm + lineMm(look.body), listMm(tools) + lineMm(look.body)],
    [
      () => {
        flow.titled(say.thread, items, { list: true });
        flow.paragraph(about, look.small, 0.6);
      },
      () => flow.titled(say.tools, tools, { list: true }),
    ],
  );
}
