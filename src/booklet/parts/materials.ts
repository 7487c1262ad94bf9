import { inkOn } from '../../core/colour/contrast.js';
import { drawText } from '../../core/draw/text.js';
import type { PatternBead } from '../../core/pattern/schema.js';
import { materials } from '../../core/texts/materials.js';
import { shoppingList } from '../../core/texts/shopping.js';
import { fitText, threadItems, toolItems } from '../../core/texts/shopping-items.js';
import type { Flow } from '../flow.js';
import { lineMm, linesOf } from '../look.js';
import { drawTable, roomIn } from '../table.js';
import type { Column, TableCell } from '../table.js';
import { whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** Room below each thing of a list, in lines. */
const closeLines = 0.2;
const sampleMm = { wide: 10, high: 5.4 };

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

  const fixed = 15 + 32 + 21 + 29 + 19;
  const columns: Column[] = [
    { head: say.columns.bead, widthMm: 15 },
    { head: say.columns.name, widthMm: flow.wide - fixed },
    { head: say.columns.id, widthMm: 32 },
    { head: say.columns.charted(panels), widthMm: 21, end: true },
    { head: say.columns.reserve, widthMm: 29, end: true },
    { head: say.columns.grams, widthMm: 19, end: true },
  ];
  const text = (content: string, n: number, style = look.body): TableCell => ({
    lines: linesOf(content, style, roomIn(columns[n])),
    style,
  });
  const { number } = words.lists;
  const grams = (value: number | undefined) =>
    value === undefined ? say.unknownGrams : words.lists.decimal(value, 1);
  const charted = materials(pattern);
  const beads = pattern.beads.filter((_, n) => charted[n].count > 0);
  const rows = beads.map((bead) => {
    const { count } = charted.find(({ letter }) => letter === bead.letter)!;
    const have = list.beads.find(({ letter }) => letter === bead.letter)!;
    const name = bead.size === undefined ? bead.name : `${bead.name}, ${bead.size}`;
    return [
      sampleCell(flow, bead),
      text(name, 1),
      text(bead.id === bead.name ? '' : bead.id, 2, look.small),
      text(number(count), 3),
      text(number(have.withReserve), 4),
      text(grams(have.grams), 5),
    ];
  });
  const sum = charted.reduce((all, { count }) => all + count, 0);
  const total = [
    text('', 0),
    text(say.total, 1, look.strong),
    text('', 2),
    text(number(sum), 3, look.strong),
    text(number(list.totals.withReserve), 4, look.strong),
    text(grams(list.totals.grams), 5, look.strong),
  ];
  flow.subheading(say.beads, 30);
  if (rows.length === 0) flow.paragraph(words.shopping.noBeads);
  else {
    drawTable(flow, columns, [...rows, total]);
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

/** A patch in the bead's colour with its letter. */
function sampleCell({ look }: Flow, { letter, hex }: PatternBead): TableCell {
  const { wide, high } = sampleMm;
  const style = { ...look.strong, ink: inkOn(hex) };
  return {
    heightMm: Math.max(high, lineMm(look.body)),
    draw(surface, x, y) {
      const [left, right] = [x + 1 + high / 2, x + 1 + wide - high / 2];
      const middle = y + high / 2;
      const line = [[left, middle, right, middle]];
      surface.strokePath(line, { stroke: '#4a4a4a', widthMm: high });
      surface.strokePath(line, { stroke: hex, widthMm: high - 0.4 });
      const base = middle + (style.sizeMm * style.face.capHeight) / 2;
      drawText(surface, letter, style, (left + right) / 2, base, 'middle');
    },
  };
}
