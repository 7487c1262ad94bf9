import { describe, expect, it } from 'vitest';
import { srgbToLinear } from '../src/core/colour/srgb.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';
import { panelToPicture, placePicture } from '../src/core/picture/sampling/place.js';
import type { PlaceWish } from '../src/core/picture/sampling/place.js';
import { samplePanel } from '../src/core/picture/sampling/sample.js';
import type { StitchColours } from '../src/core/picture/sampling/sample.js';
import type { Picture } from '../src/core/picture/picture.js';
import { paint, sequence } from './support/paint.js';

const waysOfWorking = (['right', 'left'] as const).flatMap((hand) =>
  (['away', 'toward'] as const).map((beadsFace) => ({ hand, beadsFace })),
);

function panel(wish: Partial<ShapeWish> = {}) {
  const shape = completeShape({ wedges: 7, rounds: 8, beadDiameterMm: 2.1, ...wish });
  const geometry = panelGeometry(shape);
  return { shape, geometry, footprints: panelFootprints(geometry) };
}

function sampled(
  picture: Picture,
  on: ReturnType<typeof panel>,
  wish: Partial<PlaceWish> = {},
  art: 'photo' | 'drawing' = 'photo',
  background: readonly [number, number, number] | 'bare' = [255, 255, 255],
): StitchColours {
  const place = placePicture(picture, on.geometry, { place: 'fill', ...wish });
  return samplePanel({ picture, ...on, place, art, background });
}

const rgb = (colours: StitchColours, s: number) => [...colours.linear.subarray(3 * s, 3 * s + 3)];

describe('means over footprints', () => {
  it.each([
    { construction: 'spiral', outline: 'polygon' },
    { construction: 'joined', outline: 'circle' },
  ] as const)('agree with a mask made point by point: $construction, $outline', (wish) => {
    const on = panel({ rounds: 3, wedges: 6, ...wish });
    const random = sequence(5);
    const picture = paint(23, 17, () => [random(256), random(256), random(256)]);
    const wishes = { place: 'fit', rotateDegrees: 31, shiftXmm: 2, mirror: true } as const;
    const place = placePicture(picture, on.geometry, wishes);
    const got = samplePanel({ picture, ...on, place, art: 'photo', background: [10, 20, 30] });
    const [a, b, c, d, e, f] = panelToPicture(place, picture);
    // A grid of points; each asks its owner and the pixel it falls in.
    const step = 1 / 40;
    const reach = 10;
    const sums = new Float64Array(4 * on.geometry.count);
    const background = [10, 20, 30].map((code) => srgbToLinear[code]);
    for (let x = -reach + step / 2; x < reach; x += step) {
      for (let y = -reach + step / 2; y < reach; y += step) {
        const s = on.footprints.owner(x, y);
        if (s < 0) continue;
        const px = Math.floor(a * x + c * y + e);
        const py = Math.floor(b * x + d * y + f);
        const inside = px >= 0 && py >= 0 && px < picture.width && py < picture.height;
        const at = 4 * (py * picture.width + px);
        for (let k = 0; k < 3; k++) {
          sums[4 * s + k] += inside ? srgbToLinear[picture.data[at + k]] : background[k];
        }
        sums[4 * s + 3]++;
      }
    }
    // A footprint of 2.4 to 4.8 mm² holds 3,800 points or more. Points within half a step of a border
    // may fall wrongly: borders of pixels and of the footprint, up to 30 mm long, are crossed by
    // 30 / step = 1,200 points whose errors (half a point each, either sign) add up as a walk:
    // 0.5·sqrt(1,200) / 3,800 = 0.0046; four times that is allowed.
    for (let s = 0; s < on.geometry.count; s++) {
      const points = sums[4 * s + 3];
      expect(points).toBeGreaterThan(2000);
      rgb(got, s).forEach((value, k) => {
        expect(Math.abs(value - sums[4 * s + k] / points)).toBeLessThan(0.0184);
      });
    }
  });

  it('give one colour exactly as it is, in both arts, for every grey and some colours', () => {
    const on = panel({ rounds: 5 });
    const greys = Array.from({ length: 256 }, (_, code) => [code, code, code] as const);
    const colours = [
      [217, 179, 106],
      [0, 90, 160],
      [255, 0, 1],
    ] as const;
    for (const colour of [...greys, ...colours]) {
      const picture = paint(12, 9, () => colour);
      for (const art of ['photo', 'drawing'] as const) {
        const got = sampled(picture, on, { place: 'inside', rotateDegrees: 17 }, art, colour);
        for (let s = 0; s < on.geometry.count; s++) {
          for (let k = 0; k < 3; k++) {
            if (got.linear[3 * s + k] !== srgbToLinear[colour[k]]) {
              expect(got.linear[3 * s + k]).toBe(srgbToLinear[colour[k]]);
            }
          }
        }
      }
    }
  });

  it('cover the whole panel with `fill` of a square picture, and less with `inside`', () => {
    const on = panel();
    const picture = paint(40, 40, () => [0, 0, 0]);
    expect(Math.min(...sampled(picture, on).covered)).toBe(1);
    expect(Math.min(...sampled(picture, on, { place: 'inside' }).covered)).toBe(0);
  });

  it('take a 5 × 5 picture', () => {
    const on = panel({ rounds: 20 });
    const picture = paint(5, 5, (x, y) => [50 * Math.floor(x), 50 * Math.floor(y), 0]);
    const got = sampled(picture, on);
    const side = 100 / 5;
    let checked = 0;
    for (let s = 0; s < on.geometry.count; s++) {
      const place = [on.geometry.centres[2 * s], on.geometry.centres[2 * s + 1]];
      const cell = place.map((v) => (v / (2 * outerRadius(on))) * 5 + 2.5);
      // Only stitches well inside one pixel.
      if (cell.some((v) => Math.abs(v - Math.round(v)) * side < 2.5)) continue;
      checked++;
      cell.forEach((v, k) => expect(rgb(got, s)[k]).toBe(srgbToLinear[50 * Math.floor(v)]));
    }
    expect(checked).toBeGreaterThan(500);
  });
});

