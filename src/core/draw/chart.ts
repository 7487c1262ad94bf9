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
import { legendOf } from './chart-legend.js';
import { notesOf } from './chart-notes.js';
import { drawFrameMark, frameLiftMm, frameMarker } from './frame-mark.js';
import { drawHeading, headingMm } from './heading.js';
import { panelLines } from './panel-lines.js';
import { pairBars } from './pair-bars.js';
import { fitPanel } from './panel-view.js';
import type { Marks, PanelView } from './panel-view.js';
import { marginMm, papers, smallestPaper } from './paper.js';
import type { Paper } from './paper.js';
import { cellKinds, panelOf } from './sheet.js';
import type { CellKind, PanelSheet } from './sheet.js';
import type { Polyline, Surface } from './surface.js';
import { SvgSurface, unescapeXml, escapeXml } from './svg-surface.js';
import { drawText, mmPerPoint, textWidth } from './text.js';

export type { PanelSheet } from './sheet.js';

/** Cells smaller than this on paper are hard to read: the chart asks for larger paper. */
const leastCellMm = 3.3;
const metadataId = 'rondure-pattern';

/** Where everything of a chart lies on a page of one size. */
function layOut(
  sheet: PanelSheet,
  kinds: readonly CellKind[],
  widthMm: number,
  heightMm: number,
  notesPt = 9,
) {
  const { geometry, words, fonts } = sheet;
  const inner = widthMm - 2 * marginMm;
  const legend = legendOf(sheet, kinds, inner);
  const notes = notesOf(sheet, inner, notesPt);
  const label = { face: fonts.bold, sizeMm: 10 * mmPerPoint };
  const size = (text: string) => ({
    widthMm: textWidth(text, label),
    heightMm: label.sizeMm * 0.95,
  });
  const below = 3 + legend.heightMm + 3.5 + notes.heightMm;
  const space = {
    left: marginMm,
    top: marginMm + headingMm + 1.5,
    right: widthMm - marginMm,
    bottom: heightMm - marginMm - below,
  };
  const labels = { start: size(words.chart.start), direction: size(words.chart.direction) };
  const { frame } = sheet.pattern;
  const markAt = frame && frameMarker(geometry, frame, size(words.frame.word));
  const outer = markAt && { lift: frameLiftMm, boxAt: (scale: number) => markAt(scale).box };
  const { view, marks } = fitPanel(geometry, space, labels, outer);
  const frameMark = markAt?.(view.scale);
  return { legend, notes, label, view, marks, frameMark, cellMm: cellSize(sheet, view.scale) };
}

/** What a letter has to itself: the stitch as a square, less where it is long and thin. */
function cellSize(sheet: PanelSheet, scale: number): number {
  const { stitchWidthMm: w, roundHeightMm: h } = sheet.geometry.shape;
  return scale * Math.min(Math.sqrt(w * h), 1.25 * Math.min(w, h));
}

/** The smallest paper on which a chart's letters can be read. */
export function chartPaper(sheet: PanelSheet): Paper {
  const kinds = cellKinds(sheet);
  return smallestPaper((paper) => {
    const { cellMm } = layOut(sheet, kinds, paper.widthMm, paper.heightMm);
    return cellMm >= leastCellMm;
  });
}

/** The chart's title, with the panel's name where a pattern has two. */
function titleOf(sheet: PanelSheet): string {
  const { title, panels } = sheet.pattern;
  return sheet.words.chart.chartTitle(
    panels.length > 1 ? { title, panel: panelOf(sheet).name } : { title },
  );
}

/**
 * The chart of one panel as an SVG page: the bead face, every stitch coloured and lettered, with
 * all that is needed to read it.
 *
 * @throws RondureError `glyph-missing`
 */
export function chartSvg(sheet: PanelSheet, paper = chartPaper(sheet)): string {
  const { widthMm, heightMm } = paper;
  const { shape } = sheet.geometry;
  const surface = new SvgSurface({
    widthMm,
    heightMm,
    title: titleOf(sheet),
    description: sheet.words.chart.describeChart(shape),
  });
  drawChart(surface, sheet);
  return surface.toString();
}

