import { mixed } from '../core/colour/mixed.js';
import type { Surface } from '../core/pages/surface/surface.js';
import { finishedEdge } from '../core/panel/edge.js';
import type { PanelGeometry } from '../core/panel/geometry.js';

/** Colour of crochet thread: under the beads, and where a stitch has none. */
const threadGround = '#d8d2c6';
const threadDot = '#eae6dd';

/** One vector picture of a worked panel. */
export interface WorkedBeads {
  readonly geometry: PanelGeometry;
  /** Colour of the bead of a stitch, #rrggbb; undefined where it has none. */
  readonly hexOf: (s: number) => string | undefined;
}

/**
 * The panel as it will look, in vectors: beads as short lines with round ends, of one colour in one
 * path, shade under body under highlight. Much smaller than a circle a bead.
 *
 * @param at middle of the panel and half its width on the page, millimetres
 */
export function drawWorkedBeads(
  surface: Surface,
  { geometry, hexOf }: WorkedBeads,
  at: { x: number; y: number; radiusMm: number },
): void {
  const { shape, centres, tilts, count } = geometry;
  const edge = finishedEdge(geometry);
  let reach = 0;
  for (let p = 0; p < edge.length; p += 2)
    reach = Math.max(reach, Math.hypot(edge[p], edge[p + 1]));
  const scale = at.radiusMm / reach;
  const [wide, high] = [scale * shape.stitchWidthMm, scale * shape.roundHeightMm];
  const pen = Math.min(wide, high);
  const half = Math.abs(wide - high) / 2;
  const line = (s: number, dx = 0, dy = 0): number[] => {
    const [x, y] = [at.x + scale * centres[2 * s] + dx, at.y + scale * centres[2 * s + 1] + dy];
    // Along the row where beads are wider than rounds are high, else across it.
    const angle = wide >= high ? tilts[s] : tilts[s] - Math.PI / 2;
    const [ax, ay] = [half * Math.cos(angle), half * Math.sin(angle)];
    return [x - ax, y - ay, x + ax, y + ay];
  };
  const ground = Float64Array.from(edge, (v, p) => (p % 2 === 0 ? at.x : at.y) + scale * v);
  surface.fillPath([ground], { fill: threadGround });
  const groups = new Map<string, number[]>();
  for (let s = 0; s < count; s++) {
    const hex = hexOf(s) ?? threadDot;
    const group = groups.get(hex);
    if (group) group.push(s);
    else groups.set(hex, [s]);
  }
  for (const [hex, stitches] of groups) {
    const layer = (stroke: string, share: number, dx = 0, dy = 0) =>
      surface.strokePath(
        stitches.map((s) => line(s, dx * pen, dy * pen)),
        { stroke, widthMm: share * pen },
      );
    if (hex === threadDot) layer(hex, 0.55);
    else {
      layer(mixed(hex, 0, 0.38), 0.97);
      layer(hex, 0.8, -0.035, -0.045);
      const dots = stitches.map((s) => {
        const [ax, ay, bx, by] = line(s, -0.17 * pen, -0.2 * pen);
        const [x, y] = [(ax + bx) / 2, (ay + by) / 2];
        return [x, y, x, y];
      });
      surface.strokePath(dots, { stroke: mixed(hex, 255, 0.6), widthMm: 0.2 * pen });
    }
  }
}
