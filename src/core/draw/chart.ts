import { legendOf } from './chart-legend.js';
import { notesOf } from './chart-notes.js';
import { drawFrameMark, frameLiftMm, frameMarker } from './frame-mark.js';
import { drawHeading, headingMm } from './heading.js';
import { drawMarks, drawPanel } from './panel-drawing.js';
import { fitPanel } from './panel-view.js';
import { marginMm, papers, smallestPaper } from './paper.js';
import type { Paper } from './paper.js';
import { cellKinds, panelOf } from './sheet.js';
import type { CellKind, PanelSheet } from './sheet.js';
import type { Surface } from './surface.js';
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
    top: marginMm + headingMm(sheet) + 1.5,
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
export function cellSize(sheet: PanelSheet, scale: number): number {
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

/** How large a bead is drawn on a page of this size, millimetres. */
export function chartBeadMm(sheet: PanelSheet, widthMm: number, heightMm: number): number {
  return layOut(sheet, cellKinds(sheet), widthMm, heightMm).cellMm;
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