/** The same chart with the pattern file's text inside, so that it can be opened again. */
export function withPatternInSvg(svg: string, patternJson: string): string {
  // The two characters that JSON allows and XML does not, as JSON escapes.
  const json = patternJson.replace(/\uFFFE/g, '\\ufffe').replace(/\uFFFF/g, '\\uffff');
  const at = svg.indexOf('<defs>');
  const kept = `<metadata id="${metadataId}">${escapeXml(json)}</metadata>\n`;
  return svg.slice(0, at) + kept + svg.slice(at);
}

/** The pattern file's text that a chart carries, if it carries one. */
export function patternInSvg(svg: string): string | undefined {
  const found = /<metadata\s+id="rondure-pattern"\s*>([^<]*)<\/metadata>/.exec(svg);
  return found ? unescapeXml(found[1]) : undefined;
}

/** Draws the chart of one panel, as large as the surface's page allows. */
export function drawChart(surface: Surface, sheet: PanelSheet): void {
  const kinds = cellKinds(sheet);
  const { words, fonts } = sheet;
  const { widthMm, heightMm } = surface;
  const tight = layOut(sheet, kinds, widthMm, heightMm);
  const roomy = layOut(sheet, kinds, widthMm, heightMm, 10.5);
  const layout = roomy.view.scale > 0.999 * tight.view.scale ? roomy : tight;
  const { legend, notes, label, view, marks, cellMm } = layout;
  const place = { left: marginMm, top: marginMm, widthMm: widthMm - 2 * marginMm };
  drawHeading(surface, sheet, kinds, titleOf(sheet), place);
  drawPanel(surface, sheet, kinds, view, cellMm);
  if (layout.frameMark) drawFrameMark(surface, sheet, view, layout.frameMark, label);
  drawMarks(surface, sheet, view, marks, label);
  const paper = papers.find((one) => one.widthMm === widthMm && one.heightMm === heightMm);
  if (paper && paper.name !== 'A4') {
    const note = { face: fonts.regular, sizeMm: 9.5 * mmPerPoint };
    const text = words.chart.paper({ paper: paper.name });
    drawText(surface, text, note, widthMm - marginMm, marginMm + 4.6, 'end');
  }
  const panelBottom = view.centreY + marks.box.bottom;
  const spare = heightMm - marginMm - panelBottom - legend.heightMm - notes.heightMm;
  const gap = Math.min(8, spare * 0.46);
  legend.draw(surface, marginMm, panelBottom + gap);
  notes.draw(surface, marginMm, panelBottom + gap + legend.heightMm + gap);
}

function drawPanel(
  surface: Surface,
  sheet: PanelSheet,
  kinds: readonly CellKind[],
  view: PanelView,
  cellMm: number,
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

  surface.beginGroup('cells', words.chart.groups.panel);
  for (const { fill, stitches } of kinds) {
    const rings = stitches.flatMap((s) => footprints.rings(s).map(onPage));
    surface.fillPath(rings, { fill, outline: cellLine });
  }
  surface.endGroup();

  const lines = panelLines(geometry, footprints);
  surface.beginGroup('wedge-lines');
  surface.strokePath(lines.wedges.map(onPage), { stroke: black, widthMm: 0.26 });
  surface.endGroup();
  drawStrongLines(surface, lines.fives.map(onPage), 0.32, 'five-lines');
  drawStrongLines(
    surface,
    lines.start.map(onPage),
    0.5,
    'start-line',
    words.chart.groups.startLine,
  );
  const hole = scale * holeRadius(shape);
  surface.circle(centreX, centreY, hole, { fill: white, outline: cellLine });
  drawPairBars(
    surface,
    pairBars(geometry, cellMm / scale).map(onPage),
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
    const ordinary = stitches.filter((s) => !firsts.has(s)).map(at);
    const first = stitches
      .filter((s) => firsts.has(s))
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
    if (r > 1)
      drawPill(surface, fonts.bold, r, x, y - lift + (digitMm * pillPerDigit) / 2, digitMm);
  }
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
  word(chart.start, marks.startWord);
  surface.endGroup();
  surface.beginGroup('direction', chart.groups.direction);
  surface.strokePath([onPage(marks.arrow)], { stroke: black, widthMm: 0.9 });
  surface.fillPath([onPage(marks.arrowHead)], { fill: black });
  word(chart.direction, marks.directionWord);
  surface.endGroup();
}
