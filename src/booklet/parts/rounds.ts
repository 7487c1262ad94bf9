import { beadsOnly } from '../../core/pattern/stitches.js';
import { runPieces } from '../../core/texts/lines.js';
import { roundBody } from '../../core/texts/rounds.js';
import type { Words } from '../../words/index.js';
import type { Flow } from '../flow.js';
import { filled } from '../look.js';
import { drawTable, roomIn } from '../table.js';
import type { Column, TableCell } from '../table.js';
import { partName, whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** The rounds of one panel in working order, with running totals. */
export function addRounds(flow: Flow, facts: BookletFacts, panel: number): void {
  const { pattern, words } = facts;
  const { look } = flow;
  const say = words.booklet.rounds;
  const { rounds: part } = words.booklet.parts;
  flow.part({ heading: partName(facts, part, panel), where: whereOf(facts, part, panel) });
  flow.paragraph(say.how);
  const columns = roundColumns(flow, say);
  const one = (text: string, style = look.body): TableCell => ({ lines: [text], style });
  let total = 0;
  const rows = pattern.panels[panel].rounds.map((marks, index) => {
    const beads = beadsOnly(marks).length;
    total += beads;
    const body = runPieces(roundBody(pattern.shape, index + 1, marks, words));
    return [
      one(words.lists.round(index + 1), look.strong),
      { lines: filled(body, look.body, roomIn(columns[1])), style: look.body },
      one(words.lists.number(marks.length)),
      one(words.lists.number(beads)),
      one(words.lists.number(total), look.strong),
    ];
  });
  drawTable(flow, columns, rows);
}

/** The columns of the list of rounds. */
export function roundColumns({ look, wide }: Flow, say: Words['booklet']['rounds']): Column[] {
  const [round, stitches, beadsMm, all] = look.large ? [24, 30, 26, 26] : [17, 22, 18, 20];
  return [
    { head: say.round, widthMm: round },
    { head: say.work, widthMm: wide - round - stitches - beadsMm - all },
    { head: say.stitches, widthMm: stitches, end: true },
    { head: say.beads, widthMm: beadsMm, end: true },
    { head: say.total, widthMm: all, end: true },
  ];
}
