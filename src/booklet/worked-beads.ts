import { mixed } from '../core/colour/mixed.js';
import type { Surface } from '../core/pages/surface/surface.js';
import { finishedEdge } from '../core/panel/edge.js';
import type { Spot } from '../core/lines.js';
import type { PanelGeometry } from '../core/panel/geometry.js';

/** Colour of crochet thread: under the beads, and where a stitch has none. */
const threadGround = '#d8d2c6';
const threadDot = '#eae6dd';

/** One vector picture of a worked panel. */
export interface WorkedBeads {
  readonly geometry: PanelGeometry;
  /** Colour of the bead of a stitch, #rrggbb; undefined where it has none. */
  readonly hexOf: (s: number) => string | undefined;
  /** Where a place of the flat panel lies, where it does not lie flat; millimetres. */
  readonly place?: (xMm: number, yMm: number) => Spot;
}

/**
 * The panel as it will look, in vectors: beads as short lines with round ends, of one colour in one
 * path, shade under body under highlight. Much smaller than a circle a bead.
 *
 * @param at where the panel's own zero lies on the page, and how many millimetres there are to one
 */
export function drawWorkedBeads(
  surface: Surface,
  { geometry, hexOf, place }: WorkedBeads,
  at: { x: number; y: number; scale: number },
): void {
  const { shape, centres, tilts, count } = geometry;
  const { scale } = at;
  const edge = Array.from(finishedEdge(geometry));
  /** Where a stitch lies, and how its row runs there. */
  const lies = Array.from({ length: count }, (_, s) => {
    const [x, y, tilt] = [centres[2 * s], centres[2 * s + 1], tilts[s]];
    if (!place) return { x, y, tilt };
    const [dx, dy] = [0.5 * Math.cos(tilt), 0.5 * Math.sin(tilt)];
    const [ax, ay] = place(x - dx, y - dy);
    const [bx, by] = place(x + dx, y + dy);
    const [px, py] = place(x, y);
    return { x: px, y: py, tilt: Math.atan2(by - ay, bx - ax) };
  });
  const [wide, high] = [scale * shape.stitchWidthMm, scale * shape.roundHeightMm];
  const pen = Math.min(wide, high);
  const half = Math.abs(wide - high) / 2;
  const line = (s: number, dx = 0, dy = 0): number[] => {
    const { tilt } = lies[s];
    const [x, y] = [at.x + scale * lies[s].x + dx, at.y + scale * lies[s].y + dy];
    // Along the row where beads are wider than rounds are high, else across it.
    const angle = wide >= high ? tilt : tilt - Math.PI / 2;
    const [ax, ay] = [half * Math.cos(angle), half * Math.sin(angle)];
    return [x - ax, y - ay, x + ax, y + ay];
  };
  const ground = edge.flatMap((x, p): number[] => {
    if (p % 2 === 1) return [];
    const [px, py] = place ? place(x, edge[p + 1]) : [x, edge[p + 1]];
    return [at.x + scale * px, at.y + scale * py];
  });
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
