/** Who owns which part of a panel: areas, owners and neighbours, checked against plain geometry. */
import { Delaunay } from 'd3-delaunay';
import { describe, expect, it } from 'vitest';
import { cornerRadius, finishedEdge, ringLine } from '../src/core/panel/edge.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { clipToConvex, insideRing, reversedRing, ringArea } from '../src/core/panel/rings.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';

const wishes: Partial<ShapeWish>[] = [
  {},
  { construction: 'joined' },
  { wedges: 6, increase: 'middle', hand: 'left', beadsFace: 'toward' },
  { wedges: 3, construction: 'joined' },
  { wedges: 12, increase: 'first', lean: 1 },
  { wedges: 5, increase: 'first', lean: -0.5, hand: 'left' },
  { wedges: 8, lean: 0, rounds: 2 },
  { wedges: 4, increase: 'last', lean: -1, rounds: 6 },
];

const made = (wish: Partial<ShapeWish>) => {
  const shape = completeShape({ wedges: 7, rounds: 14, beadDiameterMm: 2.1, ...wish });
  const geometry = panelGeometry(shape);
  return { shape, geometry, footprints: panelFootprints(geometry) };
};

/** Points spread evenly over a square of the given half side: a grid turned by an odd angle. */
function* pointsOver(reach: number, step: number): Generator<[number, number]> {
  const [c, s] = [Math.cos(0.3), Math.sin(0.3)];
  for (let x = -reach * 1.5; x <= reach * 1.5; x += step) {
    for (let y = -reach * 1.5; y <= reach * 1.5; y += step) {
      yield [c * x - s * y + 0.0123, s * x + c * y - 0.0077];
    }
  }
}

describe.each(wishes)('footprints of %o', (wish) => {
  const { shape, geometry, footprints } = made(wish);
  const { centres, count } = geometry;
  const h = shape.roundHeightMm;

  it('have areas that add up to the edge’s area without the hole', () => {
    let sum = 0;
    for (let s = 0; s < count; s++) {
      const area = footprints.area(s);
      expect(area).toBeGreaterThan(0);
      sum += area;
    }
    const edge = Math.abs(ringArea(finishedEdge(geometry)));
    expect(sum).toBeCloseTo(edge - Math.PI * (h / 2) ** 2, 4);
  });

  it('have about the area of a stitch each: w·h on average', () => {
    const edge = Math.abs(ringArea(finishedEdge(geometry))) - Math.PI * (h / 2) ** 2;
    const mean = edge / count / (shape.stitchWidthMm * h);
    // A panel of R rounds ends at R + 0.5: π(R+0.5)² - π/4 over πR(R+1) is exactly 1; the hole of a
    // polygon is round all the same, and a spiral's last half round is shared out.
    expect(mean).toBeGreaterThan(0.95);
    expect(mean).toBeLessThan(1.05 + 0.2 / shape.rounds);
  });

  it('are owned by the stitch at their centre', () => {
    for (let s = 0; s < count; s++) {
      expect(footprints.owner(centres[2 * s], centres[2 * s + 1])).toBe(s);
    }
  });

  it('agree with the nearest centre, found by looking at all, at points all over', () => {
    const edge = finishedEdge(geometry);
    const reach = h * (shape.rounds + 3);
    let inside = 0;
    for (const [x, y] of pointsOver(reach, reach / 18)) {
      const owner = footprints.owner(x, y);
      if (Math.hypot(x, y) < h / 2 || !insideRing(edge, x, y)) {
        expect(owner).toBe(-1);
        continue;
      }
      inside++;
      let nearest = 0;
      let least = Infinity;
      for (let s = 0; s < count; s++) {
        const distance = Math.hypot(centres[2 * s] - x, centres[2 * s + 1] - y);
        if (distance < least) [nearest, least] = [s, distance];
      }
      expect(owner).toBe(nearest);
      const covered = footprints.rings(owner).filter((ring) => insideRing(ring, x, y));
      // Inside the outer ring and not in the hole's, but for points on the hole's 96 corners.
      if (Math.hypot(x, y) > h * 0.51) expect(covered).toHaveLength(1);
    }
    expect(inside).toBeGreaterThan(50);
  });

  it('have neighbours that know each other', () => {
    for (let s = 0; s < count; s++) {
      const around = footprints.neighbours(s);
      expect(around.length).toBeGreaterThanOrEqual(2);
      expect([...around].sort((a, b) => a - b)).toEqual(around);
      for (const other of around) expect(footprints.neighbours(other)).toContain(s);
      expect(around).not.toContain(s);
    }
  });

  it('have the neighbours that the diagram itself names', () => {
    const reach = cornerRadius(shape) + 2 * h;
    const voronoi = new Delaunay(centres).voronoi([-reach, -reach, reach, reach]);
    for (let s = 0; s < count; s++) {
      expect(footprints.neighbours(s)).toEqual([...voronoi.neighbors(s)].sort((a, b) => a - b));
    }
  });

  it('lie in an edge that closes at h·(R+0.5) or climbs from R to R+1', () => {
    const line = ringLine(geometry, shape.rounds, 360);
    const last = line.length - 2;
    const [from, to] = [Math.hypot(line[0], line[1]), Math.hypot(line[last], line[last + 1])];
    const corner = shape.outline === 'polygon' ? 1 / Math.cos(Math.PI / shape.wedges) : 1;
    const spiral = shape.construction === 'spiral';
    expect(from).toBeCloseTo(h * corner * (shape.rounds + (spiral ? 0 : 0.5)), 6);
    expect(to).toBeCloseTo(h * corner * (shape.rounds + (spiral ? 1 : 0.5)), 6);
    for (let s = 0; s < count; s++) {
      expect(insideRing(finishedEdge(geometry), centres[2 * s], centres[2 * s + 1])).toBe(true);
      if (count > 400 && s > 3) s += 12;
    }
  });
});

describe('rings', () => {
  const square = Float64Array.of(0, 0, 4, 0, 4, 4, 0, 4);

  it('have the area of the textbook, positive clockwise on the page', () => {
    expect(ringArea(square)).toBe(16);
    expect(ringArea(reversedRing(square))).toBe(-16);
    expect(ringArea(Float64Array.of(0, 0, 4, 0, 0, 3))).toBe(6);
  });

  it('are clipped to a convex ring', () => {
    const corner = Float64Array.of(2, 2, 6, 2, 6, 6, 2, 6);
    expect(ringArea(clipToConvex(corner, square))).toBe(4);
    expect(clipToConvex(Float64Array.of(9, 9, 10, 9, 10, 10), square)).toHaveLength(0);
    expect(ringArea(clipToConvex(square, corner))).toBe(4);
    // A ring that is not convex: an L with one arm inside.
    const ell = Float64Array.of(1, 1, 8, 1, 8, 3, 3, 3, 3, 8, 1, 8);
    expect(ringArea(clipToConvex(ell, square))).toBe(6 + 2);
  });

  it('tell inside from outside', () => {
    expect([insideRing(square, 1, 3), insideRing(square, 5, 3), insideRing(square, 1, -1)]).toEqual(
      [true, false, false],
    );
  });
});