/** Radius of the circle through the outline's corners, by the handbook: apothem / cos(π/N). */
function outerRadius({ shape }: ReturnType<typeof panel>): number {
  const apothem = shape.roundHeightMm * (shape.rounds + 0.5);
  return shape.outline === 'circle' ? apothem : apothem / Math.cos(Math.PI / shape.wedges);
}

describe('which way up', () => {
  // A capital F: stem on the left, long arm on top, short arm below it.
  const isF = (x: number, y: number) =>
    x >= 25 && x < 85 && y >= 10 && y < 90 && (x < 42 || y < 27 || (y >= 45 && y < 60 && x < 70));
  const letterF = paint(100, 100, (x, y) => (isF(x, y) ? [0, 0, 0] : [255, 255, 255]));

  it.each(
    waysOfWorking.flatMap((way) =>
      (['last', 'middle', 'first'] as const).map((increase) => ({ ...way, increase })),
    ),
  )('F stays an F: $hand hand, beads $beadsFace, $increase', (way) => {
    const on = panel({ rounds: 20, ...way });
    for (const art of ['photo', 'drawing'] as const) {
      const got = sampled(letterF, on, {}, art);
      const scale = 100 / (2 * outerRadius(on));
      let dark = 0;
      for (let s = 0; s < on.geometry.count; s++) {
        const x = on.geometry.centres[2 * s] * scale + 50;
        const y = on.geometry.centres[2 * s + 1] * scale + 50;
        const near = [-3, 0, 3].flatMap((dx) => [-3, 0, 3].map((dy) => isF(x + dx, y + dy)));
        if (near.every(Boolean)) {
          expect(rgb(got, s)).toEqual([0, 0, 0]);
          dark++;
        } else if (!near.some(Boolean)) expect(rgb(got, s)).toEqual([1, 1, 1]);
      }
      expect(dark).toBeGreaterThan(100);
    }
  });

  it.each(waysOfWorking)(
    'half and half: the edge lies where it belongs ($hand, $beadsFace)',
    (way) => {
      const on = panel({ rounds: 15, ...way });
      for (const degrees of [0, 90, 180, 270, 37]) {
        const halves = paint(64, 64, (x) => (x < 32 ? [0, 0, 0] : [255, 255, 255]));
        const got = sampled(halves, on, { rotateDegrees: degrees, zoom: 1.5 });
        // White lies to the right, turned clockwise: towards (cos, sin) with y down.
        const [ux, uy] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
        let white = 0;
        for (let s = 0; s < on.geometry.count; s++) {
          const off = ux * on.geometry.centres[2 * s] + uy * on.geometry.centres[2 * s + 1];
          const [value] = rgb(got, s);
          white += value * on.footprints.area(s);
          if (off > 2) expect(value).toBe(1);
          if (off < -2) expect(value).toBe(0);
        }
        // White takes the area of the footprints' white side, cut here by the plain shoelace formula.
        expect(white).toBeCloseTo(areaBeyond(on, ux, uy), 6);
      }
    },
  );

  it('mirror, quarter turns and shift move the F as they say', () => {
    const on = panel({ rounds: 20 });
    const scale = 100 / (2 * outerRadius(on));
    const cases: [Partial<PlaceWish>, (x: number, y: number) => [number, number]][] = [
      [{ mirror: true }, (x, y) => [-x, y]],
      [{ rotateDegrees: 90 }, (x, y) => [y, -x]],
      [{ rotateDegrees: 90, mirror: true }, (x, y) => [-y, -x]],
      [{ shiftXmm: 10, shiftYmm: -5 }, (x, y) => [x - 10, y + 5]],
      [{ zoom: 0.5 }, (x, y) => [2 * x, 2 * y]],
      [{ zoom: 0.5, rotateDegrees: -90, shiftXmm: 8 }, (x, y) => [-2 * y, 2 * (x - 8)]],
    ];
    for (const [wish, back] of cases) {
      const got = sampled(letterF, on, wish);
      for (let s = 0; s < on.geometry.count; s++) {
        const [x, y] = back(on.geometry.centres[2 * s], on.geometry.centres[2 * s + 1]);
        const near = [-6, 0, 6].flatMap((dx) =>
          [-6, 0, 6].map((dy) => isF(x * scale + 50 + dx, y * scale + 50 + dy)),
        );
        if (near.every(Boolean)) expect(rgb(got, s)).toEqual([0, 0, 0]);
        else if (!near.some(Boolean)) expect(rgb(got, s)).toEqual([1, 1, 1]);
      }
    }
  });
});

