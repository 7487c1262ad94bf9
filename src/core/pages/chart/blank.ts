import { holeRadius } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { stitchesBefore } from '../../panel/shape.js';
import { blankPage, drawnShare, markHoleShare, wordRoom } from './blank-page.js';
import type { BlankPage } from './blank-page.js';
import { black, white } from '../panel/cells.js';
import { drawMarks } from '../panel/panel-drawing.js';
import { panelLines } from '../panel/panel-lines.js';
import { marginMm } from '../surface/paper.js';
import type { PanelSheet } from '../panel/sheet.js';
import type { Polyline, Surface } from '../surface/surface.js';
import { SvgSurface } from '../surface/svg-surface.js';
import { drawText, mmPerPoint, shortened, textWidth, wrapped } from '../surface/text.js';

/** Light enough to vanish under a crayon, dark enough to colour along. */
const cellLine = { stroke: '#b4b4b4', widthMm: 0.2, closed: true } as const;
const guideLine = { stroke: '#8c8c8c', widthMm: 0.22 } as const;
const startLine = { stroke: '#5a5a5a', widthMm: 0.4 } as const;
const paleInk = '#b4b4b4';

/**
 * An empty chart to colour by hand, as an SVG page: the bead face, every cell outlined, and a
 * round mark in each corner by which a photograph of the page is read.
 *
 * @throws RondureError `glyph-missing`
 */
export function blankSvg(sheet: PanelSheet): string {
  const { widthMm, heightMm } = blankPage(sheet.geometry);
  const surface = new SvgSurface({
    widthMm,
    heightMm,
    title: sheet.pattern.title,
    description: sheet.words.blank.describe(sheet.geometry.shape),
  });
  drawBlank(surface, sheet);
  return surface.toString();
}

/** The same on any surface that is as large as its page. */
export function drawBlank(surface: Surface, sheet: PanelSheet): void {
  const page = blankPage(sheet.geometry);
  drawCorners(surface, page);
  drawTexts(surface, sheet, page);
  drawCells(surface, sheet, page);
  const label = { face: sheet.fonts.bold, sizeMm: 10 * mmPerPoint };
  const { start } = sheet.words.chart;
  const { widthMm: room } = wordRoom.start;
  const fits = textWidth(start, label) <= room;
  const shown = { startWord: fits, direction: true };
  drawMarks(surface, sheet, page.view, page.marks, label, shown);
  if (fits) return;
  // A longer word ends where its room does, beside the mark, and begins farther out.
  const { startWord } = page.marks;
  const end = page.view.centreX + startWord.x + room / 2;
  const baseline = page.view.centreY + startWord.y + label.sizeMm * 0.26;
  drawText(surface, start, label, end, baseline, 'end');
}

function drawCorners(surface: Surface, { corners, markRadiusMm }: BlankPage): void {
  surface.beginGroup('corners');
  for (const [x, y] of corners) surface.circle(x, y, markRadiusMm, { fill: black });
  const [x, y] = corners[0];
  surface.circle(x, y, markRadiusMm * markHoleShare, { fill: white });
  surface.endGroup();
}

function drawTexts(surface: Surface, sheet: PanelSheet, page: BlankPage): void {
  const { fonts, words, geometry, pattern } = sheet;
  const { shape, direction } = geometry;
  const left = marginMm + 2 * page.markRadiusMm + 5;
  const wide = page.widthMm - 2 * left;
  const big = { face: fonts.bold, sizeMm: 15 * mmPerPoint };
  const small = { face: fonts.regular, sizeMm: 9 * mmPerPoint };
  drawText(surface, shortened(pattern.title, big, wide), big, left, marginMm + 4.6);
  const first = [
    words.blank.shapeLine({
      wedges: shape.wedges,
      rounds: shape.rounds,
      stitches: geometry.count,
      paper: page.paper,
    }),
    words.chart.workLine(shape),
  ].flatMap((text) => wrapped(text, small, wide).map((part) => part.replace(/[ ·]+$/, '')));
  const line = small.sizeMm * 1.3;
  first.forEach((text, n) => {
    drawText(surface, text, small, left, marginMm + 9.4 + n * line);
  });
  const notes = [
    words.chart.faceNote({ hand: shape.hand, beadsFace: shape.beadsFace, direction }),
    words.blank.how,
  ].flatMap((note) => wrapped(note, small, wide));
  const top = page.heightMm - marginMm - notes.length * line;
  notes.forEach((text, n) => drawText(surface, text, small, left, top + (n + 0.8) * line));
}

/** A cell's outer ring, drawn in towards the stitch's centre; panel millimetres. */
export function insetRing(
  ring: ArrayLike<number>,
  geometry: PanelGeometry,
  s: number,
  share: number,
): Float64Array {
  const centre = [geometry.centres[2 * s], geometry.centres[2 * s + 1]];
  return Float64Array.from(ring, (v, p) => centre[p % 2] + share * (v - centre[p % 2]));
}

function drawCells(surface: Surface, sheet: PanelSheet, page: BlankPage): void {
  const { geometry, footprints, fonts, words } = sheet;
  const { scale, centreX, centreY } = page.view;
  const onPage = (line: Polyline) =>
    Float64Array.from(line, (v, p) => (p % 2 === 0 ? centreX : centreY) + scale * v);
  const lines = panelLines(geometry, footprints);
  surface.beginGroup('guides');
  surface.strokePath([...lines.wedges, ...lines.fives].map(onPage), guideLine);
  surface.strokePath(lines.start.map(onPage), startLine);
  surface.endGroup();

  surface.beginGroup('cells', words.chart.groups.panel);
  const rings: Float64Array[] = [];
  for (let s = 0; s < geometry.count; s++) {
    const [outer] = footprints.rings(s);
    if (outer) rings.push(onPage(insetRing(outer, geometry, s, drawnShare)));
  }
  surface.fillPath(rings, { fill: white, outline: cellLine });
  const hole = scale * holeRadius(geometry.shape);
  surface.circle(centreX, centreY, hole, { fill: white, outline: cellLine });
  surface.endGroup();

  const { stitchWidthMm, roundHeightMm, rounds } = geometry.shape;
  const capMm = Math.min(1.7, 0.36 * scale * Math.min(stitchWidthMm, roundHeightMm));
  surface.beginGroup('numbers', words.chart.groups.numbers);
  for (let r = 1; r <= rounds; r++) {
    const s = stitchesBefore(geometry.shape, r);
    const style = { face: fonts.regular, sizeMm: capMm / fonts.regular.capHeight, ink: paleInk };
    const text = String(r);
    const x = centreX + scale * geometry.centres[2 * s] - textWidth(text, style) / 2;
    drawText(surface, text, style, x, centreY + scale * geometry.centres[2 * s + 1] + capMm / 2);
  }
  surface.endGroup();
}
