import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { homographyOf, seenAt } from '../src/core/homography.js';
import type { Point } from '../src/core/homography.js';
import { completeShape, stitchesBefore } from '../src/core/panel/shape.js';
import type { Shape } from '../src/core/panel/shape.js';
import { solvePhoto } from '../src/core/swatch/photo.js';
import type { PhotoWish } from '../src/core/swatch/photo.js';

const anyShape = fc
  .record({
    wedges: fc.integer({ min: 4, max: 12 }),
    rounds: fc.integer({ min: 6, max: 20 }),
    increase: fc.constantFrom('first' as const, 'middle' as const, 'last' as const),
    lean: fc.double({ min: -0.9, max: 0.9, noNaN: true }),
    construction: fc.constantFrom('spiral' as const, 'joined' as const),
    hand: fc.constantFrom('right' as const, 'left' as const),
    beadsFace: fc.constantFrom('away' as const, 'toward' as const),
    roundHeightMm: fc.double({ min: 1.4, max: 4, noNaN: true }),
  })
  .map((wish) => completeShape({ ...wish, beadDiameterMm: 2.1 }));

/** Corners of a square on the table, 200 mm wide, as a camera that is held askew sees them. */
const anyView = fc
  .array(fc.double({ min: -220, max: 220, noNaN: true }), { minLength: 8, maxLength: 8 })
  .map((d): Point[] =>
    [
      [500, 500],
      [2500, 500],
      [2500, 2500],
      [500, 2500],
    ].map(([x, y], n): Point => [x + d[2 * n], y + d[2 * n + 1]]),
  );
const square: Point[] = [
  [-100, -100],
  [100, -100],
  [100, 100],
  [-100, 100],
];

/** Bead middles of a panel of ours, seen through a known perspective. */
function photograph(shape: Shape, look: (at: Point) => Point, rims: number): PhotoWish {
  const { centres } = panelGeometry(shape);
  const { wedges, rounds, stitchWidthMm: _w, roundHeightMm: _h, lean: _l, ...rest } = shape;
  const point = (round: number, wedge: number) => {
    const s = stitchesBefore(shape, round) + (wedge - 1) * round;
    const [x, y] = look([centres[2 * s], centres[2 * s + 1]]);
    return { round, wedge, x, y };
  };
  const rimWedges = Array.from({ length: rims }, (_, n) => 1 + Math.floor((n * wedges) / rims));
  const points = [
    ...rimWedges.map((wedge) => point(rounds, wedge)),
    point(2, 1),
    point(Math.ceil(rounds / 2), 1),
  ];
  const ruler = { from: look([-60, 70]), to: look([-10, 70]), mm: 50, offMm: 0.5 };
  return { worked: { ...rest, wedges, rounds }, centre: look([0, 0]), points, pixels: 3, ruler };
}

const askew = (view: Point[]) => {
  const h = homographyOf(square, view)!;
  return ([x, y]: Point): Point => seenAt(h, x, y);
};
const above = ([x, y]: Point): Point => [1500 + 9 * x - 2 * y, 1400 + 2 * x + 9 * y];

describe('a photograph of a swatch', () => {
  it('gives lean and height back through any known perspective', () => {
    fc.assert(
      fc.property(anyShape, anyView, (shape, view) => {
        const found = solvePhoto(photograph(shape, askew(view), 4));
        expect(found.perspective).toBe(true);
        expect(Math.abs(found.lean.value - shape.lean)).toBeLessThan(2e-6);
        expect(Math.abs(found.roundHeightMm!.value - shape.roundHeightMm)).toBeLessThan(1e-5);
      }),
      { numRuns: 30 },
    );
  });

  it('gives them back from one rim point when taken from straight above', () => {
    fc.assert(
      fc.property(anyShape, (shape) => {
        const found = solvePhoto(photograph(shape, above, 1));
        expect(found.perspective).toBe(false);
        expect(Math.abs(found.lean.value - shape.lean)).toBeLessThan(2e-6);
        expect(Math.abs(found.roundHeightMm!.value - shape.roundHeightMm)).toBeLessThan(1e-5);
      }),
      { numRuns: 30 },
    );
  });

  it('keeps the true lean and height within its bars when points are a little off', () => {
    const shift = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), {
      minLength: 18,
      maxLength: 18,
    });
    fc.assert(
      fc.property(anyShape, anyView, shift, (shape, view, by) => {
        const wish = photograph(shape, askew(view), 4);
        const { centre, points, worked } = wish;
        const off: PhotoWish = {
          ...wish,
          worked: { ...worked, outline: shape.outline },
          pixels: 1,
          centre: [centre[0] + by[0], centre[1] + by[1]],
          points: points.map((p, n) => ({ ...p, x: p.x + by[2 * n + 2], y: p.y + by[2 * n + 3] })),
        };
        const { lean, roundHeightMm: height } = solvePhoto(off);
        const slack = 0.1 * (lean.most - lean.least);
        expect(shape.lean).toBeGreaterThan(lean.least - slack);
        expect(shape.lean).toBeLessThan(lean.most + slack);
        expect(lean.most - lean.least).toBeLessThan(0.6);
        expect(shape.roundHeightMm).toBeGreaterThan(height!.least);
        expect(shape.roundHeightMm).toBeLessThan(height!.most);
      }),
      { numRuns: 30 },
    );
  });

  it('says what is missing, or does not fit', () => {
    const shape = completeShape({ wedges: 7, rounds: 10, beadDiameterMm: 2.1 });
    const wish = photograph(shape, above, 4);
    const code = (wrong: PhotoWish) => {
      try {
        return solvePhoto(wrong).warnings.map((one) => one.code);
      } catch (error) {
        if (error instanceof RondureError) return error.code;
        throw error;
      }
    };
    expect(code(wish)).toEqual([]);
    const { points } = wish;
    expect(code({ ...wish, points: points.slice(0, 4) })).toBe('photo-points-too-few');
    expect(code({ ...wish, points: points.slice(4, 5) })).toBe('photo-points-too-few');
    const line = points.map((p, n) => (p.round === 10 ? { ...p, x: 100 * n, y: 100 * n } : p));
    expect(code({ ...wish, points: line })).toBe('photo-points-in-line');
    const swapped = [
      { ...points[0], wedge: points[1].wedge },
      { ...points[1], wedge: 1 },
    ];
    expect(code({ ...wish, points: [...swapped, ...points.slice(2)] })).not.toEqual([]);
  });
});
