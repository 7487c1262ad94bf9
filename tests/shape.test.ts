/** Size, flatness and limits of a shape, against tables of polygons and plain arithmetic. */
import { describe, expect, it } from 'vitest';
import { acrossRange, roundsForAcross } from '../src/core/panel/across.js';
import { acrossMm, cornerRadius, holeRadius } from '../src/core/panel/edge.js';
import {
  completeShape,
  flatHeightPerWidth,
  flatWedges,
  naturalOutline,
  shapeWarnings,
} from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';
import { smallSwatch } from './support/swatch.js';

const shapeOf = (wish: Partial<ShapeWish> = {}) =>
  completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...wish });

describe('size', () => {
  // Regular polygons: apothem and circumradius over the side (formulas in CRC Standard
  // Mathematical Tables; values from mpmath, 40 digits).
  const polygons: [n: number, apothem: number, circumradius: number][] = [
    [3, 0.28867513459481, 0.57735026918963],
    [4, 0.5, 0.70710678118655],
    [5, 0.68819096023559, 0.85065080835204],
    [6, 0.86602540378444, 1],
    [7, 1.03826069828617, 1.15238243548124],
    [8, 1.20710678118655, 1.30656296487638],
    [9, 1.37373870972731, 1.46190220008154],
    [10, 1.53884176858763, 1.61803398874989],
    [11, 1.70284361944463, 1.77473276644211],
    [12, 1.86602540378444, 1.93185165257814],
  ];

  it.each(polygons)('%i-gon: h over w, corners and across', (n, apothem, circumradius) => {
    // h over w is the apothem over the side: round r has side r·w and apothem r·h.
    expect(flatHeightPerWidth(n, 'polygon')).toBeCloseTo(apothem, 13);
    const shape = { ...shapeOf({ wedges: n, outline: 'polygon', rounds: 19 }), roundHeightMm: 2 };
    const side = (19.5 * 2) / apothem;
    expect(cornerRadius(shape)).toBeCloseTo(side * circumradius, 9);
    // The widest place is the longest of the distances between corners.
    const corners = Array.from({ length: n }, (_, k) => [
      side * circumradius * Math.cos((2 * Math.PI * k) / n),
      side * circumradius * Math.sin((2 * Math.PI * k) / n),
    ]);
    const widest = Math.max(
      ...corners.map(([x, y]) => Math.hypot(x - corners[0][0], y - corners[0][1])),
    );
    expect(acrossMm(shape)).toBeCloseTo(widest, 9);
  });

  it('of a pentagon is the golden ratio times its side', () => {
    const shape = shapeOf({ wedges: 5, outline: 'polygon' });
    const side = (shape.roundHeightMm * 20.5) / 0.68819096023559;
    expect(acrossMm(shape)).toBeCloseTo(side * 1.618033988749895, 9);
  });

  it('of a circle is its diameter', () => {
    const shape = { ...shapeOf({ outline: 'circle', rounds: 20 }), roundHeightMm: 2 };
    expect(acrossMm(shape)).toBe(82);
    expect(cornerRadius(shape)).toBe(41);
    expect(holeRadius(shape)).toBe(1);
  });

  it('of 7 wedges in 2.1 mm beads: w 2.164, h 2.247, 94.8 and 99.7 mm', () => {
    const shape = shapeOf();
    expect([shape.stitchWidthMm, shape.roundHeightMm]).toEqual([2.164, 2.247]);
    expect(acrossMm(shapeOf({ rounds: 19 }))).toBeCloseTo(94.8, 1);
    expect(acrossMm(shape)).toBeCloseTo(99.7, 1);
  });

  it('gives the nearest number of rounds, ties down', () => {
    expect(roundsForAcross(shapeOf(), 95)).toBe(19);
    expect(roundsForAcross(shapeOf(), 99)).toBe(20);
    // Circle, h 2: R rounds are 4R + 2 across, so 84 lies midway between 20 and 21.
    const circle = { ...shapeOf({ outline: 'circle' }), roundHeightMm: 2 };
    expect([83.9, 84, 84.1].map((wish) => roundsForAcross(circle, wish))).toEqual([20, 20, 21]);
    // 2 to 80 rounds are 10 to 322 across, and a round is 4.
    expect([6, 326].map((wish) => roundsForAcross(circle, wish))).toEqual([2, 80]);
    for (const wish of [5.9, 326.1, 0, -5, NaN, Infinity]) {
      expect(() => roundsForAcross(circle, wish)).toThrow(
        expect.objectContaining({
          code: 'across-out-of-reach',
          facts: { gotMm: wish, leastMm: 10, mostMm: 322 },
        }),
      );
    }
    const odd = { ...circle, roundHeightMm: 2.1 };
    for (let R = 2; R < 80; R++) {
      const midway = (acrossMm({ ...odd, rounds: R }) + acrossMm({ ...odd, rounds: R + 1 })) / 2;
      expect(roundsForAcross(odd, midway)).toBe(R);
    }
  });

  // 96.4 to 97.7 mm: an elastic model of the default piece, measured for the first trial.
  it('of a size before a swatch says a range between both outlines, of stitches as large', () => {
    const polygon = shapeOf();
    const circle = shapeOf({ outline: 'circle' });
    const { leastMm, mostMm } = acrossRange({ shape: polygon });
    expect(leastMm).toBeCloseTo(95.4, 1);
    expect(mostMm).toBe(acrossMm(polygon));
    expect(acrossRange({ shape: circle }).leastMm).toBe(acrossMm(circle));
    expect(acrossRange({ shape: circle }).mostMm).toBeCloseTo(mostMm, 1);
    expect(acrossMm(circle)).toBeCloseTo(leastMm, 1);
    const swatch = smallSwatch();
    const measured = acrossRange({ shape: polygon, swatch });
    expect(measured).toEqual({ leastMm: mostMm, mostMm });
    const { roundHeightMm: _h, ...leanOnly } = swatch;
    expect(acrossRange({ shape: polygon, swatch: leanOnly }).leastMm).toBe(leastMm);
  });

  it('keeps the pitch: w·h is the square of 1.05 diameters, to the micrometre kept', () => {
    for (let wedges = 3; wedges <= 12; wedges++) {
      for (const outline of ['circle', 'polygon'] as const) {
        const { stitchWidthMm: w, roundHeightMm: h } = shapeOf({ wedges, outline });
        expect(w * h).toBeCloseTo(2.205 ** 2, 2);
      }
    }
    expect(shapeOf({ stitchWidthMm: 2.205 }).roundHeightMm).toBe(2.205);
    expect(shapeOf({ roundHeightMm: 2 }).stitchWidthMm).toBeCloseTo(4.862025 / 2, 3);
    expect(shapeOf({ roundHeightMm: 2, stitchWidthMm: 3 })).toMatchObject({ stitchWidthMm: 3 });
  });
});

