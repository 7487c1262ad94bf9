import { backwards, beadsOnly } from '../../core/pattern/stitches.js';
import { drawText, textWidth } from '../../core/pages/surface/text.js';
import type { TextStyle } from '../../core/pages/surface/text.js';
import { folded, runsOf, wedgesOf } from '../../core/pages/lists/runs.js';
import { strungText } from '../../core/pages/lists/stringing.js';
import { strungRounds } from '../../core/thread/strung-rounds.js';
import type { Length } from '../../core/thread/lengths.js';
import type { Flow } from '../flow.js';
import { lineMm } from '../look.js';
import { boxRoomMm, boxesMm, drawBox, drawBoxes, drawTable, roomIn, tableMm } from '../table.js';
import type { Column, TableCell } from '../table.js';
import { chipsOf } from './chip.js';
import type { DrawChip } from './chip.js';
import { headMm, roundName, roundNameMm, timesWorked } from '../facts.js';
import type { BookletFacts } from '../facts.js';
import { gramsOf } from './weight.js';

/** Part of a line: beads with their chip, or a sign. */
export interface Token {
  readonly text: string;
  /** The bead whose chip stands before it. */
  readonly letter?: string;
}

/** Longer runs are split in tens. */
const longestRun = 20;

/** Runs as they are counted: those over 20 in tens. */
export function countable(letters: string): Token[] {
  return runsOf(letters).flatMap(({ letter, count }) => {
    const tens = count > longestRun ? Math.floor(count / 10) : 0;
    const rest = count - 10 * tens;
    const counts = [...Array.from({ length: tens }, () => 10), ...(rest > 0 ? [rest] : [])];
    return counts.map((one) => ({ text: `${one}${letter}`, letter }));
  });
}

/** The beads of a round, last first; equal wedges once, with how often, where that is shorter. */
export function stringingTokens(marks: string, r: number): { tokens: Token[]; times: number } {
  const reversed = backwards(marks);
  if (!strungText(marks, r).startsWith('('))
    return { tokens: countable(beadsOnly(reversed)), times: 1 };
  const [{ item, times }] = folded(wedgesOf(reversed, r));
  const inside = countable(beadsOnly(item));
  return { tokens: [{ text: '(' }, ...inside, { text: `) x ${times}` }], times };
}

/** The columns of a stringing list; grams where they are known of every bead. */
export function stringingColumns(
  { look, wide }: Pick<Flow, 'look' | 'wide'>,
  facts: BookletFacts,
  weighed: boolean,
): Column[] {
  const say = facts.words.booklet;
  const { heads } = say.work;
  const totalMm = Math.max(look.large ? 26 : 14, headMm(heads.total, look));
  const gramsMm = weighed ? Math.max(look.large ? 20 : 10.5, headMm(heads.grams, look)) : 0;
  const roundMm = roundNameMm(facts, look);
  return [
    { head: say.rounds.round, widthMm: roundMm },
    { head: say.work.heads.string, widthMm: wide - roundMm - totalMm - gramsMm },
    { head: say.work.heads.total, widthMm: totalMm, end: true },
    ...(weighed ? [{ head: say.work.heads.grams, widthMm: gramsMm, end: true }] : []),
  ];
}

