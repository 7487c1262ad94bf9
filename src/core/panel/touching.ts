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
