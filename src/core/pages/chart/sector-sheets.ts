import { finishedEdge, ringLine } from '../../panel/edge.js';
import type { Footprints } from '../../panel/footprints.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { layPanel } from '../../panel/lay.js';
import { stitchesBefore } from '../../panel/shape.js';
import { cellSize } from './chart.js';
import { chartSheets } from './chart-sheets.js';
import { drawMarks, drawPanel } from '../panel/panel-drawing.js';
import type { PanelPart } from '../panel/panel-drawing.js';
import { drawPill } from '../panel/cells.js';
import { boxesOfStart, marksAt } from '../panel/panel-view.js';
import type { Box } from '../panel/panel-view.js';
import { drawRimTicks, rimTicks, tickBandMm } from '../panel/rim-ticks.js';
import { stitchBefore } from '../panel/start-column.js';
import { drawSectorHead, sectorWindow } from './sector-head.js';
import type { WedgeSpan } from './sector-head.js';
import { cellKinds } from '../panel/sheet.js';
import type { PanelSheet } from '../panel/sheet.js';
import type { ChartSheet, SheetPage } from './sheet-surround.js';
import { mmPerPoint, textWidth } from '../surface/text.js';

/** A sheet with some wedges of the chart. */
export interface SectorSheet extends Omit<ChartSheet, 'tile'> {
  readonly span: WedgeSpan;
  /** How far the bead face is turned on it, degrees clockwise. */
  readonly turnedDegrees: number;
}

const mostBeadMm = ({ leastBeadMm }: SheetPage): number => 1.6 * leastBeadMm;
/** Turns that are tried, degrees: upright is taken where it is large enough. */
const turns = Array.from({ length: 24 }, (_, n) => 15 * n);

/**
 * The chart of a panel by wedges, so many of them on a sheet as have room: a round crosses no more
 * sheets than it must. Beads of the neighbouring wedges stand pale beside them. A panel so large
 * that not one wedge has room is cut into tiles.
 */
export function sectorSheets(
  sheet: PanelSheet,
  page: SheetPage,
  heading: string,
): (SectorSheet | ChartSheet)[] {
  const window = sectorWindow(page);
  const { wedges } = sheet.geometry.shape;
  for (let groups = 2; groups <= wedges; groups++) {
    const spans = spansOf(wedges, groups);
    const placed = spans.map((span) => placedIn(sheet, span, window, page));
    if (placed.every(({ cellMm }) => cellMm >= page.leastBeadMm - 1e-9))
      return placed.map((one) => sectorSheet(sheet, page, heading, window, one));
  }
  return chartSheets(sheet, page, heading);
}

/** Wedges shared out as evenly as can be. */
export function spansOf(wedges: number, groups: number): WedgeSpan[] {
  return Array.from({ length: groups }, (_, n) => ({
    from: Math.round((n * wedges) / groups),
    to: Math.round(((n + 1) * wedges) / groups),
  }));
}

interface Placed {
  readonly span: WedgeSpan;
  readonly turnedDegrees: number;
  readonly scale: number;
  readonly cellMm: number;
  readonly box: Box;
}

/** The stitches of a span and those beside it. */
export function partOf({ shape }: Pick<PanelGeometry, 'shape'>, span: WedgeSpan): PanelPart {
  const { wedges, rounds } = shape;
  const held = new Set<number>();
  const beside = new Set<number>();
  for (let r = 1; r <= rounds; r++) {
    const first = stitchesBefore(shape, r);
    const inRound = wedges * r;
    for (let i = span.from * r; i < span.to * r; i++) held.add(first + i);
    for (const i of [span.from * r - 1, span.to * r]) {
      const s = first + ((i + inRound) % inRound);
      if (!held.has(s)) beside.add(s);
    }
  }
  return { holds: (s) => held.has(s), isBeside: (s) => beside.has(s) };
}

/**
 * Where the number of each round stands: before its first stitch on the sheet, outside the pale
 * bead that lies between.
 */
function numberPlaces(
  { shape, centres }: PanelGeometry,
  { from, to }: WedgeSpan,
): { round: number; x: number; y: number }[] {
  const { wedges, rounds } = shape;
  return (
    Array.from({ length: rounds }, (_, n) => n + 1)
      // In a spiral rounds 1 and 2 begin at the same place.
      .filter((r) => (wedges - (to - from)) * r >= 3 && (from > 0 || r > 1))
      .map((round) => {
        const first = stitchesBefore(shape, round) + from * round;
        const before = from === 0 ? stitchBefore(shape, round) : first - 1;
        const at = (axis: 0 | 1) =>
          2.1 * centres[2 * before + axis] - 1.1 * centres[2 * first + axis];
        return { round, x: at(0), y: at(1) };
      })
  );
}

/** A span as large as the window allows, turned so that it has most room. */
function placedIn(sheet: PanelSheet, span: WedgeSpan, window: Box, page: SheetPage): Placed {
  const [wide, high] = [window.right - window.left, window.bottom - window.top];
  const points = pointsOfSpan(sheet.geometry, span);
  const most = mostBeadMm(page) / cellSize(sheet, 1);
  const leastScale = page.leastBeadMm / cellSize(sheet, 1);
  // Ticks stand outside the rim where beads are large enough, the start mark in any case.
  const mark = span.from === 0 ? 2 * startMm : 2;
  const tried = turns.map((turnedDegrees): Placed => {
    const box = turnedBox(points, turnedDegrees, sheet.geometry.shape);
    const scaleIn = (around: number) =>
      Math.min(
        most,
        (wide - around) / (box.right - box.left),
        (high - around) / (box.bottom - box.top),
      );
    const roomy = scaleIn(Math.max(mark, 2 * tickBandMm));
    const scale = Math.max(roomy, Math.min(scaleIn(mark), leastScale));
    return { span, turnedDegrees, scale, cellMm: cellSize(sheet, scale), box };
  });
  const [upright] = tried;
  if (upright.cellMm >= page.leastBeadMm) return upright;
  return tried.reduce((best, one) => (one.scale > best.scale * 1.001 ? one : best));
}

