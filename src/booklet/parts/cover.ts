import { drawText, mmPerPoint, textWidth } from '../../core/draw/text.js';
import type { TextStyle } from '../../core/draw/text.js';
import { acrossMm } from '../../core/geometry/edge.js';
import { panelGeometry } from '../../core/geometry/panel.js';
import { beadCounts, lettersInWorkingOrder } from '../../core/pattern/stitches.js';
import type { Pattern } from '../../core/pattern/schema.js';
import { projectLevel } from '../../core/texts/level.js';
import type { Words } from '../../words/index.js';
import { flat, sides } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import { accent, lineMm, linesOf } from '../look.js';
import type { StructureType } from '../structure.js';
import { drawWorkedBeads } from '../worked-beads.js';
import { editionNames, greysOf, whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** What kind of project it is. */
export function levelText(pattern: Pattern, { booklet }: Words): string {
  return booklet.level[projectLevel(pattern)];
}

/** The worked panels on a cover are at least this large, where smaller lettering makes it so. */
const leastRadiusMm = 30;

/** Title, the worked panels, size and author. */
export function addCover(flow: Flow, facts: BookletFacts): void {
  const { pattern, words, fonts, author } = facts;
  const { look } = flow;
  const say = words.booklet;
  const middle = look.widthMm / 2;
  const titleStyle = (points: number): TextStyle => ({
    face: fonts.bold,
    sizeMm: points * mmPerPoint,
    ink: accent,
  });
  const sizes = [34, 26, 20, 17].map(titleStyle);
  const style =
    sizes.find((one) => linesOf(pattern.title, one, flow.wide).length <= 2) ?? sizes.at(-1)!;
  const title = linesOf(pattern.title, style, flow.wide);
  const counts = [...beadCounts(pattern).values()];
  const { shape } = pattern;
  const said = [
    say.size({ acrossMm: acrossMm(shape) }),
    pattern.swatch ? say.sizeFrom.swatch : say.sizeFrom.model,
    levelText(pattern, words),
    say.amounts({
      panels: pattern.panels.length,
      rounds: shape.rounds,
      beads: counts.reduce((sum, n) => sum + n, 0),
      colours: counts.filter((n) => n > 0).length,
    }),
    ...editionNames(facts),
  ].flatMap((text) =>
    sides(text).map((one, side, all) => ({
      text: one,
      language: all.length === 1 ? undefined : flow.languages[side],
    })),
  );
  const name = { ...look.subheading, face: fonts.regular };
  const by = author === undefined ? [] : linesOf(say.by(author), name, flow.wide);
  const centred = (
    lines: readonly string[],
    one: TextStyle,
    top: number,
    {
      x = middle,
      type = 'P',
      language,
    }: { x?: number; type?: StructureType; language?: string | undefined } = {},
  ) => {
    const node = lines.length > 0 ? flow.section.add(type, { language }) : undefined;
    flow.draw((surface) => {
      lines.forEach((line, n) =>
        drawText(surface, line, one, x, top + (n + 0.78) * lineMm(one), 'middle'),
      );
    }, node);
    return top + lines.length * lineMm(one);
  };
  flow.page(whereOf(facts, say.parts.cover), undefined, say.parts.cover);
  const kindStyle = { ...look.body, ink: accent };
  const kind = textWidth(say.kind, kindStyle) <= flow.wide ? [flat(say.kind)] : undefined;
  let top = centred(kind ?? linesOf(say.kind, kindStyle, flow.wide), kindStyle, 24);
  top = centred(title, style, top + 2, { type: 'H1' }) + 4;
  const many = pattern.panels.length;
  const gap = 8;
  const columnMm = (flow.wide - gap * (many - 1)) / many;
  const laid = (share: number) => {
    const style = { ...look.body, sizeMm: share * look.body.sizeMm };
    const below = said.map(({ text, language }) => ({
      lines: linesOf(text, style, flow.wide),
      language,
    }));
    const belowMm =
      below.flatMap(({ lines }) => lines).length * lineMm(style) + by.length * lineMm(name) + 10;
    const bottom = look.bottom - belowMm;
    const names = pattern.panels.map(({ name }) =>
      many === 1 ? [] : linesOf(name, style, columnMm),
    );
    const namesMm = Math.max(...names.map((lines) => lines.length)) * lineMm(style) + 2;
    const radius = Math.min(columnMm, bottom - top - namesMm - 4) / 2;
    return { style, below, bottom, names, namesMm, radius };
  };
  // Two languages in large print would leave the picture no room.
  const layouts = [1, 0.85, 0.7].map(laid);
  const {
    style: text,
    below,
    bottom,
    names,
    namesMm,
    radius,
  } = layouts.find((one) => one.radius >= leastRadiusMm) ?? layouts.at(-1)!;
  const nameMm = Math.max(...names.flat().map((line) => textWidth(line, text)), 0);
  const stepMm = Math.max(2 * radius, nameMm) + gap;
  const y = (top + bottom - namesMm) / 2;
  pattern.panels.forEach((panel, n) => {
    const geometry = panelGeometry(shape, { startDegrees: panel.startDegrees });
    const marks = lettersInWorkingOrder(panel);
    const greys = greysOf(facts);
    const hexes = new Map(
      pattern.beads.map(({ letter, hex }) => [letter, greys?.get(letter)?.hex ?? hex]),
    );
    const x = middle + (n - (many - 1) / 2) * stepMm;
    const alt = flat(say.alt.panel({ panel: panel.name }));
    flow.draw(
      (surface) => {
        const hexOf = (s: number) => hexes.get(marks[s]);
        drawWorkedBeads(surface, { geometry, hexOf }, { x, y, radiusMm: radius });
      },
      flow.section.add('Figure', { alt }),
    );
    centred(names[n], text, y + radius + 2, { x });
  });
  top = bottom + 2;
  for (const { lines, language } of below) top = centred(lines, text, top, { language });
  centred(by, name, top + 4);
}
