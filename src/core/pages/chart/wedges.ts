import { pairStart } from '../../panel/links.js';
import { stitchesBefore } from '../../panel/shape.js';
import { black, cellLine, drawBareDots, drawLetters, white } from '../panel/cells.js';
import { legendOf } from './chart-legend.js';
import { drawCellMarks } from '../panel/grey-fills.js';
import { drawHeading, headingMm } from '../panel/heading.js';
import { marginMm, smallestPaper } from '../surface/paper.js';
import type { Paper } from '../surface/paper.js';
import { cellKinds, panelOf } from '../panel/sheet.js';
import type { CellKind, PanelSheet } from '../panel/sheet.js';
import type { Polyline, Surface } from '../surface/surface.js';
import { SvgSurface } from '../surface/svg-surface.js';
import { wedgesAlike } from './wedges-alike.js';
import { drawText, mmPerPoint, shortened, textWidth, wrapped } from '../surface/text.js';

/** Smallest and largest cells on paper. */
const leastCellMm = 3.4;
const mostCellMm = 6.5;
/** Largest cells of a triangle that stands for all. */
const mostAloneMm = 9;
/** Room for row numbers beside a triangle, and for its name and arrow above. */
const sideMm = 8;
const aboveMm = 12;
const betweenMm = 4;

interface Layout {
  readonly paper: Paper;
  readonly cellMm: number;
  readonly pages: number;
  /** Middle of the rim's upper border of each wedge's triangle, millimetres on the tall page. */
  readonly tops: readonly { x: number; y: number }[];
  readonly legendTop: number;
}

/** Triangles side by side on one paper, as many as keep their cells large enough. */
function acrossOn(
  paper: Paper,
  rounds: number,
  triangles: number,
): { perRow: number; cellMm: number } {
  const inner = paper.widthMm - 2 * marginMm;
  const cell = (perRow: number) => (inner / perRow - sideMm) / rounds;
  let perRow = 1;
  while (perRow < Math.min(4, triangles) && cell(perRow + 1) >= leastCellMm) perRow++;
  const most = triangles === 1 ? mostAloneMm : mostCellMm;
  return { perRow, cellMm: Math.min(most, Math.floor(cell(perRow) * 100) / 100) };
}

function layOut(sheet: PanelSheet, triangles: number, howLines: number, legendMm: number): Layout {
  const { rounds } = sheet.geometry.shape;
  const paper = smallestPaper((one) => acrossOn(one, rounds, triangles).cellMm >= leastCellMm);
  const { perRow, cellMm } = acrossOn(paper, rounds, triangles);
  const columnMm = (paper.widthMm - 2 * marginMm) / perRow;
  const blockMm = aboveMm + rounds * cellMm + betweenMm;
  const bottomOf = (page: number) => (page + 1) * paper.heightMm - marginMm;
  let page = 0;
  let y = marginMm + headingMm(sheet) + howLines * lineMm + 4;
  const fits = (height: number) => {
    if (y + height <= bottomOf(page) + betweenMm) return;
    page++;
    y = page * paper.heightMm + marginMm + 8;
  };
  const tops: { x: number; y: number }[] = [];
  for (let wedge = 0; wedge < triangles; wedge++) {
    const column = wedge % perRow;
    if (column === 0) fits(blockMm);
    const numbers = sheet.geometry.direction === 1 ? sideMm / 2 : -sideMm / 2;
    tops.push({ x: marginMm + (column + 0.5) * columnMm + numbers, y: y + aboveMm });
    if (column === perRow - 1 || wedge === triangles - 1) y += blockMm;
  }
  fits(legendMm + betweenMm);
  return { paper, cellMm, pages: page + 1, tops, legendTop: y };
}

const lineMm = 9.5 * mmPerPoint * 1.3;

/**
 * One triangle a wedge, or one for all where they are alike, rim up, as one tall SVG of whole pages one below the other: row r is
 * round r and has r cells, in the order of work as the arrows show.
 *
 * @throws RondureError `glyph-missing`
 */
