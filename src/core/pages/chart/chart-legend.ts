import { drawPatchMarks } from '../panel/patch-marks.js';
import { onSide } from '../../../words/pages/pairs.js';
import type { CellKind, PanelSheet } from '../panel/sheet.js';
import type { Surface } from '../surface/surface.js';
import { drawText, mmPerPoint, shortened, textWidth } from '../surface/text.js';
import { drawBareDots } from '../panel/cells.js';

/** A key laid out: known height first, drawn later. */
export interface Legend {
  readonly heightMm: number;
  draw(surface: Surface, left: number, top: number): void;
}

const gap = 6;

/**
 * The key: a patch with its letter, the bead's name and id, and its count, in columns read
 * downward. Names too long for their column end in an ellipsis.
 */
export function legendOf(sheet: PanelSheet, kinds: readonly CellKind[], widthMm: number): Legend {
  const { fonts, words } = sheet;
  const many = kinds.length > 16;
  const columns = Math.max(1, Math.floor((widthMm + gap) / (many ? 66 : 100)));
  const perColumn = Math.ceil(kinds.length / columns);
  const sizeMm = (many ? 9 : kinds.length > 10 ? 10 : 11) * mmPerPoint;
  const rowMm = sizeMm * (many ? 1.36 : 1.45);
  const columnMm = (widthMm - gap * (columns - 1)) / columns;
  const patch = { widthMm: sizeMm * 1.6, heightMm: rowMm - 0.7 };
  const name = { face: fonts.regular, sizeMm };
  const bold = { face: fonts.bold, sizeMm };

  function drawRow(surface: Surface, kind: CellKind, x: number, y: number): void {
    const right = x + patch.widthMm;
    const bottom = y + patch.heightMm;
    const outline = { stroke: '#555555', widthMm: 0.15, closed: true };
    surface.fillPath([[x, y, right, y, right, bottom, x, bottom]], { fill: kind.fill, outline });
    const middle = y + patch.heightMm / 2;
    if (kind.cellMark !== undefined) {
      const clear = {
        widthMm: textWidth(kind.mark, bold),
        heightMm: sizeMm * fonts.bold.capHeight,
      };
      const mark = { mark: kind.cellMark, ink: kind.ink };
      drawPatchMarks(surface, mark, { left: x, top: y, right, bottom }, clear);
    }
    const baseline = middle + (sizeMm * fonts.regular.capHeight) / 2;
    if (kind.bead) {
      const style = { ...bold, ink: kind.ink };
      drawText(surface, kind.mark, style, x + patch.widthMm / 2, baseline, 'middle');
    } else if (kind.mark === '.') {
      drawBareDots(surface, [[x + patch.widthMm / 2, middle]], 0.7);
    }
    const amount = words.chart.count(kind.stitches.length);
    drawText(surface, amount, bold, x + columnMm, baseline, 'end');
    const from = right + 2;
    const room = columnMm - patch.widthMm - 2 - textWidth(amount, bold) - 2.5;
    if (!kind.bead) {
      const said = kind.mark === '.' ? words.chart.bare : words.chart.undecided;
      const one = textWidth(said, name) > room ? onSide(said, 0) : said;
      drawText(surface, shortened(one, name, room), name, from, baseline);
      return;
    }
    const same = kind.bead.id === kind.bead.name;
    const id = same ? '' : shortened(kind.bead.id, name, room * 0.45);
    const idMm = id === '' ? 0 : textWidth(id, name) + 2;
    const said = shortened(kind.bead.name, name, room - idMm);
    drawText(surface, said, name, from, baseline);
    const idAt = from + textWidth(said, name) + 2;
    if (id !== '') drawText(surface, id, { ...name, ink: '#555555' }, idAt, baseline);
  }

  return {
    heightMm: perColumn * rowMm,
    draw(surface, left, top) {
      surface.beginGroup('key', words.chart.groups.key);
      kinds.forEach((kind, k) => {
        const column = Math.floor(k / perColumn);
        const row = k - column * perColumn;
        drawRow(surface, kind, left + column * (columnMm + gap), top + row * rowMm);
      });
      surface.endGroup();
    },
  };
}
