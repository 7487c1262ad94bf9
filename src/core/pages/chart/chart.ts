import { finishedEdge, ringLine } from '../../panel/edge.js';
import { legendOf } from './chart-legend.js';
import { notesOf } from './chart-notes.js';
import { boxesOfFrameMark, drawFrameMark, frameLiftMm, frameMarker } from '../panel/frame-mark.js';
import { drawHookMark, hookMark } from '../panel/hook-mark.js';
import { drawHeading, headingMm } from '../panel/heading.js';
import { drawMarks, drawPanel, leastLetterMm, letterCapMm } from '../panel/panel-drawing.js';
import { boxAround, boxesOfMarks, boxOfWord, fitPanel, marksAt } from '../panel/panel-view.js';
import type { WordSize } from '../panel/panel-view.js';
import { boxOfTicks, drawRimTicks, rimTicks } from '../panel/rim-ticks.js';
import {
  boxesOfRings,
  boxOfWedgeNumbers,
  drawWedgeNumbers,
  wedgeNumbers,
} from '../panel/wedge-numbers.js';
import { marginMm, papers, smallestPaper } from '../surface/paper.js';
import type { Paper } from '../surface/paper.js';
import { cellKinds, panelOf } from '../panel/sheet.js';
import type { CellKind, PanelSheet } from '../panel/sheet.js';
import type { Surface } from '../surface/surface.js';
import { SvgSurface, unescapeXml, escapeXml } from '../surface/svg-surface.js';
import { drawText, mmPerPoint, textWidth } from '../surface/text.js';

export type { PanelSheet } from '../panel/sheet.js';

/** Cells smaller than this on paper are hard to read: the chart asks for larger paper. */
const leastCellMm = 3.15;
const metadataId = 'rondure-pattern';

/** Letters smaller than this, millimetres, want a word of where they stand larger. */
const smallLetterMm = 2;

/** The same as large as its notes allow; they tell of larger letters where these are small. */
function layOutTelling(
  sheet: PanelSheet,
  kinds: readonly CellKind[],
  page: Surface,
  pt: number,
  alone: boolean,
) {
  const { widthMm, heightMm } = page;
  const plain = layOut(sheet, kinds, widthMm, heightMm, pt);
  const { view, cellMm } = plain;
  const least = alone ? leastLetterMm(sheet, view, cellMm) : letterCapMm(sheet, view.scale, cellMm);
  return least < smallLetterMm ? layOut(sheet, kinds, widthMm, heightMm, pt, true) : plain;
}

/** Where everything of a chart lies on a page of one size. */
function layOut(
  sheet: PanelSheet,
  kinds: readonly CellKind[],
  widthMm: number,
  heightMm: number,
  notesPt = 9,
  larger = false,
) {
  const { geometry, words, fonts } = sheet;
  const inner = widthMm - 2 * marginMm;
  const legend = legendOf(sheet, kinds, inner);
  const notes = notesOf(sheet, inner, notesPt, larger);
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
  // Where the frame lies is told by the bead face, upright as it is worn.
  const frame = sheet.seen ? undefined : sheet.pattern.frame;
  const markAt = frame && frameMarker(geometry, frame, size(words.frame.word));
  const handAt = sheet.seen && aroundWorking(sheet, labels, size(words.booklet.work.working.hook));
  const ticksAt = (scale: number) => rimTicks(geometry, scale, fonts.bold, frame !== undefined);
  const { view, marks } = fitPanel(geometry, space, labels, {
    lift: markAt ? frameLiftMm : 0,
    boxAt: (scale) =>
      boxAround(
        { left: 0, top: 0, right: 0, bottom: 0 },
        boxOfTicks(ticksAt(scale)),
        markAt?.(scale).box,
        handAt?.(scale).box,
      ),
    numbersAt: (scale) => ticksAt(scale).map(({ box }) => box),
  });
  const frameMark = markAt?.(view.scale);
  const working = handAt?.(view.scale);
  const cellMm = cellSize(sheet, view.scale);
  const ticks = ticksAt(view.scale);
  const taken = [
    ...boxesOfMarks(marks, labels),
    ...(frameMark ? boxesOfFrameMark(frameMark, size(words.frame.word)) : []),
    ...(working ? [working.hook.box, ...boxesOfRings(working.numbers)] : []),
  ];
  return { legend, notes, label, view, marks, frameMark, working, cellMm, ticks, taken };
}

/** The hook and the numbers of the wedges around the chart that the worker sees, at any scale. */
function aroundWorking(
  { geometry, fonts }: PanelSheet,
  labels: { start: WordSize; direction: WordSize },
  word: WordSize,
) {
  const edge = finishedEdge(geometry);
  const rim = ringLine(geometry, geometry.shape.rounds);
  const step = { x: rim[rim.length - 2], y: rim[rim.length - 1] };
  const numbersAt = wedgeNumbers(geometry);
  return (scale: number) => {
    const ticks = rimTicks(geometry, scale, fonts.bold).map(({ box }) => box);
    const marks = marksAt(geometry, edge, step, scale, labels, 0, ticks);
    const start = { x: scale * step.x, y: scale * step.y };
    const hook = hookMark(start, geometry.direction, word);
    const words = [boxOfWord(marks.startWord, labels.start), hook.box];
    words.push(boxOfWord(marks.directionWord, labels.direction), ...ticks);
    const numbers = numbersAt(scale, { ...marks, words });
    return { hook, numbers, box: boxAround(boxOfWedgeNumbers(numbers), hook.box) };
  };
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
  const { chart, booklet } = sheet.words;
  const named = chart.chartTitle(
    panels.length > 1 ? { title, panel: panelOf(sheet).name } : { title },
  );
  return sheet.seen ? `${named} · ${booklet.work.working.part}` : named;
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
    description: sheet.words.chart.describeChart({ ...shape, working: sheet.seen !== undefined }),
  });
  drawChart(surface, sheet, true);
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

/**
 * Draws the chart of one panel, as large as the surface's page allows.
 *
 * @param alone a sheet by itself says where letters stand larger as soon as one is small; a booklet
 *   has enlarged sheets where most are
 */
export function drawChart(surface: Surface, sheet: PanelSheet, alone = false): void {
  const kinds = cellKinds(sheet);
  const { words, fonts } = sheet;
  const { widthMm, heightMm } = surface;
  const tight = layOutTelling(sheet, kinds, surface, 9, alone);
  const roomy = layOutTelling(sheet, kinds, surface, 10.5, alone);
  const layout = roomy.view.scale > 0.999 * tight.view.scale ? roomy : tight;
  const { legend, notes, label, view, marks, cellMm } = layout;
  const place = { left: marginMm, top: marginMm, widthMm: widthMm - 2 * marginMm };
  drawHeading(surface, sheet, kinds, titleOf(sheet), place);
  drawPanel(surface, sheet, kinds, view, cellMm);
  if (layout.frameMark) drawFrameMark(surface, sheet, view, layout.frameMark, label);
  drawMarks(surface, sheet, view, marks, label);
  const centre = { x: view.centreX, y: view.centreY };
  drawRimTicks(surface, layout.ticks, fonts.bold, centre, layout.taken, words.chart.marks.tick);
  if (layout.working) {
    const { hook, numbers } = layout.working;
    const text = words.booklet.work.working.hook;
    drawHookMark(surface, hook, centre, { text, style: label });
    drawWedgeNumbers(surface, fonts.bold, numbers, centre);
  }
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
