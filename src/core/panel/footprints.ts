import { Delaunay } from 'd3-delaunay';
import { cornerRadius, finishedEdge, holeRadius } from './edge.js';
import type { PanelGeometry } from './geometry.js';
import { clipToConvex, insideRing, reversedRing, ringArea } from './rings.js';
import { ringList } from './ring-list.js';
import type { RingList } from './ring-list.js';
import type { Ring } from './rings.js';
import { acrossEdges, touchingCells } from './touching.js';
import { millionth } from '../units.js';

/** Corners of the round hole at the centre, drawn as a polygon of the same area. */
const holeCorners = 96;
/** Centres are kept to this; shorter edges of cells mean nothing. */
const shortestEdgeMm = 1e-6;

/** Who owns which part of the panel: one diagram for sampling, neighbours, hits and chart cells. */
export interface Footprints {
  /**
   * The part of the plane nearest to stitch s, inside the finished edge and outside the centre
   * hole: rings in millimetres whose signed areas add up to the footprint's (a hole counts
   * negative). Empty for a stitch that owns nothing.
   */
  rings(s: number): readonly Ring[];
  /** The rings of all stitches, one stitch after another; made once, when first asked for. */
  all(): AllRings;
  /**
   * Of the edge that begins at each corner of `all` the stitch on its other side, where that has the
   * very same edge the other way round; otherwise -1. Length corners; made once.
   */
  across(): Int32Array;
  /** Area of the footprint, square millimetres. */
  area(s: number): number;
  /** The stitch that owns a point, or -1 outside the edge and in the hole. */
  owner(x: number, y: number): number;
  /** Stitches whose cells touch the cell of stitch s, ascending. */
  neighbours(s: number): readonly number[];
}

/** The rings of all footprints. */
export interface AllRings extends RingList {
  /** The first ring of each stitch, and last the number of rings; length count + 1. */
  readonly firstOf: Int32Array;
}

/** Builds the diagram; every ring is made once, when first asked for. */
export function panelFootprints(geometry: PanelGeometry): Footprints {
  const { centres, count, shape } = geometry;
  const delaunay = new Delaunay(centres);
  const reach = cornerRadius(shape) + 2 * shape.roundHeightMm;
  const voronoi = delaunay.voronoi([-reach, -reach, reach, reach]);
  // Sines differ in their last bit between engines, and a tie of two colours would show it.
  const edge = oriented(finishedEdge(geometry).map(millionth));
  const safe = leastDistance(edge);
  const hole = holeRing(holeRadius(shape));
  const holeReach = Math.hypot(hole[0], hole[1]);
  const made = new Array<readonly Ring[] | undefined>(count);

  const rings = (s: number): readonly Ring[] => (made[s] ??= ringsOf(s));

  function ringsOf(s: number): readonly Ring[] {
    const cell = cellOf(s);
    if (cell.length < 6) return [];
    let nearest = Infinity;
    let farthest = 0;
    for (let p = 0; p < cell.length; p += 2) {
      const distance = Math.hypot(cell[p], cell[p + 1]);
      nearest = Math.min(nearest, distance);
      farthest = Math.max(farthest, distance);
    }
    const outer = farthest <= safe ? cell : clipToConvex(edge, cell);
    if (outer.length < 6) return [];
    if (nearest >= holeReach) return [outer];
    const inHole = clipToConvex(hole, cell);
    return inHole.length < 6 ? [outer] : [outer, reversedRing(inHole)];
  }

  function cellOf(s: number): Ring {
    const polygon = voronoi.cellPolygon(s);
    if (!polygon) return new Float64Array(0);
    // Where many cells meet in a point (the centre), corners differ in the last bits only: an edge
    // that short has no direction, and clipping along it would cut anything away.
    const ring: number[] = [];
    for (let p = 0, q = polygon.length - 2; p < polygon.length - 1; q = p, p++) {
      const [x, y] = polygon[p];
      if (Math.hypot(x - polygon[q][0], y - polygon[q][1]) > shortestEdgeMm) ring.push(x, y);
    }
    return oriented(new Float64Array(ring));
  }

  const touching = touchingCells(delaunay, voronoi);
  const near = new Array<readonly number[] | undefined>(count);
  const neighbours = (s: number): readonly number[] => (near[s] ??= touching(s));

  let together: AllRings | undefined;
  const all = (): AllRings => {
    if (together) return together;
    const each = Array.from({ length: count }, (_, s) => rings(s));
    const firstOf = new Int32Array(count + 1);
    each.forEach((own, s) => (firstOf[s + 1] = firstOf[s] + own.length));
    return (together = { ...ringList(each.flat()), firstOf });
  };

  let edges: Int32Array | undefined;
  let last = 0;
  return {
    rings,
    all,
    across: () => (edges ??= acrossEdges(all(), all().firstOf, neighbours)),
    area: (s) => rings(s).reduce((sum, ring) => sum + ringArea(ring), 0),
    owner(x, y) {
      const distance = Math.hypot(x, y);
      if (distance < holeRadius(shape)) return -1;
      if (distance > safe && !insideRing(edge, x, y)) return -1;
      last = delaunay.find(x, y, last);
      return last;
    },
    neighbours,
  };
}

function oriented(ring: Ring): Ring {
  return ringArea(ring) < 0 ? reversedRing(ring) : ring;
}

/** Least distance of a ring from the origin. */
function leastDistance(ring: Ring): number {
  let least = Infinity;
  const n = ring.length;
  for (let p = 0; p < n; p += 2) {
    const ax = ring[p];
    const ay = ring[p + 1];
    const ex = ring[(p + 2) % n] - ax;
    const ey = ring[(p + 3) % n] - ay;
    const length = ex * ex + ey * ey;
    const t = length === 0 ? 0 : Math.min(1, Math.max(0, -(ax * ex + ay * ey) / length));
    least = Math.min(least, Math.hypot(ax + t * ex, ay + t * ey));
  }
  return least;
}

function holeRing(radius: number): Ring {
  const step = (2 * Math.PI) / holeCorners;
  const corner = radius * Math.sqrt(step / Math.sin(step));
  const ring = new Float64Array(2 * holeCorners);
  for (let p = 0; p < holeCorners; p++) {
    ring[2 * p] = millionth(corner * Math.sin(p * step));
    ring[2 * p + 1] = millionth(-corner * Math.cos(p * step));
  }
  return oriented(ring);
}
