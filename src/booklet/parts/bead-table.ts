import { inkOn } from '../../core/colour/contrast.js';
import { drawCellMarks } from '../../core/draw/grey-fills.js';
import { drawText } from '../../core/draw/text.js';
import type { PatternBead } from '../../core/pattern/schema.js';
import type { MaterialRow } from '../../core/texts/materials.js';
import type { ShoppingList } from '../../core/texts/shopping.js';
import type { Flow } from '../flow.js';
import { lineMm } from '../look.js';
import { textCell } from '../table.js';
import type { Column, TableCell } from '../table.js';
import { greysOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** The columns of the table of beads; in large print the code stands below the name. */
export function beadColumns({ look, wide }: Flow, { pattern, words }: BookletFacts): Column[] {
  const { columns: heads } = words.booklet.materials;
  const widths = look.large
    ? { bead: 21, id: 0, charted: 29, reserve: 37, grams: 28 }
    : { bead: 15, id: 32, charted: 21, reserve: 29, grams: 19 };
  const rest = Object.values(widths).reduce((sum, width) => sum + width, 0);
  return [
    { head: heads.bead, widthMm: widths.bead },
    { head: heads.name, widthMm: wide - rest },
    ...(look.large ? [] : [{ head: heads.id, widthMm: widths.id }]),
    { head: heads.charted(pattern.panels.length), widthMm: widths.charted, end: true },
    { head: heads.reserve, widthMm: widths.reserve, end: true },
    { head: heads.grams, widthMm: widths.grams, end: true },
  ];
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
    const name = bead.size === undefined ? bead.name : `${bead.name}, ${bead.size}`;
    const id = bead.id === bead.name ? '' : bead.id;
    const named = look.large
      ? [text([name, id].filter((part) => part !== '').join(', '), 1)]
      : [text(name, 1), text(id, 2, look.small)];
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
      const at = { x: (left + right) / 2, y: middle, tilt: 0 };
      if (grey) drawCellMarks(surface, { mark: grey.mark, ink }, [at], high);
      const base = middle + (style.sizeMm * style.face.capHeight) / 2;
      drawText(surface, letter, style, at.x, base, 'middle');
    },
  };
}
