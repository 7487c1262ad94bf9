import { describe, expect, it } from 'vitest';
import { finishedEdge } from '../src/core/panel/edge.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { insideRing } from '../src/core/panel/rings.js';
import {
  panelToPicture,
  placePicture,
  scaleInsideRing,
} from '../src/core/picture/sampling/place.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';

const target = (wish: Partial<ShapeWish> = {}) =>
  panelGeometry(completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...wish }));

const picture = { width: 1200, height: 900 };

describe('fit and fill', () => {
  // Worked by hand: apothem 2.247 · 20.5 = 46.0635 mm, circle through the corners of a heptagon
  // 46.0635 / cos(180°/7) = 46.0635 / 0.9009689 = 51.1266 mm (cosine from the table of
  // Abramowitz & Stegun 4.10).
  it('span the circle through the corners with the longer or the shorter side', () => {
    expect(placePicture(picture, target(), { place: 'fill' })).toEqual({
      mmPerPixel: expect.closeTo(102.2532 / 900, 5),
      centreXmm: 0,
      centreYmm: 0,
      rotateDegrees: 0,
      mirror: false,
    });
    const { mmPerPixel } = placePicture(picture, target(), { place: 'fit' });
    expect(mmPerPixel).toBeCloseTo(102.2532 / 1200, 5);
  });

  it('zoom multiplies, shift moves, and neither changes the other', () => {
    const plain = placePicture(picture, target(), { place: 'fill' });
    const wish = { place: 'fill', zoom: 2, shiftXmm: 3, shiftYmm: -4 } as const;
    const moved = placePicture(picture, target(), wish);
    expect(moved.mmPerPixel / plain.mmPerPixel).toBeCloseTo(2, 7);
    expect([moved.centreXmm, moved.centreYmm]).toEqual([3, -4]);
  });
});

describe('inside', () => {
  it('agrees with geometry: rectangles in a square and in a circle', () => {
    const square = Float64Array.of(-5, -5, 5, -5, 5, 5, -5, 5);
    expect(scaleInsideRing({ width: 4, height: 2 }, square, 0)).toBeCloseTo(2.5, 12);
    expect(scaleInsideRing({ width: 4, height: 2 }, square, 90)).toBeCloseTo(2.5, 12);
    // A square turned by 45° in a square: side 10 / √2.
    expect(scaleInsideRing({ width: 1, height: 1 }, square, 45)).toBeCloseTo(10 / Math.SQRT2, 9);
    const circle = Float64Array.from({ length: 20000 }, (_, p) => {
      const angle = (2 * Math.PI * (p >> 1)) / 10000;
      return 5 * (p % 2 === 0 ? Math.cos(angle) : Math.sin(angle));
    });
    expect(scaleInsideRing({ width: 3, height: 4 }, circle, 20)).toBeCloseTo(2, 6);
  });

  it.each([
    { outline: 'polygon', construction: 'spiral' },
    { outline: 'polygon', construction: 'joined', wedges: 3 },
    { outline: 'circle', construction: 'spiral', wedges: 5, increase: 'middle' },
    { outline: 'circle', construction: 'joined', hand: 'left', increase: 'middle' },
  ] as const)('lies inside the finished edge, and touches it: %o', (wish) => {
    const geometry = target(wish);
    const edge = finishedEdge(geometry);
    for (const rotateDegrees of [0, 30, 90, 200.5]) {
      const place = placePicture(picture, geometry, { place: 'inside', rotateDegrees });
      expect(outside(place, 0.9999, edge)).toBe(0);
      expect(outside(place, 1.002, edge)).toBeGreaterThan(0);
    }
  });
});

/** Points along the picture's rectangle, blown up by `grown`, that lie outside a ring. */
function outside(place: ReturnType<typeof placePicture>, grown: number, ring: Float64Array) {
  const turn = (place.rotateDegrees * Math.PI) / 180;
  let found = 0;
  for (let p = 0; p < 20000; p++) {
    const t = (p % 5000) / 2500 - 1;
    const [x, y] = [[t, -1], [1, t], [-t, 1], [-1, -t]][Math.floor(p / 5000)]; // prettier-ignore
    const px = (x * grown * place.mmPerPixel * picture.width) / 2;
    const py = (y * grown * place.mmPerPixel * picture.height) / 2;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    if (!insideRing(ring, cos * px - sin * py, sin * px + cos * py)) found++;
  }
  return found;
}

