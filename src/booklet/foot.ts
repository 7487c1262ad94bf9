import type { Surface } from '../core/pages/surface/surface.js';
import { drawText, textWidth } from '../core/pages/surface/text.js';
import type { TextStyle } from '../core/pages/surface/text.js';
import { flat, isPaired, sides } from '../words/pages/pairs.js';
import type { FlowPage } from './flow-page.js';
import { lineMm, marginMm } from './look.js';
import type { Look } from './look.js';
import { editionNames } from './facts.js';
import type { BookletFacts } from './facts.js';

const dot = '  ·  ';

/**
 * Title, part, panel, length and edition on the left, the page number on the right. Two languages
 * stand below one another where one line cannot hold them.
 */
export function drawFoot(
  surface: Surface,
  facts: BookletFacts,
  { foot: style, tint }: Look,
  { where, ruled }: FlowPage,
  number: string,
): void {
  const { pattern, fonts } = facts;
  const [left, right] = [marginMm, surface.widthMm - marginMm];
  const bold = { ...style, face: fonts.bold };
  const room = right - left - textWidth(number, bold) - 6;
  const { title } = pattern;
  const edition = editionNames(facts);
  // Pictures reach farther down than running text: below them is one line's room.
  const whole = [title, ...[where, ...edition].map(flat)].join(dot);
  const two = ruled && isPaired(where) && textWidth(whole, style) > room;
  const lines = two
    ? sides(where).map((side, n) => fitted(title, side, onSideOf(edition, n), style, room))
    : [fitted(title, flat(where), edition.map(flat), style, room)];
  const last = surface.heightMm - 7.5;
  const first = last - (lines.length - 1) * lineMm(style);
  if (ruled) {
    const rule = first - 0.76 * style.sizeMm - 1.8;
    surface.strokePath([[left, rule, right, rule]], { stroke: tint.rule, widthMm: 0.25 });
  }
  lines.forEach((one, n) =>
    drawText(surface, one.line, one.style, left, first + n * lineMm(style)),
  );
  drawText(surface, number, bold, right, last, 'end');
}

const onSideOf = (names: readonly string[], side: number): string[] =>
  names.map((name) => sides(name)[side] ?? name);

/**
 * What fits on a line, nothing of it cut: first the edition goes, which the cover names too, then the
 * title, then the part, which the head of the page names, then all but what tells lengths apart.
 */
function fitted(
  title: string,
  where: string,
  edition: readonly string[],
  style: TextStyle,
  room: number,
): { line: string; style: TextStyle } {
  const parts = where.split(dot);
  const tries = [
    ...edition.map((_, n) => [title, where, ...edition.slice(0, edition.length - n)]),
    [title, where],
    ...parts.map((_, n) => parts.slice(n)),
  ].map((one) => one.join(dot));
  const line = tries.find((one) => textWidth(one, style) <= room);
  if (line !== undefined) return { line, style };
  const last = tries.at(-1)!;
  return {
    line: last,
    style: { ...style, sizeMm: (style.sizeMm * room) / textWidth(last, style) },
  };
}
