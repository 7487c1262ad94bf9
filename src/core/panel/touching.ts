import type { RingList } from './ring-list.js';
import type { Delaunay, Voronoi } from 'd3-delaunay';

/**
 * Which cells of a diagram touch a cell, ascending. The same as `voronoi.neighbors`, which clips
 * every cell anew for each of its neighbours: here each is clipped once.
 */
export function touchingCells(
  delaunay: Delaunay<unknown>,
  voronoi: Voronoi<unknown>,
): (cell: number) => number[] {
  /** x, y of the corners of each cell asked for. */
  const corners: (Float64Array | undefined)[] = [];
  const cornersOf = (cell: number): Float64Array =>
    (corners[cell] ??= Float64Array.from((voronoi.cellPolygon(cell) ?? []).slice(0, -1).flat()));

  return (cell) => {
    const own = cornersOf(cell);
    const touching: number[] = [];
    for (const other of delaunay.neighbors(cell)) {
      if (shareEdge(own, cornersOf(other))) touching.push(other);
    }
    return touching.sort((a, b) => a - b);
  };
}

/** Whether two rings that run the same way round have an edge in common. */
function shareEdge(one: Float64Array, other: Float64Array): boolean {
  const n = one.length;
  const m = other.length;
  for (let p = 0; p < n; p += 2) {
    const next = p + 2 === n ? 0 : p + 2;
    for (let q = 0; q < m; q += 2) {
      if (one[p] !== other[q] || one[p + 1] !== other[q + 1]) continue;
      const before = q === 0 ? m - 2 : q - 2;
      if (one[next] === other[before] && one[next + 1] === other[before + 1]) return true;
    }
  }
  return false;
}

/**
 * Of the edge that begins at each corner of the cells' rings the cell that has the very same edge the
 * other way round; -1 where none has, as where cells are cut. Length corners.
 *
 * @param firstOf first ring of each cell, and last the number of rings
 */
export function acrossEdges(
  { corners, from }: RingList,
  firstOf: Int32Array,
  neighbours: (cell: number) => readonly number[],
): Int32Array {
  const across = new Int32Array(corners.length / 2).fill(-1);
  const edgesOf = (cell: number): [number, number][] => {
    const edges: [number, number][] = [];
    for (let ring = firstOf[cell]; ring < firstOf[cell + 1]; ring++) {
      const stop = from[ring + 1];
      for (let p = from[ring]; p < stop; p += 2) {
        edges.push([p, p + 2 === stop ? from[ring] : p + 2]);
      }
    }
    return edges;
  };
  const same = (p: number, q: number): boolean =>
    corners[p] === corners[q] && corners[p + 1] === corners[q + 1];
  const edges = Array.from({ length: firstOf.length - 1 }, (_, cell) => edgesOf(cell));
  edges.forEach((own, cell) => {
    for (const other of neighbours(cell)) {
      if (other < cell) continue;
      for (const [p, next] of own) {
        const found = edges[other].find(([q, after]) => same(p, after) && same(next, q));
        if (!found) continue;
        across[p / 2] = other;
        across[found[0] / 2] = cell;
      }
    }
  });
  return across;
}