export function wedgesSvg(sheet: PanelSheet): string {
  const { words, fonts, pattern, geometry } = sheet;
  const { wedges, rounds } = geometry.shape;
  const { direction } = geometry;
  const kinds = cellKinds(sheet);
  const note = { face: fonts.regular, sizeMm: 9.5 * mmPerPoint };
  const { beadsFace } = geometry.shape;
  const alike = wedgesAlike(sheet);
  const triangles = alike ? 1 : wedges;
  const { wedgeChart } = words.booklet;
  const how = [
    ...(alike
      ? [wedgeChart.alike({ wedges }), wedgeChart.how({ direction })]
      : [words.chart.wedgesHow({ wedges, direction })]),
    words.chart.workerNote({ beadsFace, direction }),
    ...(wedges * rounds < 10 ? [] : [words.chart.marks.tick]),
  ].join(' ');
  // The paper depends on the rounds alone, so that lines can be broken before all is laid out.
  const { paper } = layOut(sheet, triangles, 2, 0);
  const inner = paper.widthMm - 2 * marginMm;
  const lines = wrapped(how, note, inner);
  const legend = legendOf(sheet, kinds, inner);
  const layout = layOut(sheet, triangles, lines.length, legend.heightMm);
  const title = words.chart.wedgesTitle({
    title: pattern.title,
    ...(pattern.panels.length > 1 && { panel: panelOf(sheet).name }),
  });
  const surface = new SvgSurface({
    widthMm: paper.widthMm,
    heightMm: paper.heightMm * layout.pages,
    pageHeightMm: paper.heightMm,
    title,
    description: words.chart.describeWedges({ wedges, rounds }),
  });
  drawHeading(surface, sheet, kinds, title, { left: marginMm, top: marginMm, widthMm: inner });
  lines.forEach((line, n) => {
    drawText(surface, line, note, marginMm, marginMm + headingMm(sheet) + 3.4 + n * lineMm);
  });
  for (let page = 0; page < layout.pages; page++) {
    const text = words.chart.pageOf({ page: page + 1, pages: layout.pages });
    const y = page * paper.heightMm + marginMm + 4.6;
    drawText(surface, text, note, paper.widthMm - marginMm, y, 'end');
    const again = shortened(title, note, inner - 40);
    if (page > 0) drawText(surface, again, note, marginMm, y);
  }
  const marks = marksByStitch(kinds);
  for (let wedge = 0; wedge < triangles; wedge++) {
    drawTriangle(surface, sheet, marks, wedge, layout.tops[wedge], layout.cellMm);
  }
  legend.draw(surface, marginMm, layout.legendTop);
  return surface.toString();
}

/** How each stitch of a panel is drawn. */
export function marksByStitch(kinds: readonly CellKind[]): Map<number, CellKind> {
  return new Map(kinds.flatMap((kind) => kind.stitches.map((s) => [s, kind] as const)));
}

/** What stands beside a triangle and above it, millimetres. */
export const triangleAround = { side: sideMm, above: aboveMm } as const;

/**
 * One wedge as a triangle with its row numbers, its name and the way to read.
 *
 * @param kindOf of `marksByStitch`
 * @param wedge 0-based
 * @param top middle of the rim's upper border
 */
