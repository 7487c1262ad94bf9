/** What of a picture is cut off, against plane geometry and against points thrown at it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acrossMm } from '../src/core/panel/edge.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { Frame } from '../src/core/purse/frame/measures.js';
import { cutOff } from '../src/core/picture/cut-off.js';
import type { Picture } from '../src/core/picture/picture.js';
import { panelToPicture, placePicture } from '../src/core/picture/sampling/place.js';
import type { PlaceWish } from '../src/core/picture/sampling/place.js';
import { subjectOf } from '../src/core/picture/subject.js';
import { bareUnderFrame } from '../src/core/purse/frame/plan.js';

type Rgba = [number, number, number, number];
const paint = (
  width: number,
  height: number,
  colourAt: (x: number, y: number) => Rgba,
): Picture => {
  const data = new Uint8Array(4 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) data.set(colourAt(x + 0.5, y + 0.5), 4 * (y * width + x));
  }
  return { width, height, data };
};
const disc = (ground: Rgba, radius = 50) =>
  paint(200, 200, (x, y) => (Math.hypot(x - 100, y - 100) < radius ? [180, 30, 30, 255] : ground));

const circle = panelGeometry(
  completeShape({
    wedges: 6,
    rounds: 20,
    outline: 'circle',
    construction: 'joined',
    beadDiameterMm: 2.1,
  }),
);
const laid = (picture: Picture, wish: PlaceWish, geometry = circle) => {
  const place = placePicture(picture, geometry, wish);
  const footprints = panelFootprints(geometry);
  return { geometry, footprints, place };
};

describe('the subject', () => {
  it.each([
    ['clear', [0, 0, 0, 0]],
    ['plain', [255, 255, 255, 255]],
    ['plain', [20, 60, 90, 255]],
  ] as [string, Rgba][])('of a disc on a %s ground %j is the disc', (kind, colour) => {
    const { ground, mask } = subjectOf(disc(colour));
    expect(ground).toBe(kind);
    expect(mask.reduce((sum, one) => sum + one, 0) / (Math.PI * 50 ** 2)).toBeCloseTo(1, 1);
  });

  it('keeps a white middle that the ground does not reach', () => {
    const ring = paint(200, 200, (x, y) => {
      const r = Math.hypot(x - 100, y - 100);
      return r < 60 && r > 40 ? [0, 0, 0, 255] : [255, 255, 255, 255];
    });
    expect(subjectOf(ring).mask[100 * 200 + 100]).toBe(1);
  });

  it('is all of a picture whose border shows many colours, and of one that is all one colour', () => {
    const busy = paint(120, 80, (x, y) => [2 * x, 3 * y, (x * y) % 256, 255]);
    expect(subjectOf(busy)).toMatchObject({ ground: 'none' });
    expect(subjectOf(busy).mask.every((one) => one === 1)).toBe(true);
    expect(subjectOf(paint(50, 50, () => [9, 9, 9, 255])).ground).toBe('none');
  });

  it('of a very large picture is found on a few of its pixels', () => {
    const large = paint(4000, 2500, (x, y) =>
      Math.hypot(x - 2000, y - 1250) < 800 ? [0, 90, 0, 255] : [250, 250, 245, 255],
    );
    const { width, height, mask, ground } = subjectOf(large);
    expect([Math.max(width, height), ground]).toEqual([256, 'plain']);
    const share = mask.reduce((sum, one) => sum + one, 0) / mask.length;
    expect(share).toBeCloseTo((Math.PI * 800 ** 2) / (4000 * 2500), 2);
  });
});

describe('what is cut off', () => {
  // Two circles of radius r and R, middles d apart (plane geometry, for instance Weisstein,
  // "Circle-Circle Intersection", MathWorld; typed from memory).
  const lens = (r: number, R: number, d: number) => {
    const part = (a: number, b: number) => a * a * Math.acos((d * d + a * a - b * b) / (2 * d * a));
    const root = (-d + r + R) * (d + r - R) * (d - r + R) * (d + r + R);
    return part(r, R) + part(R, r) - Math.sqrt(root) / 2;
  };

  it('of a disc moved half over the rim is what two circles have not in common', () => {
    const rim = acrossMm(circle.shape) / 2;
    for (const shiftXmm of [0, 25, 30, 40, 48]) {
      const picture = disc([255, 255, 255, 255]);
      const at = laid(picture, { place: 'fill', shiftXmm });
      const r = 50 * at.place.mmPerPixel;
      const share = shiftXmm + r <= rim ? 0 : 1 - lens(r, rim, shiftXmm) / (Math.PI * r * r);
      const { beyondRim, underFrame } = cutOff(subjectOf(picture), picture, at);
      expect(beyondRim).toBeCloseTo(share, 2);
      expect(underFrame).toBe(0);
    }
  });

  it('of a square picture that fills the panel are its corners, 1 - π/4', () => {
    const picture = paint(90, 90, (x, y) => [x * 2.8, y * 2.8, (x * y) % 250, 255]);
    const { beyondRim } = cutOff(subjectOf(picture), picture, laid(picture, { place: 'fill' }));
    expect(beyondRim).toBeCloseTo(1 - Math.PI / 4, 3);
    const inside = cutOff(subjectOf(picture), picture, laid(picture, { place: 'inside' }));
    expect(inside.beyondRim).toBe(0);
  });

  it('is what points thrown at the picture say, on any panel and place, frame or not', () => {
    const frame: Frame = {
      kind: 'half-round', widthMm: 60, heightMm: 32, fixing: 'sewn', ratio: 1.15, gatherPercent: 0,
    }; // prettier-ignore
    const anyPlace = fc.record({
      wedges: fc.integer({ min: 4, max: 9 }),
      outline: fc.constantFrom('polygon' as const, 'circle' as const),
      zoom: fc.double({ min: 0.6, max: 2, noNaN: true }),
      shiftXmm: fc.double({ min: -20, max: 20, noNaN: true }),
      shiftYmm: fc.double({ min: -20, max: 20, noNaN: true }),
      rotateDegrees: fc.double({ min: -180, max: 180, noNaN: true }),
      mirror: fc.boolean(),
    });
    fc.assert(
      fc.property(anyPlace, ({ wedges, outline, ...wish }) => {
        const shape = completeShape({ wedges, rounds: 16, outline, beadDiameterMm: 2.1 });
        const geometry = panelGeometry(shape);
        const picture = disc([255, 255, 255, 255], 80);
        const at = laid(picture, { place: 'fill', ...wish }, geometry);
        const underFrame = bareUnderFrame(frame, geometry);
        const found = cutOff(subjectOf(picture), picture, { ...at, underFrame });
        const [a, b, c, d, e, f] = panelToPicture(at.place, picture);
        const det = a * d - b * c;
        let [all, out, under] = [0, 0, 0];
        for (let y = 20.5; y < 180; y++) {
          for (let x = 20.5; x < 180; x++) {
            if (Math.hypot(x - 100, y - 100) >= 80) continue;
            all++;
            const [dx, dy] = [x - e, y - f];
            const [mx, my] = [(d * dx - c * dy) / det, (a * dy - b * dx) / det];
            const owner = at.footprints.owner(mx, my);
            // Nobody owns the hole at the centre either, and it is not beyond the rim.
            if (owner < 0) out += Math.hypot(mx, my) > 5 ? 1 : 0;
            else if (underFrame[owner]) under++;
          }
        }
        expect(Math.abs(found.beyondRim - out / all)).toBeLessThan(0.006);
        expect(Math.abs(found.underFrame - under / all)).toBeLessThan(0.006);
      }),
      { numRuns: 12 },
    );
  });

  it('of a repeated motif is what does not lie on its wedge', () => {
    const picture = paint(100, 100, (x, y) => [x * 2.5, y * 2.5, (x * y) % 250, 255]);
    const inside = laid(picture, { place: 'inside', repeat: true });
    expect(cutOff(subjectOf(picture), picture, inside)).toEqual({ beyondRim: 0, underFrame: 0 });
    // A picture over the whole box: half of it lies beside the rows of a triangle, less half a row.
    const { stitchWidthMm: w, roundHeightMm: h } = circle.shape;
    const box = paint(Math.round(100 * w), Math.round(100 * h), (x, y) => [x, y, x + y, 255]);
    const fit = laid(box, { place: 'fill', repeat: true });
    expect(cutOff(subjectOf(box), box, fit).beyondRim).toBeCloseTo(1 - (20 * 21) / 2 / 400, 2);
  });
});
