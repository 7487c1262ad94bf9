import { beadLookOf } from '../../core/colour/colour-words.js';
import { inkOn } from '../../core/colour/contrast.js';
import { drawPatchMarks } from '../../core/pages/panel/patch-marks.js';
import { drawText, textWidth } from '../../core/pages/surface/text.js';
import type { PatternBead } from '../../core/beads/bead.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { MaterialRow } from '../../core/pages/lists/materials.js';
import type { ShoppingList } from '../../core/pages/lists/shopping.js';
import type { Flow } from '../flow.js';
import { isPaired } from '../../words/pages/pairs.js';
import { lineMm } from '../look.js';
import type { Look } from '../look.js';
import { roomIn, textCell } from '../table.js';
import type { Column, TableCell } from '../table.js';
import { greysOf, headMm } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** The columns of the table of beads; in large print the code stands below the name. */
export function beadColumns({ look, wide }: Flow, { pattern, words }: BookletFacts): Column[] {
  const { columns: heads } = words.booklet.materials;
  const size = commonSize(pattern);
  const charted = heads.charted(pattern.panels.length);
  const least = look.large
    ? { bead: 21, charted: 29, reserve: 37, grams: 28 }
    : { bead: 14, charted: 21, reserve: 29, grams: 19 };
  const widths = {
    bead: least.bead,
    id: look.large ? 0 : idMm(look, pattern, heads.id),
    charted: Math.max(least.charted, headMm(charted, look)),
    reserve: Math.max(least.reserve, headMm(heads.reserve, look)),
    grams: Math.max(least.grams, headMm(heads.grams, look)),
  };
  const rest = Object.values(widths).reduce((sum, width) => sum + width, 0);
  return [
    { head: heads.bead, widthMm: widths.bead },
    {
      head: size === undefined ? heads.name : words.lists.aside(heads.name, size),
      widthMm: wide - rest,
    },
    ...(look.large ? [] : [{ head: heads.id, widthMm: widths.id }]),
    { head: charted, widthMm: widths.charted, end: true },
    { head: heads.reserve, widthMm: widths.reserve, end: true },
    { head: heads.grams, widthMm: widths.grams, end: true },
  ];
}

/** The size of the beads where they all have one: their column says it once. */
function commonSize({ beads }: Pattern): string | undefined {
  const sizes = new Set(beads.map(({ size }) => size));
  return sizes.size === 1 ? [...sizes][0] : undefined;
}

/** As wide as the longest code, within limits. */
function idMm(look: Look, { beads }: Pattern, head: string): number {
  const widths = beads.map(({ id }) => textWidth(id, look.small));
  return Math.min(32, Math.max(headMm(head, look), ...widths.map((one) => one + 3.4)));
}

/** A row for each bead that is worked, and their sum; none where nothing is decided. */
export function beadRows(
  flow: Flow,
  facts: BookletFacts,
  list: ShoppingList,
  charted: readonly Pick<MaterialRow, 'letter' | 'count'>[],
): TableCell[][] {
  const { pattern, words } = facts;
  const { look } = flow;
  const say = words.booklet.materials;
  const columns = beadColumns(flow, facts);
  const numbers = columns.length - 3;
  const text = (content: string, n: number, style = look.body): TableCell =>
    textCell(content, style, columns[n]);
  const { number } = words.lists;
  const grams = (value: number | undefined) =>
    value === undefined ? say.unknownGrams : words.lists.decimal(value, 1);
  const amounts = (
    count: number,
    have: { withReserve: number; grams?: number | undefined },
    style = look.body,
  ) => [
    text(number(count), numbers, style),
    text(number(have.withReserve), numbers + 1, style),
    text(grams(have.grams), numbers + 2, style),
  ];
  const beads = pattern.beads.filter((_, n) => charted[n].count > 0);
  const rows = beads.map((bead): TableCell[] => {
    const { count } = charted.find(({ letter }) => letter === bead.letter)!;
    const have = list.beads.find(({ letter }) => letter === bead.letter)!;
    const name =
      bead.size === undefined || commonSize(pattern)
        ? bead.name
        : words.lists.aside(bead.name, bead.size);
    const id = bead.id === bead.name ? '' : bead.id;
    /** What it is called, and beside or below that what it looks like. */
    const described = (title: string): TableCell => {
      const appearance = words.beadLooks.look(beadLookOf(bead));
      const both = `${title} · ${appearance}`;
      const short = !isPaired(appearance) && textWidth(both, look.body) <= roomIn(columns[1]);
      if (short) return { lines: [both], style: look.body };
      const named = textCell(title, look.body, columns[1]);
      const looks = textCell(appearance, look.body, columns[1]);
      const second =
        looks.second === undefined ? {} : { second: named.lines.length + looks.second };
      return { lines: [...named.lines, ...looks.lines], style: look.body, ...second };
    };
    const named = look.large
      ? [described(id === '' ? name : words.lists.aside(name, id))]
      : [described(name), text(id, 2, look.small)];
    return [sampleCell(flow, facts, bead), ...named, ...amounts(count, have)];
  });
  if (rows.length === 0) return [];
  const sum = charted.reduce((all, { count }) => all + count, 0);
  const total = [
    text('', 0),
    text(say.total, 1, look.strong),
    ...(look.large ? [] : [text('', 2)]),
    ...amounts(sum, list.totals, look.strong),
  ];
  return [...rows, total];
}

/** A patch in the bead's colour, or with its grey and mark, and its letter. */
function sampleCell({ look }: Flow, facts: BookletFacts, { letter, hex }: PatternBead): TableCell {
  const grey = greysOf(facts)?.get(letter);
  const fill = grey?.hex ?? hex;
  const ink = inkOn(fill);
  const style = { ...look.strong, ink };
  const high = 1.28 * style.sizeMm;
  const wide = 1.85 * high;
  return {
    heightMm: Math.max(high, lineMm(look.body)),
    draw(surface, x, y) {
      const [left, right] = [x + 1 + high / 2, x + 1 + wide - high / 2];
      const middle = y + high / 2;
      const line = [[left, middle, right, middle]];
      surface.strokePath(line, { stroke: '#4a4a4a', widthMm: high });
      surface.strokePath(line, { stroke: fill, widthMm: high - 0.4 });
      const capMm = style.sizeMm * style.face.capHeight;
      const patch = { left: x + 1, top: y, right: x + 1 + wide, bottom: y + high, roundEnds: true };
      const clear = { widthMm: textWidth(letter, style), heightMm: capMm };
      if (grey) drawPatchMarks(surface, { mark: grey.mark, ink }, patch, clear);
      drawText(surface, letter, style, (left + right) / 2, middle + capMm / 2, 'middle');
    },
  };
}
