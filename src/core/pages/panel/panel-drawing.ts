import { holeRadius } from '../../panel/edge.js';
import {
  black,
  cellLine,
  drawBareDots,
  drawJoin,
  drawLetters,
  drawPairBars,
  drawPill,
  drawStrongLines,
  pillWidthMm,
  white,
} from './cells.js';
import { mixed } from '../../colour/mixed.js';
import { drawCellMarks } from './grey-fills.js';
import { joinMarks } from './join-marks.js';
import { pairBars } from './pair-bars.js';
import { panelLines } from './panel-lines.js';
import type { Box, Marks, PanelView } from './panel-view.js';
import { startColumn } from './start-column.js';
import type { MovedLetter, StartColumn } from './start-column.js';
import { panelOf } from './sheet.js';
import type { CellKind, PanelSheet } from './sheet.js';
import { movedLine } from '../surface/shifted.js';
import type { Polyline, Surface } from '../surface/surface.js';
import { drawText, textWidth } from '../surface/text.js';

/** Some stitches of a panel: those that are shown, and their neighbours, shown pale. */
export interface PanelPart {
  holds(s: number): boolean;
  isBeside(s: number): boolean;
}

/**
 * The cells of a panel with their letters, lines and numbers.
 *
 * @param cellMm what a letter has to itself on the page
 * @param window only what may show inside it is drawn, millimetres on the page
 * @param part only some of its stitches, and pale ones beside them
 */
export function drawPanel(
  surface: Surface,
  sheet: PanelSheet,
  kinds: readonly CellKind[],
  view: PanelView,
  cellMm: number,
  window?: Box,
  part?: PanelPart,
): void {
  const { geometry, footprints, fonts, words } = sheet;
  const { centres, shape } = geometry;
  const { scale, centreX, centreY } = view;
  const onPage = (line: Polyline) => movedLine(line, centreX, centreY, scale);
  const at = (s: number): [number, number] => [
    centreX + scale * centres[2 * s],
    centreY + scale * centres[2 * s + 1],
  ];
  const shows = (x: number, y: number, reach: number): boolean =>
    window === undefined ||
    (x > window.left - reach &&
      x < window.right + reach &&
      y > window.top - reach &&
      y < window.bottom + reach);
  /** No stitch reaches further from its centre than two cells. */
  const holds = (s: number) => part === undefined || part.holds(s);
  const cellShows = (s: number) => holds(s) && shows(...at(s), 2 * cellMm);
  /** Letters that the window's edge would cut are whole on the next sheet. */
  const letterShows = (s: number) => holds(s) && shows(...at(s), -0.4 * cellMm);
  const linesThere = (lines: readonly Polyline[]) =>
    lines.map(onPage).filter((line) => shows(line[0], line[1], 2 * cellMm));

  surface.beginGroup('cells', words.chart.groups.panel);
  for (const { fill, stitches } of kinds) {
    const rings = stitches.filter(cellShows).flatMap((s) => footprints.rings(s).map(onPage));
    surface.fillPath(rings, { fill, outline: cellLine });
    if (!part) continue;
    const beside = stitches.filter((s) => part.isBeside(s));
    const pale = mixed(fill, 255, 0.72);
    surface.fillPath(
      beside.flatMap((s) => footprints.rings(s).map(onPage)),
      { fill: pale, outline: paleLine },
    );
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

  const lines = panelLines(geometry, footprints, part);
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
    linesThere(pairBars(geometry, cellMm / scale, part && holds)),
    0.14 * cellMm,
    'pairs',
    words.chart.groups.pairs,
  );

  const capMm = letterCapMm(sheet, scale, cellMm);
  const { bold } = fonts;
  // A part has its numbers outside: all its letters stand in the middle of their cells.
  const column = part
    ? { numbers: [], letters: new Map<number, MovedLetter>() }
    : columnOf(sheet, view, cellMm);
  surface.beginGroup('letters');
  for (const { mark, bead, stitches } of part ? kinds : []) {
    const beside = stitches.filter((s) => part!.isBeside(s)).map(at);
    const style = { face: bold, capMm: 0.8 * capMm, ink: black };
    if (bead) drawLetters(surface, mark, mark, style, beside);
  }
  for (const { mark, bead, ink, stitches } of kinds) {
    const shown = stitches.filter(letterShows);
    const placed = shown.map((s) => column.letters.get(s) ?? { ...xy(at(s)), share: 1 });
    if (bead) {
      const title = words.chart.cells({ letter: mark, name: bead.name, count: stitches.length });
      for (const [share, letters] of byShare(placed)) {
        const style = { face: bold, capMm: share * capMm, ink, tight: share < 1 };
        drawLetters(surface, title, mark, style, letters);
      }
    } else if (mark === '.') {
      const dots = placed.map(({ x, y }): [number, number] => [x, y]);
      drawBareDots(surface, dots, 0.2 * cellMm);
    }
  }
  surface.endGroup();
  const joins = joinMarks(sheet, column, view);
  if (joins.length > 0) {
    surface.beginGroup('joins', words.chart.marks.join);
    for (const mark of joins) {
      if (shows(mark[0], mark[1], -0.3 * cellMm)) drawJoin(surface, mark);
    }
    surface.endGroup();
  }
  if (part) return;
  surface.beginGroup('numbers', words.chart.groups.numbers);
  for (const { round, x, y, digitMm } of column.numbers) {
    if (shows(x, y, -0.4 * cellMm)) drawPill(surface, bold, round, x, y, digitMm);
  }
  surface.endGroup();
}

/** The round numbers of a sheet, and its letters that step aside for them. */
function columnOf(sheet: PanelSheet, view: PanelView, cellMm: number): StartColumn {
  const { bold } = sheet.fonts;
  const capMm = letterCapMm(sheet, view.scale, cellMm);
  const marks = panelOf(sheet).rounds.join('');
  return startColumn(
    sheet.geometry,
    view,
    cellMm,
    capMm,
    (s) => textWidth(marks[s], { face: bold, sizeMm: capMm / bold.capHeight }),
    (round, digitMm) => pillWidthMm(bold, round, digitMm),
  );
}

/** Height of the smallest letter of a sheet, millimetres; 0 where one has no room at all. */
export function leastLetterMm(sheet: PanelSheet, view: PanelView, cellMm: number): number {
  const shares = [...columnOf(sheet, view, cellMm).letters.values()].map(({ share }) => share);
  return letterCapMm(sheet, view.scale, cellMm) * Math.min(1, ...shares.map(drawnShare));
}

/** Height of the letters, millimetres. */
export function letterCapMm({ geometry }: PanelSheet, scale: number, cellMm: number): number {
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  return Math.min(5, 0.58 * cellMm, 0.66 * scale * Math.min(stitchWidthMm, roundHeightMm));
}

const xy = ([x, y]: readonly [number, number]) => ({ x, y });

/** Places of letters by their height in twentieths, the whole ones first. */
function byShare(placed: readonly MovedLetter[]): [share: number, at: [number, number][]][] {
  const found = new Map<number, [number, number][]>();
  for (const { x, y, share } of placed) {
    const drawn = drawnShare(share);
    if (drawn > 0) found.set(drawn, [...(found.get(drawn) ?? []), [x, y]]);
  }
  return [...found].sort(([a], [b]) => b - a);
}

/** Letters of nearly one height are drawn in one. */
const drawnShare = (share: number): number => Math.floor(20 * share + 1e-9) / 20;

const paleLine = { stroke: '#767676', widthMm: 0.1, closed: true } as const;

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
