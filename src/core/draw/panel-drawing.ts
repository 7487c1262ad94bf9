import { holeRadius } from '../geometry/edge.js';
import { stitchesBefore } from '../shape.js';
import {
  black,
  cellLine,
  drawBareDots,
  drawLetters,
  drawPairBars,
  drawPill,
  drawStrongLines,
  pillPerDigit,
  white,
} from './cells.js';
import { drawCellMarks } from './grey-fills.js';
import { pairBars } from './pair-bars.js';
import { panelLines } from './panel-lines.js';
import type { Box, Marks, PanelView } from './panel-view.js';
import type { CellKind, PanelSheet } from './sheet.js';
import type { Polyline, Surface } from './surface.js';
import { drawText } from './text.js';

/**
 * The cells of a panel with their letters, lines and numbers.
 *
 * @param cellMm what a letter has to itself on the page
 * @param window only what may show inside it is drawn, millimetres on the page
 */
export function drawPanel(
  surface: Surface,
  sheet: PanelSheet,
  kinds: readonly CellKind[],
  view: PanelView,
  cellMm: number,
  window?: Box,
): void {
  const { geometry, footprints, fonts, words } = sheet;
  const { centres, shape } = geometry;
  const { scale, centreX, centreY } = view;
  const onPage = (line: Polyline) =>
    Float64Array.from(line, (v, p) => (p % 2 === 0 ? centreX : centreY) + scale * v);
  const at = (s: number): [number, number] => [
    centreX + scale * centres[2 * s],
    centreY + scale * centres[2 * s + 1],
  ];
  const firsts = new Set<number>();
  for (let r = 1; r <= shape.rounds; r++) firsts.add(stitchesBefore(shape, r));
  const shows = (x: number, y: number, reach: number): boolean =>
    window === undefined ||
    (x > window.left - reach &&
      x < window.right + reach &&
      y > window.top - reach &&
      y < window.bottom + reach);
  /** No stitch reaches further from its centre than two cells. */
  const cellShows = (s: number) => shows(...at(s), 2 * cellMm);
  /** Letters that the window's edge would cut are whole on the next sheet. */
  const letterShows = (s: number) => shows(...at(s), -0.4 * cellMm);
  const linesThere = (lines: readonly Polyline[]) =>
    lines.map(onPage).filter((line) => shows(line[0], line[1], 2 * cellMm));

  surface.beginGroup('cells', words.chart.groups.panel);
  for (const { fill, stitches } of kinds) {
    const rings = stitches.filter(cellShows).flatMap((s) => footprints.rings(s).map(onPage));
    surface.fillPath(rings, { fill, outline: cellLine });
  }
  for (const { cellMark, ink, stitches } of kinds) {
    if (cellMark === undefined) continue;
    const cells = stitches.filter(letterShows).map((s) => {
      const [x, y] = at(s);
      return { x, y, tilt: geometry.tilts[s] };
    });
    drawCellMarks(surface, { mark: cellMark, ink }, cells, cellMm);
  }
  surface.endGroup();

  const lines = panelLines(geometry, footprints);
  surface.beginGroup('wedge-lines');
  surface.strokePath(linesThere(lines.wedges), { stroke: black, widthMm: 0.26 });
  surface.endGroup();
  drawStrongLines(surface, linesThere(lines.fives), 0.32, 'five-lines');
  drawStrongLines(
    surface,
    linesThere(lines.start),
    0.5,
    'start-line',
    words.chart.groups.startLine,
  );
  const hole = scale * holeRadius(shape);
  if (shows(centreX, centreY, hole)) {
    surface.circle(centreX, centreY, hole, { fill: white, outline: cellLine });
  }
  drawPairBars(
    surface,
    linesThere(pairBars(geometry, cellMm / scale)),
    0.14 * cellMm,
    'pairs',
    words.chart.groups.pairs,
  );

  const narrowMm = scale * Math.min(shape.stitchWidthMm, shape.roundHeightMm);
  const capMm = Math.min(5, 0.58 * cellMm, 0.66 * narrowMm);
  const smallMm = Math.min(3.4, 0.46 * cellMm);
  const digitMm = Math.min(3, 0.41 * cellMm);
  const lift = (digitMm * pillPerDigit + 0.1 * cellMm + smallMm) / 2;
  // Round 2 begins close to the first stitch of all: its letter and number step back a little.
  const second = stitchesBefore(shape, 2);
  const firstAt = (s: number): [number, number] => {
    const [x, y] = at(s);
    if (s !== second) return [x, y];
    const [fromX, fromY] = at(0);
    const back = (0.14 * cellMm) / Math.hypot(x - fromX, y - fromY);
    return [x + back * (x - fromX), y + back * (y - fromY)];
  };
  surface.beginGroup('letters');
  for (const { mark, bead, ink, stitches } of kinds) {
    const ordinary = stitches.filter((s) => !firsts.has(s) && letterShows(s)).map(at);
    const first = stitches
      .filter((s) => firsts.has(s) && letterShows(s))
      .map((s): [number, number] => [
        firstAt(s)[0],
        firstAt(s)[1] + (s === 0 ? 0 : lift - smallMm / 2),
      ]);
    if (bead) {
      const title = words.chart.cells({ letter: mark, name: bead.name, count: stitches.length });
      drawLetters(surface, title, mark, { face: fonts.bold, capMm, ink }, ordinary);
      drawLetters(
        surface,
        title,
        mark,
        { face: fonts.bold, capMm: smallMm, ink, tight: true },
        first,
      );
    } else if (mark === '.') {
      drawBareDots(surface, [...ordinary, ...first], 0.2 * cellMm);
    }
  }
  surface.endGroup();
  surface.beginGroup('numbers', words.chart.groups.numbers);
  let r = 0;
  for (const s of firsts) {
    const [x, y] = firstAt(s);
    r++;
    if (r > 1 && letterShows(s))
      drawPill(surface, fonts.bold, r, x, y - lift + (digitMm * pillPerDigit) / 2, digitMm);
  }
  if (!letterShows(0)) return surface.endGroup();
  // The first stitch of all has the least room: its number stands in the hole beside it.
  const [firstX, firstY] = at(0);
  const reach = Math.hypot(firstX - centreX, firstY - centreY);
  const inner = reach - 0.72 * smallMm - 0.5 * pillPerDigit * digitMm - 0.05 * cellMm;
  const share = Math.max(0, inner) / reach;
  const besideX = centreX + share * (firstX - centreX);
  const besideY = centreY + share * (firstY - centreY);
  drawPill(surface, fonts.bold, 1, besideX, besideY, digitMm);
  surface.endGroup();
}

export function drawMarks(
  surface: Surface,
  sheet: PanelSheet,
  { centreX, centreY }: PanelView,
  marks: Marks,
  label: { face: PanelSheet['fonts']['bold']; sizeMm: number },
  shown = { startWord: true, direction: true },
): void {
  const { chart } = sheet.words;
  const onPage = (line: Polyline) =>
    Float64Array.from(line, (v, p) => (p % 2 === 0 ? centreX : centreY) + v);
  const word = (text: string, { x, y }: { x: number; y: number }) => {
    const baseline = centreY + y + label.sizeMm * 0.26;
    drawText(surface, text, label, centreX + x, baseline, 'middle');
  };
  surface.beginGroup('start', chart.groups.start);
  surface.fillPath([onPage(marks.triangle)], { fill: black });
  if (shown.startWord) word(chart.start, marks.startWord);
  surface.endGroup();
  if (!shown.direction) return;
  surface.beginGroup('direction', chart.groups.direction);
  surface.strokePath([onPage(marks.arrow)], { stroke: black, widthMm: 0.9 });
  surface.fillPath([onPage(marks.arrowHead)], { fill: black });
  word(chart.direction, marks.directionWord);
  surface.endGroup();
}
