import { pairStart } from '../../core/panel/links.js';
import { beadsOnly } from '../../core/pattern/stitches.js';
import { runPieces } from '../../core/pages/lists/lines.js';
import { partBody, roundBody } from '../../core/pages/lists/rounds.js';
import type { RoundPart } from '../../core/pages/lists/rounds.js';
import { folded, wedgesOf } from '../../core/pages/lists/runs.js';
import { textWidth } from '../../core/pages/surface/text.js';
import type { TextStyle } from '../../core/pages/surface/text.js';
import type { Shape } from '../../core/panel/shape.js';
import type { Words } from '../../words/index.js';
import type { Flow } from '../flow.js';
import { lineMm } from '../look.js';
import { boxesMm, drawTable, roomIn, tableMm } from '../table.js';
import type { Column, TableCell, TextCell } from '../table.js';
import { headMm, roundName, roundNameMm, timesWorked } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** A round, or the part of it that one length reaches; stitches from 0. */
export interface RoundPiece extends RoundPart {
  readonly round: number;
}

/** Some rounds that follow one another, and the beads worked before them. */
export interface RoundsOf {
  readonly panel: number;
  readonly pieces: readonly RoundPiece[];
  readonly total: number;
  /** What stands before them, on the same page as the first of them. */
  readonly heading: string;
  /** What `Flow.pageOf` knows their page by. */
  readonly mark: string;
  /** Room for what must stand below the last of them, on the same page, millimetres. */
  readonly endMm?: number;
}

/**
 * Rounds in working order with boxes and running totals.
 *
 * @returns the beads worked up to their end
 */
export function addRounds(flow: Flow, facts: BookletFacts, rounds: RoundsOf): number {
  const { pattern, words } = facts;
  const { look } = flow;
  const say = words.booklet.work;
  const { number } = words.lists;
  const { rounds: all } = pattern.panels[rounds.panel];
  const counts = rounds.pieces.map(({ round, from, to }) => ({
    stitches: to - from,
    beads: beadsOnly(all[round - 1].slice(from, to)).length,
  }));
  const bare = counts.find(({ stitches, beads }) => stitches !== beads);
  const columns = roundColumns(flow, facts, bare !== undefined);
  const one = (text: string, style: TextStyle): TableCell => ({ lines: [text], style });
  let { total } = rounds;
  const rows = rounds.pieces.map((piece, n): TableCell[] => {
    const { stitches, beads } = counts[n];
    total += beads;
    const count = stitches === beads ? number(beads) : `${number(beads)}/${number(stitches)}`;
    const wedges = pieceTexts(pattern.shape, piece, all[piece.round - 1], words);
    return [
      { lines: [roundName(facts, piece.round)], style: look.cellStrong, boxes: timesWorked(facts) },
      workCell(wedges, look.cell, roomIn(columns[1])),
      one(count, look.cell),
      one(number(total), look.cellStrong),
    ];
  });
  const padMm = 0.25;
  const about = bare ? [say.mixed(bare)] : [];
  const keepMm = tableMm(flow, columns, rows.slice(0, 2), padMm);
  // A heading that would break beside the text stands over it.
  const beside = flow.highOf(rounds.heading, look.subheading, flow.textLeft - flow.left - 4);
  if (about.length > 0 && flow.hangs && beside > 1.5 * lineMm(look.subheading)) {
    const aboutMm = flow.highOf(about[0], look.body, flow.textWide) + lineMm(look.body);
    flow.titled(rounds.heading, [], { keepMm: aboutMm + keepMm });
    flow.paragraph(about[0]);
  } else flow.titled(rounds.heading, about, { keepMm });
  flow.mark(rounds.mark);
  drawTable(flow, columns, rows, { rowHeads: true, padMm, endMm: rounds.endMm ?? 0 });
  return total;
}

/** The columns of the list of rounds: three quarters of the width are for the work. */
export function roundColumns(
  { look, wide }: Pick<Flow, 'look' | 'wide'>,
  facts: BookletFacts,
  mixed: boolean,
): Column[] {
  const say = facts.words.booklet;
  const round = roundNameMm(facts, look, boxesMm(look, timesWorked(facts)));
  const { heads } = say.work;
  const least = look.large
    ? { mixed: 32, count: 24, total: 26 }
    : { mixed: 18, count: 12.5, total: 14 };
  const count = Math.max(mixed ? least.mixed : least.count, headMm(heads.count, look));
  const total = Math.max(least.total, headMm(heads.total, look));
  return [
    { head: say.rounds.round, widthMm: round },
    { head: say.rounds.work, widthMm: wide - round - count - total },
    { head: say.work.heads.count, widthMm: count, end: true },
    { head: say.work.heads.total, widthMm: total, end: true },
  ];
}

/** What is worked in each wedge of a round, equal neighbours once; round 1 is one text. */
export function wedgeTexts(
  shape: Pick<Shape, 'increase'>,
  r: number,
  marks: string,
  words: Words,
): string[] {
  if (pairStart(shape, r) === undefined) return [roundBody(shape, r, marks, words)];
  return folded(wedgesOf(marks, r)).map(({ item, times }) =>
    roundBody(shape, r, item.repeat(times), words),
  );
}

/** What is worked in each wedge of a piece; where it does not begin or end with its round, dots. */
export function pieceTexts(
  shape: Pick<Shape, 'increase'>,
  { round, from, to }: RoundPiece,
  marks: string,
  words: Words,
): string[] {
  const aligned = from % round === 0 && to % round === 0;
  const texts = aligned
    ? wedgeTexts(shape, round, marks.slice(from, to), words)
    : [partBody(shape, round, marks, { from, to }, words)];
  if (from > 0) texts[0] = `… ${texts[0]}`;
  if (to < marks.length) texts[texts.length - 1] += ' …';
  return texts;
}

const spaces = '   ';

/** An increase at the end of a wedge stays with what stands before it: alone on a line it puzzles. */
function withIncrease(pieces: readonly string[]): readonly string[] {
  const [before, last] = pieces.slice(-2);
  if (last === undefined || !last.startsWith('[')) return pieces;
  return [...pieces.slice(0, -2), `${before} ${last}`];
}

/** Wedges in lines, thin lines between them; none breaks that fits on a line. */
function workCell(wedges: readonly string[], style: TextStyle, widthMm: number): TextCell {
  const lines: string[] = [];
  const dividers: number[][] = [];
  let line = '';
  let places: number[] = [];
  const end = () => {
    lines.push(line);
    dividers.push(places);
    line = '';
    places = [];
  };
  wedges.forEach((wedge, n) => {
    const whole = textWidth(wedge, style) <= widthMm;
    const pieces = whole ? [wedge] : withIncrease(runPieces(wedge));
    pieces.forEach((piece, k) => {
      const between = k === 0 && n > 0 ? spaces : ' ';
      if (line !== '' && textWidth(line + between + piece, style) > widthMm) {
        // Where a wedge ends with its line, the thin line stands there.
        if (k === 0 && n > 0) places.push(textWidth(line, style) + textWidth(spaces, style) / 2);
        end();
      }
      if (line !== '') {
        if (k === 0 && n > 0) places.push(textWidth(line, style) + textWidth(spaces, style) / 2);
        line += between;
      }
      line += piece;
    });
  });
  end();
  return { lines, style, dividers };
}
