import { bareMark } from '../../core/pattern/marks.js';
import { lettersInWorkingOrder } from '../../core/pattern/stitches.js';
import { onSide } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import { drawTable, tableMm, textCell } from '../table.js';
import { roundName } from '../facts.js';
import { repeatsOf } from './repeats.js';
import type { BookletFacts } from '../facts.js';

/** Room between the two halves of the table, and how much of the width each takes: the first says more. */
const gapMm = 6;
const leftShares = [0.56, 0.44];
const padMm = 0.35;

/** Signs and what they mean, those that the pattern has: in two halves side by side where the page is wide enough for them. */
export function addSigns(flow: Flow, facts: BookletFacts, second: string): void {
  const { look } = flow;
  const bare = facts.pattern.panels.some((panel) =>
    lettersInWorkingOrder(panel).includes(bareMark),
  );
  const repeats = repeatsOf(facts).either;
  const say = facts.words.booklet.before;
  const shares = flow.hangs ? leftShares : [1];
  const wide = flow.wide - (shares.length - 1) * gapMm;
  const signMm = flow.hangs ? 20 : 28;
  const all = say
    .table(second)
    .filter(([sign]) => bare || onSide(sign, 0) !== facts.words.lists.bare)
    .filter(([sign]) => repeats || !onSide(sign, 0).startsWith('('))
    // The first is that of a round, which the lists may have to write out.
    .map(([sign, meaning], n) => [n === 0 ? roundName(facts, 7) : sign, meaning]);
  /** The table in as many parts, so many rows in the first. */
  const partsAt = (cut: number) =>
    shares.map((share, n) => {
      const columns = [
        { head: say.sign, widthMm: signMm },
        { head: say.meaning, widthMm: share * wide - signMm },
      ];
      const rows = (n === 0 ? all.slice(0, cut) : all.slice(cut)).map(([sign, meaning]) => [
        textCell(sign, look.cellStrong, columns[0]),
        textCell(meaning, look.body, columns[1]),
      ]);
      const left = n === 0 ? look.left : look.left + shares[0] * wide + gapMm;
      return { columns, rows, left };
    });
  const highOf = (some: ReturnType<typeof partsAt>) =>
    Math.max(...some.map(({ columns, rows }) => tableMm(flow, columns, rows, padMm)));
  const cuts = shares.length === 2 ? all.map((_, n) => n + 1).slice(0, -1) : [all.length];
  const [parts] = cuts.map(partsAt).sort((one, other) => highOf(one) - highOf(other));
  const high = highOf(parts);
  flow.subheading(say.signs, high + 1);
  const top = flow.y;
  let end = top;
  for (const { columns, rows, left } of parts) {
    flow.y = top;
    drawTable(flow, columns, rows, { left, rowHeads: true, whole: true, padMm });
    end = Math.max(end, flow.y);
  }
  flow.y = end;
}