/** The stringing list of one length, a line a row, each with a box and the total at its end. */
export function addStringing(
  flow: Flow,
  facts: BookletFacts,
  panel: number,
  length: Length,
  before: { readonly heading: string; readonly about: readonly string[]; readonly mark: string },
): void {
  const { pattern, words } = facts;
  const { look } = flow;
  const chip = chipsOf(facts);
  const weighed = gramsOf(facts, length.beads) !== undefined;
  const columns = stringingColumns(flow, facts, weighed);
  const worked = timesWorked(facts);
  const room = roomIn(columns[1]) - boxesMm(look, worked);
  let grams = 0;
  const text = (content: string, style: TextStyle): TableCell => ({ lines: [content], style });
  const groups = strungRounds(pattern.shape, pattern.panels[panel], length).map(
    ({ round, marks, beads, total }) => {
      const { tokens, times } = stringingTokens(marks, round);
      grams += weighed ? gramsOf(facts, beads)! : 0;
      const endMm = times > 1 ? times * boxRoomMm(look) : 0;
      const lines = balanced(tokens, look.cell, room, endMm);
      let soFar = total - beads.length;
      return lines.map((line, n): TableCell[] => {
        const last = n === lines.length - 1;
        soFar = last ? total : soFar + beadsIn(line);
        return [
          text(n === 0 ? roundName(facts, round) : '', look.cellStrong),
          lineCell(flow, chip, line, { worked, times: times > 1 && !last ? 0 : times }),
          text(times > 1 && !last ? '' : words.lists.number(soFar), look.cellStrong),
          ...(weighed
            ? [
                text(last ? words.lists.decimal(grams, 1) : '', {
                  ...look.small,
                  face: look.fonts.regular,
                }),
              ]
            : []),
        ];
      });
    },
  );
  const padMm = 0.12;
  const first = groups.flat().slice(0, Math.max(2, groups[0].length));
  flow.titled(before.heading, before.about, { keepMm: tableMm(flow, columns, first, padMm) });
  flow.mark(before.mark);
  drawTable(flow, columns, groups.flat(), {
    rowHeads: true,
    together: groups.map((group) => group.length),
    padMm,
  });
}

const beadsIn = (line: readonly Token[]): number =>
  line.reduce((sum, { text, letter }) => sum + (letter ? parseInt(text, 10) : 0), 0);

const chipMm = ({ sizeMm }: TextStyle): number => 0.54 * sizeMm;
const tokenGapMm = ({ sizeMm }: TextStyle): number => 0.36 * sizeMm;

function tokenMm({ text, letter }: Token, style: TextStyle): number {
  return textWidth(text, style) + (letter ? chipMm(style) + 0.8 : 0) + tokenGapMm(style);
}

/** Tokens in as few lines as they take, all about equally long; the last has room for its boxes. */
function balanced(
  tokens: readonly Token[],
  style: TextStyle,
  roomMm: number,
  endMm: number,
): Token[][] {
  const laid = (limit: number): Token[][] => {
    const lines: Token[][] = [[]];
    let wide = 0;
    for (const [n, token] of tokens.entries()) {
      const own = tokenMm(token, style) + (n === tokens.length - 1 ? endMm : 0);
      if (wide + own > limit && lines.at(-1)!.length > 0) {
        lines.push([]);
        wide = 0;
      }
      lines.at(-1)!.push(token);
      wide += own;
    }
    return lines;
  };
  const few = laid(roomMm);
  let [least, most] = [roomMm / 2, roomMm];
  for (let step = 0; step < 12; step++) {
    const middle = (least + most) / 2;
    if (laid(middle).length > few.length) least = middle;
    else most = middle;
  }
  return laid(most);
}

/** A line with a box for each time it is strung, or with one for each repeat at its end. */
function lineCell(
  flow: Flow,
  chip: DrawChip,
  line: readonly Token[],
  { worked, times }: { worked: number; times: number },
): TableCell {
  const { look } = flow;
  const style = look.cell;
  const high = lineMm(style);
  const before = 1 + boxesMm(look, worked);
  return {
    heightMm: high,
    ornament(surface, left, top) {
      const base = top + 0.78 * high;
      let x = left + before;
      if (times === 1) drawBoxes(surface, look, { left: left + 1, base, boxes: worked });
      for (const token of line) {
        if (token.letter) {
          const sizeMm = chipMm(style);
          chip(surface, token.letter, { x: x + sizeMm / 2, y: base - 0.36 * style.sizeMm, sizeMm });
        }
        x += tokenMm(token, style);
      }
      if (times > 1) {
        for (let n = 0; n < times; n++) drawBox(surface, look, x + n * boxRoomMm(look), base);
      }
    },
    draw(surface, left, top) {
      const base = top + 0.78 * high;
      let x = left + before;
      for (const token of line) {
        const from = x + (token.letter ? chipMm(style) + 0.8 : 0);
        drawText(surface, `${token.text} `, style, from, base);
        x += tokenMm(token, style);
      }
    },
  };
}
