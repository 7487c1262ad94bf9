import { drawOverlaps, drawSurround, mostSheets, sheetWindow } from './sheet-surround.js';
import type { ChartSheet, SheetPage, Surround } from './sheet-surround.js';
import { cellKinds } from '../panel/sheet.js';
import type { PanelSheet } from '../panel/sheet.js';
import { tiled } from '../panel/tiles.js';
import { drawTriangle, marksByStitch, triangleAround } from './wedges.js';

export { wedgesAlike } from './wedges-alike.js';

/** Cells of a single wedge need be no larger than this. */
const largestMm = 9;

/** The one triangle that stands for all wedges, as large as a page allows or on several. */
export function wedgeSheets(sheet: PanelSheet, page: SheetPage, heading: string): ChartSheet[] {
  const { geometry, words, fonts } = sheet;
  const { wedges, rounds, beadsFace } = geometry.shape;
  const { direction } = geometry;
  const say = words.booklet;
  const notes = [
    say.wedgeChart.alike({ wedges }),
    say.wedgeChart.how({ direction }),
    words.chart.workerNote({ beadsFace, direction }),
    ...(wedges * rounds < 10 ? [] : [words.chart.marks.tick]),
  ];
  const titleOf = (number: number, sheets: number) =>
    words.lists.aside(heading, say.enlarged.sheet({ sheet: number, sheets }));
  const window = sheetWindow(page, titleOf(mostSheets, mostSheets), notes, fonts);
  const room = { widthMm: window.right - window.left, heightMm: window.bottom - window.top };
  const { side, above } = triangleAround;
  const whole = Math.min(
    (room.widthMm - 2 * side) / rounds,
    (room.heightMm - above) / rounds,
    largestMm,
  );
  const cellMm = Math.max(page.leastBeadMm, whole);
  const wide = rounds * cellMm;
  const drawing = { left: -wide / 2 - side, top: -above, right: wide / 2 + side, bottom: wide };
  const cells = Array.from({ length: rounds }, (_, row) =>
    Array.from({ length: rounds - row }, (_, j) => {
      const left = (j - (rounds - row) / 2) * cellMm;
      return { left, top: row * cellMm, right: left + cellMm, bottom: (row + 1) * cellMm };
    }),
  ).flat();
  const tiling = tiled(drawing, room, 2.2 * cellMm, cells);
  const marks = marksByStitch(cellKinds(sheet));
  const around: Surround = {
    page,
    fonts,
    tiling,
    notes,
    title: ({ number }) =>
      tiling.tiles.length === 1 ? heading : titleOf(number, tiling.tiles.length),
    outlines: [[-wide / 2, 0, wide / 2, 0, cellMm / 2, wide, -cellMm / 2, wide]],
  };
  return tiling.tiles.map((tile) => ({
    tile,
    window,
    title: around.title(tile),
    beadMm: cellMm,
    draw: (surface) => drawSurround(surface, around, tile, window),
    drawInWindow(surface) {
      const top = { x: window.left - tile.box.left, y: window.top - tile.box.top };
      drawTriangle(surface, sheet, marks, 0, top, cellMm);
      drawOverlaps(surface, tiling, tile, window);
    },
  }));
}
