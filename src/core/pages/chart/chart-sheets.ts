import { finishedEdge, ringLine } from '../../panel/edge.js';
import { cellSize } from './chart.js';
import { boxesOfFrameMark, drawFrameMark, frameLiftMm, frameMarker } from '../panel/frame-mark.js';
import { mapOutline } from '../panel/key-map.js';
import { drawMarks, drawPanel } from '../panel/panel-drawing.js';
import { boxAround, boxesOfMarks, boxOfWord, marksAt } from '../panel/panel-view.js';
import type { Box, Marks, WordSize } from '../panel/panel-view.js';
import { drawRimTicks, rimTicks } from '../panel/rim-ticks.js';
import { cellKinds } from '../panel/sheet.js';
import type { PanelSheet } from '../panel/sheet.js';
import { drawOverlaps, drawSurround, mostSheets, sheetWindow } from './sheet-surround.js';
import type { ChartSheet, SheetPage, Surround } from './sheet-surround.js';
import { mmPerPoint, textWidth } from '../surface/text.js';
import { mostShared, contains, sheetsNeeded, tiled } from '../panel/tiles.js';
import type { Tile } from '../panel/tiles.js';

/** The chart of a panel, enlarged over as many sheets as it takes, each overlapping the next. */
export function chartSheets(sheet: PanelSheet, page: SheetPage, heading: string): ChartSheet[] {
  const { geometry, words, fonts } = sheet;
  const { hand, beadsFace } = geometry.shape;
  const { direction } = geometry;
  const said = words.booklet.enlarged;
  const notes = [words.chart.faceNote({ hand, beadsFace, direction }), said.how];
  const titleOf = (one: number, sheets: number) =>
    words.lists.aside(heading, said.sheet({ sheet: one, sheets }));
  const window = sheetWindow(page, titleOf(mostSheets, mostSheets), notes, fonts);
  const size = { widthMm: window.right - window.left, heightMm: window.bottom - window.top };
  const label = { face: fonts.bold, sizeMm: page.textPoints * mmPerPoint };
  const wordSize = (text: string) => ({
    widthMm: textWidth(text, label),
    heightMm: label.sizeMm * 0.95,
  });
  const markWords = {
    start: wordSize(words.chart.start),
    direction: wordSize(words.chart.direction),
  };
  const edge = finishedEdge(geometry);
  const rim = ringLine(geometry, geometry.shape.rounds);
  const step = { x: rim[rim.length - 2], y: rim[rim.length - 1] };
  const { frame } = sheet.pattern;
  const markAt = frame && frameMarker(geometry, frame, wordSize(words.frame.word));

  function laid(cellMm: number) {
    const scale = cellMm / cellSize(sheet, 1);
    const lift = markAt ? frameLiftMm : 0;
    const ticks = rimTicks(geometry, scale, fonts.bold, frame !== undefined);
    const numbers = ticks.map((tick) => tick.box);
    const marks = marksAt(geometry, edge, step, scale, markWords, lift, numbers);
    const frameMark = markAt?.(scale);
    // Ticks take the room that there is: no sheet is added for them.
    const box = boxAround(marks.box, frameMark?.box);
    const { stitchWidthMm, roundHeightMm } = geometry.shape;
    const overlapMm = 2.2 * scale * Math.max(stitchWidthMm, roundHeightMm);
    return {
      scale,
      cellMm,
      marks,
      frameMark,
      ticks,
      box,
      overlapMm,
      sheets: sheetsNeeded(box, size, overlapMm),
    };
  }
  type Laid = ReturnType<typeof laid>;
  /** As large as the same number of sheets allows. */
  function grown(least: Laid): Laid {
    let most = least;
    for (let larger = 1.3; larger > 1.001; larger = 1 + (larger - 1) / 2) {
      const tried = laid(Math.min(most.cellMm * larger, mostBeadMm(page)));
      if (tried.sheets <= most.sheets) most = tried;
    }
    return most;
  }
  let layout = grown(laid(page.leastBeadMm));
  // Sheets that are nearly alike help nobody: rather a few more, with larger beads.
  while (mostShared(layout.box, size, layout.overlapMm) > mostAlike) {
    const larger = 1.1 * layout.cellMm;
    if (larger > mostBeadMm(page)) break;
    layout = grown(laid(larger));
  }
  const { scale, cellMm, marks, frameMark, ticks, box, overlapMm } = layout;
  const tiling = tiled(box, size, overlapMm, [
    ...stitchBoxes(sheet, scale),
    ...markBoxes(marks, markWords),
  ]);
  const kinds = cellKinds(sheet);
  const [startBox, directionBox] = markBoxes(marks, markWords);
  const frameBox = frameMark && boxOfWord(frameMark.word, wordSize(words.frame.word));
  const taken = [
    ...boxesOfMarks(marks, markWords),
    ...(frameMark ? boxesOfFrameMark(frameMark, wordSize(words.frame.word)) : []),
  ];
  /** A mark is drawn where it is whole; cut off, only if no sheet shows it whole. */
  const shows = (tile: Tile, mark: Box) =>
    contains(tile.box, mark) || !tiling.tiles.some((other) => contains(other.box, mark));

  const around: Surround = {
    page,
    fonts,
    tiling,
    notes,
    title: ({ number }) => titleOf(number, tiling.tiles.length),
    outlines: [mapOutline(geometry, scale)],
  };
  return tiling.tiles.map((tile) => {
    const view = {
      scale,
      centreX: window.left - tile.box.left,
      centreY: window.top - tile.box.top,
    };
    return {
      tile,
      window,
      title: around.title(tile),
      beadMm: cellMm,
      draw: (surface) => drawSurround(surface, around, tile, window),
      drawInWindow(surface) {
        drawPanel(surface, sheet, kinds, view, cellMm, window);
        const named = !frameBox || shows(tile, frameBox);
        if (frameMark) drawFrameMark(surface, sheet, view, frameMark, label, named);
        drawMarks(surface, sheet, view, marks, label, {
          startWord: shows(tile, startBox),
          direction: shows(tile, directionBox),
        });
        const centre = { x: view.centreX, y: view.centreY };
        const said = words.chart.marks.tick;
        drawRimTicks(surface, ticks, fonts.bold, centre, taken, said, window);
        drawOverlaps(surface, tiling, tile, window);
      },
    };
  });
}

