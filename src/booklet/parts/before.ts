import { chartPaper } from '../../core/draw/chart.js';
import type { PanelSheet } from '../../core/draw/sheet.js';
import { acrossMm } from '../../core/geometry/edge.js';
import { undecidedMark, bareMark } from '../../core/pattern/schema.js';
import { lettersInWorkingOrder } from '../../core/pattern/stitches.js';
import { directionOf } from '../../core/shape.js';
import { isLeanOfSwatch } from '../../core/texts/rounds.js';
import type { Flow } from '../flow.js';
import { drawTable, textCell } from '../table.js';
import { whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** Swatch, hand and face, how to begin, how to read, how to string, signs. */
export function addBefore(flow: Flow, facts: BookletFacts, sheet: PanelSheet): void {
  const { pattern, words } = facts;
  const { shape } = pattern;
  const { look } = flow;
  const say = words.booklet.before;
  const { before: heading } = words.booklet.parts;
  const { rounds, stringing } = words;
  const marks = pattern.panels.map(lettersInWorkingOrder).join('');
  const open = marks.split(undecidedMark).length - 1;
  const second = pattern.beads.length > 1 ? pattern.beads[1].letter : 'A';
  const across = (n: number) => acrossMm({ ...shape, rounds: n });
  flow.part({ heading, where: whereOf(facts, heading) });
  flow.titled(say.swatch, [
    say.swatchText({
      wedges: shape.wedges,
      widthMm: shape.stitchWidthMm,
      heightMm: shape.roundHeightMm,
      fiveMm: across(5),
      tenMm: across(10),
    }),
  ]);
  const { edition } = words.booklet;
  flow.titled(say.hand, [
    rounds.direction({ ...shape, clockwise: directionOf(shape) === 1 }),
    ...(facts.edition.otherHand ? [edition.mirrored] : []),
  ]);
  flow.titled(say.start, [
    rounds.begin(shape.wedges),
    rounds.stitch({ ...shape, measured: isLeanOfSwatch(pattern) }),
    shape.construction === 'spiral' ? rounds.spiral : rounds.joined,
    rounds.marker,
  ]);
  const paper = chartPaper(sheet);
  flow.titled(say.read, [
    rounds.reading,
    rounds.increases(`[A ${second}]`),
    ...(marks.includes(bareMark) ? [rounds.bare] : []),
    ...(open > 0 ? [words.lists.openLeft(open)] : []),
    ...(facts.edition.grey ? [edition.fills] : []),
    ...(paper.name === 'A4' ? [] : [say.smallChart({ paper: paper.name })]),
  ]);
  flow.titled(say.string, [
    stringing.order,
    stringing.reading,
    ...(marks.includes(bareMark) ? [stringing.bare] : []),
  ]);
  const columns = [
    { head: say.sign, widthMm: 32 },
    { head: say.meaning, widthMm: flow.wide - 32 },
  ];
  const rows = say
    .table(second)
    .map(([sign, meaning]) => [
      textCell(sign, look.strong, columns[0]),
      textCell(meaning, look.body, columns[1]),
    ]);
  flow.subheading(say.signs, 30);
  drawTable(flow, columns, rows);
}