describe('the way from the panel to the picture', () => {
  const at = (map: readonly number[], x: number, y: number) => [
    map[0] * x + map[2] * y + map[4],
    map[1] * x + map[3] * y + map[5],
  ];
  const place = { mmPerPixel: 0.1, centreXmm: 2, centreYmm: 1, rotateDegrees: 0, mirror: false };

  it('puts the middle of the picture where the place says', () => {
    for (const rotateDegrees of [0, 33, 90, 270]) {
      const [x, y] = at(panelToPicture({ ...place, rotateDegrees }, picture), 2, 1);
      expect(x).toBeCloseTo(600, 6);
      expect(y).toBeCloseTo(450, 6);
    }
  });

  it('turns clockwise: after 90° the top of the picture lies to the right', () => {
    const [x, y] = at(panelToPicture({ ...place, rotateDegrees: 90 }, picture), 2 + 45, 1);
    expect(x).toBeCloseTo(600, 9);
    expect(y).toBeCloseTo(0, 9);
  });

  it('mirrors before it turns', () => {
    const upright = panelToPicture({ ...place, mirror: true }, picture);
    expect(at(upright, 2 + 60, 1)[0]).toBeCloseTo(0, 9);
    // The picture's right edge, mirrored to the left, is turned up by 90° clockwise.
    const turned = panelToPicture({ ...place, mirror: true, rotateDegrees: 90 }, picture);
    const [x, y] = at(turned, 2, 1 - 60);
    expect(x).toBeCloseTo(1200, 9);
    expect(y).toBeCloseTo(450, 9);
  });
});

describe('repeat: on one wedge, rim up', () => {
  const geometry = target({ rounds: 10, stitchWidthMm: 2, roundHeightMm: 2.25 });
  // The triangle is 20 mm wide and 22.5 mm high, from y = -23.625 to -1.125.
  const box = (place: ReturnType<typeof placePicture>, size = picture) => ({
    width: size.width * place.mmPerPixel,
    height: size.height * place.mmPerPixel,
    top: place.centreYmm - (size.height * place.mmPerPixel) / 2,
    bottom: place.centreYmm + (size.height * place.mmPerPixel) / 2,
  });

  it('fit: as large as the box around it lets; fill: covers that box', () => {
    const fit = box(placePicture(picture, geometry, { place: 'fit', repeat: true }));
    expect(fit.width).toBeCloseTo(20, 6);
    expect(fit.height).toBeCloseTo(15, 6);
    const fill = box(placePicture(picture, geometry, { place: 'fill', repeat: true }));
    expect(fill.height).toBeCloseTo(22.5, 6);
    expect([fill.top, fill.bottom]).toEqual([
      expect.closeTo(-23.625, 6),
      expect.closeTo(-1.125, 6),
    ]);
  });

  it('inside: no row that the picture touches is narrower than the picture', () => {
    for (const size of [picture, { width: 100, height: 400 }, { width: 300, height: 300 }]) {
      const place = placePicture(size, geometry, { place: 'inside', repeat: true });
      const { width, top, bottom } = box(place, size);
      expect(top).toBeGreaterThan(-23.6251);
      const narrowest = Math.round(-(bottom - 1e-6) / 2.25 + 1e-9);
      expect(2 * narrowest).toBeGreaterThan(width - 1e-6);
      // By trying every row, no larger one fits.
      const best = Math.max(
        ...Array.from({ length: 10 }, (_, k) =>
          Math.min((2 * (k + 1)) / size.width, (2.25 * (10 - k)) / size.height),
        ),
      );
      expect(place.mmPerPixel).toBeCloseTo(best, 7);
    }
  });
});