export function drawTriangle(
  surface: Surface,
  sheet: PanelSheet,
  kindOf: ReadonlyMap<number, CellKind>,
  wedge: number,
  top: { readonly x: number; readonly y: number },
  cellMm: number,
): void {
  const { geometry, words, fonts } = sheet;
  const { shape, direction } = geometry;
  const { rounds } = shape;
  const name = `wedge-${wedge + 1}`;
  const middleX = (r: number, j: number) => top.x + direction * (j - (r - 1) / 2) * cellMm;
  const middleY = (r: number) => top.y + (rounds - r + 0.5) * cellMm;
  const half = cellMm / 2;
  const cells = new Map<CellKind, { rings: Polyline[]; at: [number, number][] }>();
  const pairs: Polyline[] = [];
  const fives: Polyline[] = [];
  for (let r = 1; r <= rounds; r++) {
    const y = middleY(r);
    for (let j = 0; j < r; j++) {
      const kind = kindOf.get(stitchesBefore(shape, r) + wedge * r + j);
      if (!kind) continue;
      const x = middleX(r, j);
      const ring = [x - half, y - half, x + half, y - half, x + half, y + half, x - half, y + half];
      const group = cells.get(kind) ?? { rings: [], at: [] };
      group.rings.push(ring);
      group.at.push([x, y]);
      cells.set(kind, group);
    }
    const pair = pairStart(shape, r);
    if (pair !== undefined) {
      const x = (middleX(r, pair) + middleX(r, pair + 1)) / 2;
      const [above, below] = [y + 0.3 * cellMm, y + 0.64 * cellMm];
      pairs.push([x - 0.2 * cellMm, above, x + 0.2 * cellMm, above, x, below]);
    }
    if (r % 5 === 0 && r < rounds) {
      const reach = ((r + 1) * cellMm) / 2;
      fives.push([top.x - reach, y - half, top.x + reach, y - half]);
    }
  }
  surface.beginGroup(name, words.chart.wedge({ wedge: wedge + 1 }));
  surface.beginGroup(`${name}-cells`);
  for (const [{ fill, cellMark, ink }, { rings, at }] of cells) {
    surface.fillPath(rings, { fill, outline: cellLine });
    if (cellMark === undefined) continue;
    const upright = at.map(([x, y]) => ({ x, y, tilt: 0 }));
    drawCellMarks(surface, { mark: cellMark, ink }, upright, cellMm);
  }
  surface.endGroup();
  surface.strokePath(fives, { stroke: black, widthMm: 0.4 });
  // A triangle on each doubled pair points to the stitch below that both are worked into.
  surface.beginGroup(`${name}-pairs`, words.chart.groups.pairs);
  surface.fillPath(pairs, { fill: black, outline: { stroke: white, widthMm: 0.2, closed: true } });
  surface.endGroup();
  surface.beginGroup(`${name}-letters`);
  const capMm = Math.min(3.6, 0.59 * cellMm);
  for (const [{ mark, bead, ink, stitches }, { at }] of cells) {
    if (bead) {
      const title = words.chart.cells({ letter: mark, name: bead.name, count: stitches.length });
      drawLetters(surface, title, mark, { face: fonts.bold, capMm, ink }, at);
    } else if (mark === '.') {
      drawBareDots(surface, at, 0.2 * cellMm);
    }
  }
  surface.endGroup();
  drawRowTicks(surface, sheet, wedge, top.y, (j) => middleX(rounds, j));
  surface.beginGroup(`${name}-numbers`, words.chart.groups.numbers);
  for (let r = 1; r <= rounds; r++) {
    const face = r % 5 === 0 ? fonts.bold : fonts.regular;
    const style = { face, sizeMm: Math.min(3.2, 0.82 * cellMm) };
    const x = middleX(r, 0) - direction * (half + 1.2);
    const y = middleY(r) + (style.sizeMm * face.capHeight) / 2;
    drawText(surface, String(r), style, x, y, direction === 1 ? 'end' : 'start');
  }
  surface.endGroup();
  drawReadingArrow(surface, sheet, name, wedge, top, rounds * cellMm);
  surface.endGroup();
}

/** Above the last round, a tick and a number at every tenth stitch of the whole round. */
function drawRowTicks(
  surface: Surface,
  { geometry, words, fonts }: PanelSheet,
  wedge: number,
  topY: number,
  middleX: (j: number) => number,
): void {
  const { rounds } = geometry.shape;
  const style = { face: fonts.bold, sizeMm: 1.75 / fonts.bold.capHeight };
  const before = wedge * rounds;
  const tens = Array.from({ length: rounds }, (_, j) => j).filter(
    (j) => (before + j + 1) % 10 === 0,
  );
  if (tens.length === 0) return;
  surface.beginGroup(`wedge-${wedge + 1}-ticks`, words.chart.marks.tick);
  const lines = tens.map((j) => [middleX(j), topY - 0.3, middleX(j), topY - 1.2]);
  surface.strokePath(lines, { stroke: black, widthMm: 0.35 });
  for (const j of tens)
    drawText(surface, String(before + j + 1), style, middleX(j), topY - 1.7, 'middle');
  surface.endGroup();
}

/** Name of the wedge and, beside it, the arrow that says which way its rows are read. */
function drawReadingArrow(
  surface: Surface,
  { geometry, words, fonts }: PanelSheet,
  name: string,
  wedge: number,
  top: { x: number; y: number },
  rimMm: number,
): void {
  const { direction } = geometry;
  const title = { face: fonts.bold, sizeMm: 11 * mmPerPoint };
  const from = top.x - (direction * rimMm) / 2;
  const anchor = direction === 1 ? 'start' : 'end';
  const named = words.chart.wedge({ wedge: wedge + 1 });
  drawText(surface, named, title, from, top.y - 5, anchor);
  const tail = from + direction * Math.max(21, textWidth(named, title) + 3);
  const tip = tail + direction * Math.max(10, Math.min(30, rimMm - 21));
  const y = top.y - 6.2;
  const neck = tip - direction * 3.4;
  surface.beginGroup(`${name}-arrow`, words.chart.wedgeWay({ direction }));
  surface.strokePath([[tail, y, neck, y]], { stroke: black, widthMm: 0.7 });
  surface.fillPath([[tip, y, neck, y - 1.5, neck, y + 1.5]], { fill: black });
  surface.endGroup();
}
