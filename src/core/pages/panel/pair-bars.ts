import { pairStart, parentOf } from '../../panel/links.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { stitchesBefore } from '../../panel/shape.js';
import type { Polyline } from '../surface/surface.js';

/**
 * A short bar for each doubled pair, across the border of its two cells, near that border's inner
 * end, where the stitch lies that both are worked into. N·(R-1) lines of two points. Round 2 is crowded and
 * has shorter ones.
 *
 * @param cell size of a stitch in the unit of the centres, millimetres on the panel
 * @param holds whether a part of the panel has a stitch; all have their bars where it is left out
 */
export function pairBars(
  { centres, shape }: PanelGeometry,
  cell: number,
  holds: (s: number) => boolean = () => true,
): Polyline[] {
  const bars: Polyline[] = [];
  for (let r = 2; r <= shape.rounds; r++) {
    const first = pairStart(shape, r) ?? 0;
    for (let wedge = 0; wedge < shape.wedges; wedge++) {
      const i = wedge * r + first;
      const a = 2 * (stitchesBefore(shape, r) + i);
      if (!holds(a / 2)) continue;
      const parent = 2 * (stitchesBefore(shape, r - 1) + parentOf(shape, r, i));
      bars.push(barBetween(centres, a, a + 2, parent, cell, r === 2 ? 0.14 * cell : 0.22 * cell));
    }
  }
  return bars;
}

/** a, b and parent are places in `centres`; `longest` is half a bar's greatest length. */
function barBetween(
  centres: Float64Array,
  a: number,
  b: number,
  parent: number,
  cell: number,
  longest: number,
) {
  const middleX = (centres[a] + centres[b]) / 2;
  const middleY = (centres[a + 1] + centres[b + 1]) / 2;
  const apart = Math.hypot(centres[b] - centres[a], centres[b + 1] - centres[a + 1]);
  const alongX = (centres[b] - centres[a]) / apart;
  const alongY = (centres[b + 1] - centres[a + 1]) / apart;
  const toX = centres[parent] - middleX;
  const toY = centres[parent + 1] - middleY;
  const side = Math.sign(toY * alongX - toX * alongY) || 1;
  const along = toX * alongX + toY * alongY;
  const across = Math.abs(toY * alongX - toX * alongY);
  // The border ends at the point equally far from a, b and their parent: |out|² + (apart/2)² there.
  const end = (along * along + across * across - (apart / 2) ** 2) / (2 * across);
  const out = side * Math.min(0.42 * cell, Math.max(0.3 * cell, end - 0.06 * cell));
  const half = Math.min(0.2 * apart, longest);
  const x = middleX - alongY * out;
  const y = middleY + alongX * out;
  return [x - half * alongX, y - half * alongY, x + half * alongX, y + half * alongY];
}
