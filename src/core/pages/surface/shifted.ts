import { movedCurve } from './curve.js';
import type { Polyline, Surface } from './surface.js';

/** The same line, shrunk or grown about the origin and then moved. */
export function movedLine(line: Polyline, dx: number, dy: number, scale = 1): Float64Array {
  // A chart's cells go through here: a plain loop is ten times as fast as `Float64Array.from`.
  const moved = new Float64Array(line.length);
  for (let p = 0; p < line.length; p += 2) {
    moved[p] = dx + scale * line[p];
    moved[p + 1] = dy + scale * line[p + 1];
  }
  return moved;
}

/** A sheet that begins further down on a drawing of several. */
export function shiftedDown(surface: Surface, heightMm: number, downMm: number): Surface {
  const line = (points: Polyline) => movedLine(points, 0, downMm);
  return {
    widthMm: surface.widthMm,
    heightMm,
    fillPath: (rings, paint) => surface.fillPath(rings.map(line), paint),
    strokePath: (lines, paint) => surface.strokePath(lines.map(line), paint),
    strokeCurve: (name, curve, paint) =>
      surface.strokeCurve(name, movedCurve(curve, 0, downMm), paint),
    circle: (x, y, radius, paint) => surface.circle(x, y + downMm, radius, paint),
    glyphs: (run) =>
      surface.glyphs({ ...run, glyphs: run.glyphs.map((one) => ({ ...one, y: one.y + downMm })) }),
    beginGroup: (name, title) => surface.beginGroup(name, title),
    endGroup: () => surface.endGroup(),
  };
}
