import { backwards, beadsOnly } from '../../core/pattern/stitches.js';
import { drawText, textWidth } from '../../core/pages/surface/text.js';
import type { TextStyle } from '../../core/pages/surface/text.js';
import { folded, runsOf, wedgesOf } from '../../core/pages/lists/runs.js';
import { strungText } from '../../core/pages/lists/stringing.js';
import { strungRounds } from '../../core/thread/strung-rounds.js';
import type { Length } from '../../core/thread/lengths.js';
import type { Flow } from '../flow.js';
import { lineMm } from '../look.js';
import type { Look } from '../look.js';
import { boxesMm, drawBoxes, drawTable, roomIn, tableMm } from '../table.js';
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
  /** Whether a wedge of the panel ends with it, strung as it is from the last one. */
  readonly endsWedge?: boolean;
  /** Whether it stays on the line of the one before it. */
  readonly follows?: boolean;
  /** Width of the boxes of a repeat, which stand in its place, millimetres. */
  readonly boxesMm?: number;
}

/** After every fifth repeat there is so much more room, so that they are counted by a look. */
const afterFiveMm = 2.4;
/** Pairs stand so much further apart than boxes alone. */
const betweenPairsMm = 0.8;

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
export function stringingTokens(
  marks: string,
  r: number,
  wedges = marks.length / r,
): { tokens: Token[]; times: number } {
  const reversed = backwards(marks);
  if (!strungText(marks, r).startsWith('(')) {
    const tokens = countable(beadsOnly(reversed));
    const whole = marks.length === r * wedges;
    return { tokens: whole ? withWedges(tokens, wedgesOf(reversed, r)) : tokens, times: 1 };
  }
  const [{ item, times }] = folded(wedgesOf(reversed, r));
  const inside = countable(beadsOnly(item));
  const close = { text: `) x ${times}`, follows: true, endsWedge: true };
  return { tokens: [{ text: '(' }, ...inside, close], times };
}

/** The runs of a whole round, marked where a wedge ends together with one. */
function withWedges(tokens: readonly Token[], wedges: readonly string[]): Token[] {
  let beads = 0;
  const ends = new Set(wedges.map((wedge) => (beads += beadsOnly(wedge).length)));
  let strung = 0;
  return tokens.map((token) => {
    strung += beadsIn([token]);
    return ends.has(strung) ? { ...token, endsWedge: true } : token;
  });
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
      const { tokens, times } = stringingTokens(marks, round, pattern.shape.wedges);
      grams += weighed ? gramsOf(facts, beads)! : 0;
      // The boxes of both panels side by side at every repeat, or those of one below those of the other.
      const repeatBoxes = repeatsMm(look, times, worked) <= room ? worked : 1;
      const boxes: Token = {
        text: '',
        boxesMm: repeatsMm(look, times, repeatBoxes),
        endsWedge: true,
      };
      const all = Array.from({ length: times > 1 ? worked / repeatBoxes : 0 }, () => boxes);
      const lines = balanced([...tokens, ...all], look.cell, room);
      let soFar = total - beads.length;
      return lines.map((line, n): TableCell[] => {
        const last = n === lines.length - 1;
        soFar = last ? total : soFar + beadsIn(line);
        return [
          text(n === 0 ? roundName(facts, round) : '', look.cellStrong),
          lineCell(flow, chip, line, {
            worked,
            repeatBoxes,
            times,
          }),
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

function tokenMm({ text, letter, boxesMm }: Token, style: TextStyle): number {
  if (boxesMm !== undefined) return boxesMm;
  return textWidth(text, style) + (letter ? chipMm(style) + 0.8 : 0) + tokenGapMm(style);
}

/** How far a line that ends inside a wedge counts as longer than it is: one at a wedge is chosen before it. */
const insideWedge = 1000;

/**
 * Tokens in as few lines as they take, which end at wedges where they can, and else are all about
 * equally long.
 */
export function balanced(tokens: readonly Token[], style: TextStyle, roomMm: number): Token[][] {
  const widths = tokens.map((token) => tokenMm(token, style));
  /** The best way to set the tokens up to one: lines, how many of them end inside a wedge, the squares of their lengths. */
  const ways: { lines: number; cost: number; from: number }[] = [{ lines: 0, cost: 0, from: 0 }];
  for (let to = 1; to <= tokens.length; to++) {
    let best: (typeof ways)[number] | undefined;
    let wide = 0;
    for (let from = to - 1; from >= 0; from--) {
      wide += widths[from];
      if (wide > roomMm && best) break;
      if (tokens[from].follows) continue;
      const lines = ways[from].lines + 1;
      const inside = to < tokens.length && tokens[to - 1].endsWedge !== true;
      const cost = ways[from].cost + (wide / roomMm) ** 2 + (inside ? insideWedge : 0);
      if (!best || lines < best.lines || (lines === best.lines && cost < best.cost)) {
        best = { lines, cost, from };
      }
    }
    ways.push(best!);
  }
  const lines: Token[][] = [];
  for (let to = tokens.length; to > 0; to = ways[to].from) {
    lines.unshift(tokens.slice(ways[to].from, to));
  }
  return lines;
}

/** What the boxes of a repeat take: so many side by side for each time, a little more after every fifth. */
const repeatsMm = (look: Look, times: number, boxes: number): number =>
  repeatLeftMm(look, times - 1, boxes) + boxesMm(look, boxes);

/** How far from the first of them those of a later one stand, counted from 0. */
const repeatLeftMm = (look: Look, n: number, boxes: number): number =>
  n * (boxesMm(look, boxes) + (boxes > 1 ? betweenPairsMm : 0)) + Math.floor(n / 5) * afterFiveMm;

/** A line with a box for each time it is strung, or with one for each repeat at its end. */
function lineCell(
  flow: Flow,
  chip: DrawChip,
  line: readonly Token[],
  { worked, repeatBoxes, times }: { worked: number; repeatBoxes: number; times: number },
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
        for (let n = 0; token.boxesMm !== undefined && n < times; n++) {
          const at = x + repeatLeftMm(look, n, repeatBoxes);
          drawBoxes(surface, look, { left: at, base, boxes: repeatBoxes });
        }
        if (token.letter) {
          const sizeMm = chipMm(style);
          chip(surface, token.letter, { x: x + sizeMm / 2, y: base - 0.36 * style.sizeMm, sizeMm });
        }
        x += tokenMm(token, style);
      }
    },
    draw(surface, left, top) {
      const base = top + 0.78 * high;
      let x = left + before;
      for (const token of line.filter(({ text }) => text !== '')) {
        const from = x + (token.letter ? chipMm(style) + 0.8 : 0);
        drawText(surface, `${token.text} `, style, from, base);
        x += tokenMm(token, style);
      }
    },
  };
}