/** What the start mark and its word take outside the rim, millimetres. */
const startMm = 7;

/** Centres of the stitches at the edges of a span and of those beside it, x and y by turns. */
function pointsOfSpan({ shape, centres }: PanelGeometry, { from, to }: WedgeSpan): number[] {
  const { wedges, rounds } = shape;
  const points: number[] = [];
  for (let r = 1; r <= rounds; r++) {
    const inRound = wedges * r;
    const edges = [from * r - 2, from * r - 1, from * r, to * r - 1, to * r];
    const all = Array.from({ length: (to - from) * r }, (_, n) => from * r + n);
    for (const i of r === rounds ? [...edges, ...all] : edges) {
      const s = stitchesBefore(shape, r) + ((i + inRound) % inRound);
      points.push(centres[2 * s], centres[2 * s + 1]);
    }
  }
  return points;
}

/** What stitches take up when the panel is turned clockwise, millimetres on the panel. */
function turnedBox(
  points: readonly number[],
  degrees: number,
  { stitchWidthMm, roundHeightMm }: PanelGeometry['shape'],
): Box {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const reach = 0.62 * Math.max(stitchWidthMm, roundHeightMm);
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (let p = 0; p < points.length; p += 2) {
    const x = points[p] * cos - points[p + 1] * sin;
    const y = points[p] * sin + points[p + 1] * cos;
    box.left = Math.min(box.left, x - reach);
    box.right = Math.max(box.right, x + reach);
    box.top = Math.min(box.top, y - reach);
    box.bottom = Math.max(box.bottom, y + reach);
  }
  return box;
}

/** The cells of a panel turned clockwise about its centre. */
function turnedBy(footprints: Footprints, degrees: number): Footprints {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const turned = (ring: Float64Array) => {
    const line = new Float64Array(ring.length);
    for (let p = 0; p < ring.length; p += 2) {
      line[p] = ring[p] * cos - ring[p + 1] * sin;
      line[p + 1] = ring[p] * sin + ring[p + 1] * cos;
    }
    return line;
  };
  const known = new Map<number, Float64Array[]>();
  return {
    ...footprints,
    rings(s) {
      let rings = known.get(s);
      if (!rings) known.set(s, (rings = footprints.rings(s).map(turned)));
      return rings;
    },
  };
}

function sectorSheet(
  sheet: PanelSheet,
  page: SheetPage,
  heading: string,
  window: Box,
  placed: Placed,
): SectorSheet {
  const { words, fonts } = sheet;
  const { span, scale, cellMm, box, turnedDegrees } = placed;
  const { shape, startDegrees } = sheet.geometry;
  const { geometry } = layPanel(shape, { startDegrees: startDegrees + turnedDegrees });
  const say = words.booklet.work.sector;
  const title = words.lists.aside(heading, say.name({ from: span.from + 1, to: span.to }));
  const view = {
    scale,
    centreX: (window.left + window.right - scale * (box.left + box.right)) / 2,
    centreY: (window.top + window.bottom - scale * (box.top + box.bottom)) / 2,
  };
  const part = partOf(geometry, span);
  const label = { face: fonts.bold, sizeMm: page.textPoints * mmPerPoint };
  const size = (text: string) => ({
    widthMm: textWidth(text, label),
    heightMm: label.sizeMm * 0.95,
  });
  return {
    span,
    window,
    title,
    beadMm: cellMm,
    turnedDegrees,
    draw(surface) {
      const kinds = cellKinds(sheet).filter((kind) => kind.stitches.some((s) => part.holds(s)));
      drawSectorHead(surface, sheet, page, { title, kinds, span, note: say.how });
    },
    drawInWindow(surface) {
      const turned = { ...sheet, geometry, footprints: turnedBy(sheet.footprints, turnedDegrees) };
      drawPanel(surface, turned, cellKinds(turned), view, cellMm, window, part);
      const digitMm = Math.min(3, 0.45 * cellMm);
      for (const { round, x, y } of numberPlaces(geometry, span)) {
        const [atX, atY] = [view.centreX + scale * x, view.centreY + scale * y];
        drawPill(surface, fonts.bold, round, atX, atY, round < 4 ? 0.8 * digitMm : digitMm);
      }
      const centre = { x: view.centreX, y: view.centreY };
      const ticks = rimTicks(geometry, scale, fonts.bold, false, (s) => part.holds(s));
      const drawTicks = (taken: readonly Box[]) =>
        drawRimTicks(surface, ticks, fonts.bold, centre, taken, words.chart.marks.tick, window);
      if (span.from !== 0) return drawTicks([]);
      const rim = ringLine(geometry, geometry.shape.rounds);
      const step = { x: rim[rim.length - 2], y: rim[rim.length - 1] };
      const { chart } = words;
      const labels = { start: size(chart.start), direction: size(chart.direction) };
      const marks = marksAt(geometry, finishedEdge(geometry), step, scale, labels);
      drawMarks(surface, turned, view, marks, label, { startWord: true, direction: false });
      drawTicks(boxesOfStart(marks, labels.start));
    },
  };
}