/** Share of a sheet that its neighbour may show too. */
const mostAlike = 0.5;
const mostBeadMm = ({ leastBeadMm }: SheetPage): number => 1.75 * leastBeadMm;

/** Start mark, arrow and their words: no sheet that shows one whole is left out for nothing. */
function markBoxes(marks: Marks, words: { start: WordSize; direction: WordSize }): Box[] {
  const ofPoints = (points: readonly number[]): Box => {
    const xs = points.filter((_, p) => p % 2 === 0);
    const ys = points.filter((_, p) => p % 2 === 1);
    return {
      left: Math.min(...xs),
      top: Math.min(...ys),
      right: Math.max(...xs),
      bottom: Math.max(...ys),
    };
  };
  return [
    boxAround(ofPoints(marks.triangle), boxOfWord(marks.startWord, words.start)),
    boxAround(
      ofPoints([...marks.arrow, ...marks.arrowHead]),
      boxOfWord(marks.directionWord, words.direction),
    ),
  ];
}

/** The box of each stitch's cell, in enlarged millimetres from the panel's centre. */
function stitchBoxes({ geometry, footprints }: PanelSheet, scale: number): Box[] {
  return Array.from({ length: geometry.count }, (_, s) => {
    const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
    for (const ring of footprints.rings(s)) {
      for (let p = 0; p < ring.length; p += 2) {
        box.left = Math.min(box.left, scale * ring[p]);
        box.right = Math.max(box.right, scale * ring[p]);
        box.top = Math.min(box.top, scale * ring[p + 1]);
        box.bottom = Math.max(box.bottom, scale * ring[p + 1]);
      }
    }
    return box;
  });
}
