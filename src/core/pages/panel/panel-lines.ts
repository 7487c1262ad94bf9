import type { PanelGeometry } from '../../panel/geometry.js';
import type { Footprints } from '../../panel/footprints.js';
import type { Polyline } from '../surface/surface.js';

/** Borders between cells, by what they part; each a list of two-point lines in millimetres. */
export interface PanelLines {
  /** Between two wedges, the start line left out. */
  readonly wedges: Polyline[];
  /** Outside every fifth round. */
  readonly fives: Polyline[];
  /** Between the last wedge and the first, where every round begins. */
  readonly start: Polyline[];
}

const whole = { holds: () => true, isBeside: () => false };

/** Whole thousandths of a millimetre of the longest panel fit well below this. */
const span = 2 ** 25;

/**
 * Finds the borders that a chart draws heavier, on the cells' own edges.
 *
 * @param part of a part of the panel only those borders that a stitch of it has
 */
export function panelLines(
  geometry: PanelGeometry,
  footprints: Footprints,
  part: { holds(s: number): boolean; isBeside(s: number): boolean } = whole,
): PanelLines {
  const { wedges, rounds } = geometry.shape;
  const lines: PanelLines = { wedges: [], fives: [], start: [] };
  const wedgeOf = new Uint8Array(geometry.count);
  const roundOf = new Uint8Array(geometry.count);
  for (let r = 1, s = 0; r <= rounds; r++) {
    for (let i = 0; i < wedges * r; i++, s++) {
      wedgeOf[s] = Math.floor(i / r);
      roundOf[s] = r;
    }
  }
  const waiting = new Map<number, number>();
  for (let s = 0; s < geometry.count; s++) {
    if (!part.holds(s) && !part.isBeside(s)) continue;
    const ring = footprints.rings(s)[0] ?? [];
    for (let p = 0; p < ring.length; p += 2) {
      const q = (p + 2) % ring.length;
      const x = Math.round((ring[p] + ring[q]) * 500) + span / 2;
      const y = Math.round((ring[p + 1] + ring[q + 1]) * 500) + span / 2;
      const key = x * span + y;
      const other = waiting.get(key);
      if (other === undefined) {
        waiting.set(key, s);
        continue;
      }
      waiting.delete(key);
      if (!part.holds(s) && !part.holds(other)) continue;
      const line = [ring[p], ring[p + 1], ring[q], ring[q + 1]];
      const [a, b] = [wedgeOf[s], wedgeOf[other]];
      const fives = (t: number) => Math.floor((roundOf[t] - 1) / 5);
      if (Math.abs(a - b) === wedges - 1) lines.start.push(line);
      else if (fives(s) !== fives(other)) lines.fives.push(line);
      else if (a !== b) lines.wedges.push(line);
    }
  }
  return lines;
}
