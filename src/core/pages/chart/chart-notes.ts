import {
  black,
  cellLine,
  drawJoin,
  drawPairBars,
  drawPill,
  drawStrongLines,
  white,
} from '../panel/cells.js';
import { hasJoins } from '../panel/join-marks.js';
import type { PanelSheet } from '../panel/sheet.js';
import type { Surface } from '../surface/surface.js';
import type { Legend } from './chart-legend.js';
import { drawText, mmPerPoint, wrapped } from '../surface/text.js';

type Symbol = (surface: Surface, x: number, y: number) => void;

/**
 * Notes under the key: which face and hand on the left, what the marks mean on the right.
 *
 * @param larger whether they say where letters stand larger
 */
export function notesOf(
  sheet: PanelSheet,
  widthMm: number,
  points: number,
  larger = false,
): Legend {
  const { geometry, words, fonts } = sheet;
  const { shape, direction } = geometry;
  const style = { face: fonts.regular, sizeMm: points * mmPerPoint };
  const lineMm = style.sizeMm * 1.28;
  const gap = 8;
  const leftMm = (widthMm - gap) * 0.52;
  const symbolMm = 8;
  const rightMm = widthMm - gap - leftMm - symbolMm;
  const { chart } = words;
  const { working } = words.booklet.work;
  const faces = sheet.seen
    ? [working.note({ hand: shape.hand, mirrored: sheet.seen.mirrored }), working.wedges]
    : [
        chart.faceNote({ hand: shape.hand, beadsFace: shape.beadsFace, direction }),
        chart.workerNote({ beadsFace: shape.beadsFace, direction }),
      ];
  const told = [...faces, chart.construction[shape.construction]];
  if (larger) told.push(chart.larger);
  const left = told.flatMap((note) => wrapped(note, style, leftMm));
  const frameNote: [Symbol, string[]] = [frameSymbol, wrapped(words.frame.mark, style, rightMm)];
  const joinNote: [Symbol, string[]] = [joinSymbol, wrapped(chart.marks.join, style, rightMm)];
  const tickNote: [Symbol, string[]] = [tickSymbol, wrapped(chart.marks.tick, style, rightMm)];
  const marks: [Symbol, string[]][] = [
    [pairSymbol, wrapped(chart.marks.pair, style, rightMm)],
    [numberSymbol, wrapped(chart.marks.number, style, rightMm)],
    [fiveSymbol, wrapped(chart.marks.five, style, rightMm)],
    [startSymbol, wrapped(chart.marks.startLine, style, rightMm)],
    ...(shape.wedges * shape.rounds < 10 ? [] : [tickNote]),
    ...(hasJoins(sheet) ? [joinNote] : []),
    ...(sheet.pattern.frame && !sheet.seen ? [frameNote] : []),
  ];
  const rightLines = marks.reduce((sum, [, lines]) => sum + lines.length, 0);

  function pairSymbol(surface: Surface, x: number, y: number): void {
    for (const at of [x, x + 3]) {
      const ring = [at, y - 1.4, at + 3, y - 1.4, at + 3, y + 1.4, at, y + 1.4];
      surface.fillPath([ring], { fill: white, outline: cellLine });
    }
    drawPairBars(surface, [[x + 2.1, y + 0.8, x + 3.9, y + 0.8]], 0.5, 'pair-symbol', '');
  }
  function numberSymbol(surface: Surface, x: number, y: number): void {
    drawPill(surface, fonts.bold, 7, x + 3, y, 1.9);
  }
  function fiveSymbol(surface: Surface, x: number, y: number): void {
    drawPill(surface, fonts.bold, 15, x + 3, y, 1.9);
    surface.strokePath([[x, y - 1.7, x + 6, y - 1.7]], { stroke: black, widthMm: 0.35 });
  }
  function startSymbol(surface: Surface, x: number, y: number): void {
    const steps = [
      x,
      y + 1,
      x + 2,
      y + 1,
      x + 2,
      y - 0.2,
      x + 4,
      y - 0.2,
      x + 4,
      y - 1.4,
      x + 6,
      y - 1.4,
    ];
    drawStrongLines(surface, [steps], 0.55, 'start-symbol');
  }

  function tickSymbol(surface: Surface, x: number, y: number): void {
    surface.strokePath([[x, y + 1.5, x + 6, y + 1.5]], { stroke: cellLine.stroke, widthMm: 0.2 });
    surface.strokePath([[x + 3, y + 1.2, x + 3, y + 0.3]], { stroke: black, widthMm: 0.35 });
    const digits = { face: fonts.bold, sizeMm: 1.5 / fonts.bold.capHeight };
    drawText(surface, '10', digits, x + 3, y - 0.1, 'middle');
  }

  function joinSymbol(surface: Surface, x: number, y: number): void {
    drawJoin(surface, [x + 4.2, y, x + 3, y - 1.7, x + 1.8, y, x + 3, y + 1.7]);
  }

  function frameSymbol(surface: Surface, x: number, y: number): void {
    surface.strokePath([[x + 1, y, x + 5, y]], { stroke: black, widthMm: 0.3 });
    for (const at of [x + 1, x + 5]) surface.circle(at, y, 0.9, { fill: black });
  }

  return {
    heightMm: Math.max(left.length, rightLines) * lineMm,
    draw(surface, x, top) {
      surface.beginGroup('notes', chart.groups.notes);
      left.forEach((line, n) => drawText(surface, line, style, x, top + (n + 0.78) * lineMm));
      let row = 0;
      for (const [symbol, lines] of marks) {
        const at = x + leftMm + gap;
        symbol(surface, at, top + (row + 0.5) * lineMm);
        for (const line of lines) {
          drawText(surface, line, style, at + symbolMm, top + (row++ + 0.78) * lineMm);
        }
      }
      surface.endGroup();
    },
  };
}