describe('flatness', () => {
  it.each([
    // 2π·h/w by hand: the girth of round r is 2πrh and holds N·r stitches w wide.
    [0.8, 5.03],
    [0.9, 5.65],
    [0.955, 6.0],
    [1.0, 6.28],
    [1.05, 6.6],
    [1.114, 7.0],
    [1.2, 7.54],
    [1.273, 8.0],
  ])('h/w %f lies flat with %f wedges on a circle', (ratio, wedges) => {
    const shape = { outline: 'circle', stitchWidthMm: 2, roundHeightMm: 2 * ratio } as const;
    expect(flatWedges(shape)).toBeCloseTo(wedges, 2);
  });

  it('is met by every shape left to its default stitch', () => {
    for (let wedges = 3; wedges <= 12; wedges++) {
      for (const outline of ['circle', 'polygon'] as const) {
        const shape = shapeOf({ wedges, outline });
        expect(flatWedges(shape)).toBeCloseTo(wedges, 1);
        const codes = shapeWarnings(shape, 2.1).map(({ code }) => code);
        expect(codes).not.toContain('panel-cups');
        expect(codes).not.toContain('panel-ruffles');
      }
    }
  });

  it('warns outside 0.92 to 1.08, with the wedges that would lie flat', () => {
    const circle = (ratio: number) => ({
      ...shapeOf({ outline: 'circle', wedges: 6 }),
      stitchWidthMm: 2.2,
      roundHeightMm: (2.2 * 6 * ratio) / (2 * Math.PI),
    });
    // N/N* = 1/ratio.
    expect(shapeWarnings(circle(1 / 0.93), 2.1)).toEqual([]);
    expect(shapeWarnings(circle(1 / 1.07), 2.1)).toEqual([]);
    expect(shapeWarnings(circle(1 / 0.91), 2.1)).toMatchObject([{ code: 'panel-cups' }]);
    expect(shapeWarnings(circle(1 / 1.09), 2.1)).toMatchObject([
      { code: 'panel-ruffles', facts: { wedges: 6, flatWedges: 5.5 } },
    ]);
  });

  it('warns when a stitch is smaller than nine tenths of its bead, and of stretched polygons', () => {
    const small = shapeOf({ stitchWidthMm: 1.88, roundHeightMm: 1.95 });
    expect(shapeWarnings(small, 2.1)).toMatchObject([
      { code: 'stitch-smaller-than-bead', facts: { what: 'width', gotMm: 1.88, beadMm: 2.1 } },
    ]);
    const stretched = shapeOf({ increase: 'first', outline: 'polygon' });
    expect(shapeWarnings(stretched, 2.1).map(({ code }) => code)).toContain('polygon-stretches');
    expect(shapeWarnings(shapeOf(), 2.1)).toEqual([]);
  });

  it('takes a polygon where rounds nest, and refuses one with increases in the middle', () => {
    const table = [-0.75, -0.74, -0.25, -0.24, 0.24, 0.25, 0.5, 0.75, 0.76].map((lean) => [
      naturalOutline('first', lean)[0],
      naturalOutline('middle', lean)[0],
      naturalOutline('last', lean)[0],
    ]);
    expect(table.map((row) => row.join('')).join(' ')).toBe('pcc pcc pcc ccc ccc ccp ccp ccp ccc');
    expect(() => shapeOf({ increase: 'middle', outline: 'polygon' })).toThrow(/--outline circle/);
  });

  it.each([
    { wedges: 2 },
    { wedges: 13 },
    { wedges: 6.5 },
    { wedges: NaN },
    { rounds: 1 },
    { rounds: 81 },
    { lean: 1.01 },
    { lean: NaN },
    { stitchWidthMm: 0 },
    { roundHeightMm: Infinity },
    { beadDiameterMm: -2 },
  ])('refuses %o', (wish) => {
    expect(() => shapeOf(wish)).toThrow(
      expect.objectContaining({
        code: 'shape-impossible',
        facts: {
          field: Object.keys(wish)[0],
          got: Object.values(wish)[0],
          expected: expect.objectContaining({ least: expect.any(Number) as number }) as object,
        },
      }),
    );
  });
});
