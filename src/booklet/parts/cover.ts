import { drawText, mmPerPoint, textWidth } from '../../core/pages/surface/text.js';
import type { TextStyle } from '../../core/pages/surface/text.js';
import { acrossRange } from '../../core/panel/across.js';
import { beadCounts } from '../../core/pattern/stitches.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { projectLevel } from '../../core/pages/lists/level.js';
import type { Words } from '../../words/index.js';
import { flat, sides } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import { lineMm, linesOf } from '../look.js';
import type { StructureType } from '../structure.js';
import { drawThreadRow } from '../thread-row.js';
import { drawFinished } from './cover-picture.js';
import type { Space } from './cover-picture.js';
import { editionNames, whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** What kind of project it is. */
export function levelText(pattern: Pattern, { booklet }: Words): string {
  return booklet.level[projectLevel(pattern)];
}

/** The tinted ground reaches so near to the paper's edges: printers leave no less white. */
const edgeMm = 10;
/** The picture of a cover is at least this high, where smaller lettering makes it so. */
const leastPictureMm = 78;

/** Title, photograph or finished piece, size, level, time and author. */
export function addCover(flow: Flow, facts: BookletFacts, thread: readonly string[]): void {
  const { pattern, words, fonts, author, time } = facts;
  const { look } = flow;
  const { tint } = look;
  const say = words.booklet;
  const middle = look.widthMm / 2;
  const titleStyle = (points: number): TextStyle => ({
    face: fonts.text.bold,
    sizeMm: points * mmPerPoint,
    ink: tint.accent,
  });
  const sizes = [44, 36, 28, 22, 17].map(titleStyle);
  const style =
    sizes.find((one) => linesOf(pattern.title, one, flow.wide).length <= 2) ?? sizes.at(-1)!;
  const title = linesOf(pattern.title, style, flow.wide);
  const counts = [...beadCounts(pattern).values()];
  const { shape } = pattern;
  const said = [
    say.size({ across: acrossRange(pattern) }),
    pattern.swatch?.roundHeightMm ? say.sizeFrom.swatch : say.sizeFrom.model,
    levelText(pattern, words),
    ...(time === undefined ? [] : [say.work.time({ time })]),
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
  const name = { ...look.strong, ink: tint.accent };
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
  flow.page(whereOf(facts, say.parts.cover), undefined, { bookmark: { name: say.parts.cover } });
  const groundAt = { top: 0, bottom: 0 };
  flow.draw((surface) => {
    const { top, bottom } = groundAt;
    const [left, right] = [edgeMm, look.widthMm - edgeMm];
    surface.fillPath([[left, top, right, top, right, bottom, left, bottom]], { fill: tint.pale });
  });
  const kindStyle = { ...look.body, ink: tint.accent };
  const kind = textWidth(say.kind, kindStyle) <= flow.wide ? [flat(say.kind)] : undefined;
  let top = centred(kind ?? linesOf(say.kind, kindStyle, flow.wide), kindStyle, 16);
  top = centred(title, style, top + 3, { type: 'H1' }) + 5;
  const laid = (share: number) => {
    const style = { ...look.body, sizeMm: share * look.body.sizeMm };
    const below = said.map(({ text, language }) => ({
      lines: linesOf(text, style, flow.wide),
      language,
    }));
    const belowMm =
      below.flatMap(({ lines }) => lines).length * lineMm(style) + by.length * lineMm(name) + 14;
    return { style, below, bottom: look.heightMm - 17 - belowMm };
  };
  // Two languages in large print would leave the picture no room.
  const layouts = [1, 0.85, 0.7].map(laid);
  const {
    style: text,
    below,
    bottom,
  } = layouts.find((one) => one.bottom - top >= leastPictureMm) ?? layouts.at(-1)!;
  Object.assign(groundAt, { top, bottom });
  addPictures(flow, facts, { top: top + 5, bottom: bottom - 5 });
  top = bottom + 5;
  const beads = thread.slice(0, Math.max(1, Math.ceil(thread.length / 12)));
  const threadY = top;
  flow.draw((surface) => {
    drawThreadRow(surface, beads, { left: look.left, right: look.right, y: threadY });
  });
  top += 3;
  for (const { lines, language } of below) top = centred(lines, text, top, { language });
  centred(by, name, top + 3);
}

/** The photograph, else the front; the back small beside it. */
function addPictures(
  flow: Flow,
  facts: BookletFacts,
  { top, bottom }: { top: number; bottom: number },
): void {
  const { pattern, words, photo } = facts;
  const { look } = flow;
  const say = words.booklet;
  const { panels, frame } = pattern;
  const [left, right] = [look.left - 4, look.right + 4];
  const altOf = (panel: string) =>
    flat(frame ? say.work.alt.purse({ panel }) : say.alt.panel({ panel }));
  if (photo !== undefined) {
    const share = Math.min((right - left) / photo.widthPx, (bottom - top) / photo.heightPx);
    const [widthMm, heightMm] = [share * photo.widthPx, share * photo.heightPx];
    const at = { left: (left + right - widthMm) / 2, top: (top + bottom - heightMm) / 2 };
    flow.draw(
      (surface) => surface.photo(photo, { ...at, widthMm, heightMm }),
      flow.section.add('Figure', { alt: flat(say.work.alt.photo) }),
    );
    return;
  }
  const spaces =
    panels.length === 1
      ? [{ left, top, right, bottom }]
      : besideEachOther({ left, top, right, bottom });
  panels.forEach(({ name }, panel) => {
    flow.draw(
      (surface) => drawFinished(surface, facts, panel, spaces[panel]),
      flow.section.add('Figure', { alt: altOf(name) }),
    );
  });
}

/** The first large, the second smaller and lower, over the corner that the first leaves free. */
function besideEachOther(space: Space): Space[] {
  const [wide, high] = [space.right - space.left, space.bottom - space.top];
  const large = Math.min(0.74 * wide, high);
  const small = Math.min(0.36 * wide, 0.6 * high);
  return [
    { ...space, right: space.left + large, bottom: space.top + Math.min(high, 1.2 * large) },
    { ...space, left: space.right - small, top: space.bottom - 1.15 * small },
  ];
}
