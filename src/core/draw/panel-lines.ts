import type { PanelGeometry } from '../geometry/panel.js';
import type { Footprints } from '../geometry/footprints.js';
import type { Polyline } from './surface.js';

/** Borders between cells, by what they part; each a list of two-point lines in millimetres. */
export interface PanelLines {
  /** Between two wedges, the start line left out. */
  readonly wedges: Polyline[];
  /** Outside every fifth round. */
  readonly fives: Polyline[];
  /** Between the last wedge and the first, where every round begins. */
  readonly start: Polyline[];
}

/** Whole thousandths of a millimetre of the longest panel fit well below this. */
const span = 2 ** 25;

/** Finds the borders that a chart draws heavier, on the cells' own edges. */
export function panelLines(geometry: PanelGeometry, footprints: Footprints): PanelLines {
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