/** Area of all footprints on the side of the line through the origin that (ux, uy) points to. */
function areaBeyond(on: ReturnType<typeof panel>, ux: number, uy: number): number {
  let twice = 0;
  for (let s = 0; s < on.geometry.count; s++) {
    for (const ring of on.footprints.rings(s)) {
      const kept: number[][] = [];
      for (let p = 0; p < ring.length; p += 2) {
        const q = (p + 2) % ring.length;
        const from = ux * ring[p] + uy * ring[p + 1];
        const to = ux * ring[q] + uy * ring[q + 1];
        if (from >= 0) kept.push([ring[p], ring[p + 1]]);
        if (from >= 0 !== to >= 0) {
          const t = from / (from - to);
          kept.push([
            ring[p] + t * (ring[q] - ring[p]),
            ring[p + 1] + t * (ring[q + 1] - ring[p + 1]),
          ]);
        }
      }
      kept.forEach(([ax, ay], p) => {
        const [bx, by] = kept[(p + 1) % kept.length];
        twice += ax * by - bx * ay;
      });
    }
  }
  return twice / 2;
}

describe('background and transparency', () => {
  const on = panel({ rounds: 12 });
  const [red, blue] = [[200, 0, 0, 255] as const, [0, 0, 180] as const];

  it('shows through: half-transparent is half and half in linear light', () => {
    const glass = paint(20, 20, () => [200, 0, 0, 51]);
    const got = sampled(glass, on, {}, 'photo', blue);
    for (let s = 0; s < on.geometry.count; s++) {
      expect(got.covered[s]).toBeCloseTo(0.2, 9);
      expect(got.linear[3 * s]).toBeCloseTo(0.2 * srgbToLinear[200], 9);
      expect(got.linear[3 * s + 2]).toBeCloseTo(0.8 * srgbToLinear[180], 9);
      expect(got.bare[s]).toBe(0);
    }
  });

  it('hides the colour of transparent pixels', () => {
    const half = paint(20, 20, (x) => (x < 10 ? red : [0, 255, 0, 0]));
    for (const art of ['photo', 'drawing'] as const) {
      const got = sampled(half, on, {}, art, blue);
      for (let s = 0; s < on.geometry.count; s++) expect(got.linear[3 * s + 1]).toBe(0);
    }
  });

  it('bare: a stitch less than half covered is bare, the others keep the pure colour', () => {
    const half = paint(20, 20, (x) => (x < 10 ? red : [0, 0, 0, 0]));
    for (const art of ['photo', 'drawing'] as const) {
      const got = sampled(half, on, {}, art, 'bare');
      for (let s = 0; s < on.geometry.count; s++) {
        expect(got.bare[s]).toBe(got.covered[s] < 0.5 ? 1 : 0);
        if (on.geometry.centres[2 * s] > 2) expect(got.bare[s]).toBe(1);
        if (on.geometry.centres[2 * s] < -2) expect(got.bare[s]).toBe(0);
        if (!got.bare[s]) expect(rgb(got, s)).toEqual([srgbToLinear[200], 0, 0]);
      }
    }
  });

  it('lies around a picture that does not reach the edge', () => {
    const got = sampled(
      paint(30, 10, () => red),
      on,
      { place: 'fit' },
      'photo',
      blue,
    );
    for (let s = 0; s < on.geometry.count; s++) {
      const y = Math.abs(on.geometry.centres[2 * s + 1]);
      const edge = outerRadius(on) / 3;
      if (y > edge + 2) expect(rgb(got, s)).toEqual([0, 0, srgbToLinear[180]]);
      if (y < edge - 2) expect(rgb(got, s)).toEqual([srgbToLinear[200], 0, 0]);
    }
  });
});

describe('repeat in every wedge', () => {
  it.each(waysOfWorking)(
    'all wedges are the same, and upright rim up ($hand, $beadsFace)',
    (way) => {
      const on = panel({ rounds: 16, ...way });
      // Red grows to the right, green downwards.
      const picture = paint(160, 160, (x, y) => [Math.floor(x), Math.floor(y), 0]);
      for (const art of ['photo', 'drawing'] as const) {
        const got = sampled(picture, on, { repeat: true, place: 'fill' }, art);
        const clockwise = (way.hand === 'right') === (way.beadsFace === 'away');
        let s = 0;
        for (let r = 1; r <= 16; r++) {
          const row = s;
          for (let i = 0; i < 7 * r; i++, s++) {
            expect(rgb(got, s)).toEqual(rgb(got, row + (i % r)));
            if (i % r > 0) {
              const grows = got.linear[3 * s] > got.linear[3 * (s - 1)];
              expect(grows).toBe(clockwise);
            }
          }
          if (r > 1) expect(got.linear[3 * row + 1]).toBeLessThan(got.linear[3 * (row - 1) + 1]);
        }
      }
    },
  );
});
