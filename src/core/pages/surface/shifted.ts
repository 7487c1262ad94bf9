import { movedCurve } from './curve.js';
import type { Polyline, Surface } from './surface.js';

/** A sheet that begins further down on a drawing of several. */
export function shiftedDown(surface: Surface, heightMm: number, downMm: number): Surface {
  const line = (points: Polyline) =>
    Float64Array.from(points, (value, n) => (n % 2 === 0 ? value : value + downMm));
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
