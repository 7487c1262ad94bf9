import { describe, expect, it } from 'vitest';
import { makeCoverage } from '../src/core/picture/sampling/coverage.js';
import type { Coverage } from '../src/core/picture/sampling/coverage.js';
import { ringList } from '../src/core/panel/ring-list.js';
import { sequence } from './support/paint.js';

/** Areas of all pixels that are covered at all, by pixel number. */
function pixelAreas({ count, pixel, length, area }: Coverage): Map<number, number> {
  const areas = new Map<number, number>();
  for (let n = 0; n < count; n++) {
    for (let k = 0; k < length[n]; k++) areas.set(pixel[n] + k, area[n]);
  }
  return areas;
}

describe('exact coverage', () => {
  it('is 1 inside, the cut part on edges, and lies in order', () => {
    const rings = ringList([Float64Array.of(1.5, 1.25, 4, 1.25, 4, 3, 1.5, 3)]);
    const found = makeCoverage({ width: 10, height: 10 })(rings, 0, 1);
    const areas = pixelAreas(found);
    expect([...areas.keys()]).toEqual([11, 12, 13, 21, 22, 23]);
    const wanted = [0.375, 0.75, 0.75, 0.5, 1, 1];
    [...areas.values()].forEach((area, p) => expect(area).toBeCloseTo(wanted[p], 12));
    expect(found.total).toBeCloseTo(2.5 * 1.75, 12);
  });

  it('subtracts holes, and takes rings either way round', () => {
    const square = Float64Array.of(0, 0, 6, 0, 6, 6, 0, 6);
    const hole = Float64Array.of(1, 1, 1, 3, 3, 3, 3, 1);
    const cover = makeCoverage({ width: 6, height: 6 });
    for (const rings of [
      [square, hole],
      [flipped(square), flipped(hole)],
    ]) {
      const found = cover(ringList(rings), 0, 2);
      expect(found.total).toBeCloseTo(32, 12);
      const areas = pixelAreas(found);
      expect(areas.size).toBe(32);
      expect(areas.has(7)).toBe(false);
    }
  });

  it('agrees with the areas of clipped polygons on 400 triangles hanging over the picture', () => {
    const random = sequence(11);
    const [width, height] = [9, 7];
    const cover = makeCoverage({ width, height });
    for (let round = 0; round < 400; round++) {
      const ring = Float64Array.from({ length: 6 }, () => random(2400) / 100 - 7);
      const areas = pixelAreas(cover(ringList([ring]), 0, 1));
      for (let y = 0; y < height; y++) {
        for (let x = 0; x < width; x++) {
          const truth = clippedArea(ring, x, y);
          expect(Math.abs((areas.get(y * width + x) ?? 0) - truth)).toBeLessThan(1e-8);
        }
      }
    }
  });
});

function flipped(ring: Float64Array): Float64Array {
  const points = Array.from({ length: ring.length / 2 }, (_, p) => [ring[2 * p], ring[2 * p + 1]]);
  return Float64Array.from(points.reverse().flat());
}

/** Area of a triangle inside the unit square at x, y: half-plane clipping, one side at a time. */
function clippedArea(ring: Float64Array, x: number, y: number): number {
  let points = Array.from({ length: ring.length / 2 }, (_, p) => [
    ring[2 * p] - x,
    ring[2 * p + 1] - y,
  ]);
  for (const [axis, sign, limit] of [
    [0, 1, 0],
    [0, -1, -1],
    [1, 1, 0],
    [1, -1, -1],
  ]) {
    const depth = (point: number[]) => sign * point[axis] - limit;
    points = points.flatMap((from, p) => {
      const to = points[(p + 1) % points.length];
      const [d, e] = [depth(from), depth(to)];
      const kept = d >= 0 ? [from] : [];
      if (d < 0 === e < 0) return kept;
      const t = d / (d - e);
      return [...kept, [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]];
    });
  }
  return Math.abs(
    points.reduce((sum, [ax, ay], p) => {
      const [bx, by] = points[(p + 1) % points.length];
      return sum + (ax * by - bx * ay) / 2;
    }, 0),
  );
}
