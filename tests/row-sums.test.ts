import fc from 'fast-check';
import { expect, test } from 'vitest';
import { layPanel } from '../src/core/panel/lay.js';
import type { Picture } from '../src/core/picture/picture.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { sampleStitches } from '../src/core/picture/sampling/sample-stitches.js';
import { shapeFor } from '../src/core/shape-for.js';
import { ciede2000 } from '../src/core/colour/ciede2000.js';
import { patchesOf } from '../src/core/picture/importance/patches.js';

// A picture that is sampled again is sampled by running sums of its rows; nothing may show it.

const shape = shapeFor({ wedges: 6, rounds: 7, beadDiameterMm: 2.1 });
const lay = layPanel(shape);

/** Pixels of squares of one colour, or of short runs and noise, opaque or not. */
function pictureOf(
  seed: number,
  width: number,
  height: number,
  { opaque, square }: { opaque: boolean; square: number },
): Picture {
  const data = new Uint8Array(4 * width * height);
  let state = seed >>> 0;
  const next = () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) >>> 24;
  for (let p = 0; p < data.length; p += 4) {
    if (p === 0 || next() < 90) for (let c = 0; c < 4; c++) data[p + c] = next();
    else data.copyWithin(p, p - 4, p);
    if (opaque) data[p + 3] = 255;
    else if (square > 1 && data[p + 3] > 60) data[p + 3] = data[p + 3] > 100 ? 255 : 0;
  }
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const from = 4 * ((y - (y % square)) * width + x - (x % square));
      data.copyWithin(4 * (y * width + x), from, from + 4);
    }
  }
  return { width, height, data };
}

test('a picture sampled for the third time gives the very bits of the first', () => {
  fc.assert(
    fc.property(
      fc.integer(),
      fc.integer({ min: 3, max: 90 }),
      fc.integer({ min: 3, max: 90 }),
      fc.record({ opaque: fc.boolean(), square: fc.constantFrom(1, 9, 30) }),
      fc.constantFrom('photo', 'drawing'),
      fc.constantFrom('#ffffff', 'bare', '#204060'),
      fc.double({ min: 0.4, max: 3, noNaN: true }),
      (seed, width, height, how, art, background, zoom) => {
        const picture = pictureOf(seed, width, height, how);
        const wish = { place: 'fit', zoom, rotateDegrees: zoom * 100 } as const;
        const place = placePicture(picture, lay.geometry, wish, {});
        const laid = { picture, uprightWidth: width, place };
        const once = () => {
          const { lostLines, mixed, hatched, ...found } = sampleStitches(lay, laid, {
            art,
            background,
          });
          return { ...found, lostLines: lostLines(), mixed: mixed(), hatched: hatched() };
        };
        const first = once();
        once();
        expect(once()).toEqual(first);
      },
    ),
    { numRuns: 150, seed: 29 },
  );
});

test('light taken along the edges of footprints is the light of their pixels, but for rounding', () => {
  let most = 0;
  fc.assert(
    fc.property(
      fc.integer(),
      fc.integer({ min: 3, max: 90 }),
      fc.integer({ min: 3, max: 90 }),
      fc.constantFrom(1, 9, 30),
      fc.double({ min: 0.4, max: 3, noNaN: true }),
      (seed, width, height, square, zoom) => {
        const picture = pictureOf(seed, width, height, { opaque: true, square });
        const wish = { place: 'fill', zoom, rotateDegrees: zoom * 100 } as const;
        const place = placePicture(picture, lay.geometry, wish, {});
        const laid = { picture, uprightWidth: width, place };
        const how = { art: 'photo', background: '#204060' } as const;
        const exact = sampleStitches(lay, laid, how);
        const quick = sampleStitches(lay, laid, { ...how, quick: true });
        expect(quick.covered).toEqual(exact.covered);
        quick.linear.forEach((one, k) => {
          most = Math.max(most, Math.abs(one - exact.linear[k]));
        });
        expect(most).toBeLessThan(1e-11);
      },
    ),
    { numRuns: 200, seed: 29 },
  );
  // Not the same way twice.
  expect(most).toBeGreaterThan(0);
});

test('what the bounds call one colour or two is what CIEDE2000 calls so', () => {
  const channel = fc.double({ min: -60, max: 60, noNaN: true });
  const near = fc.double({ min: -16, max: 16, noNaN: true });
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 100, noNaN: true }),
      ...([channel, channel, near, near, near] as const),
      (L, a, b, dL, da, db) => {
        const other = Math.min(100, Math.max(0, L + dL));
        const labs = Float64Array.of(L, a, b, other, a + da, b + db);
        const patches = patchesOf(labs, Uint8Array.of(1, 1), (s) => [1 - s]);
        const apart = ciede2000(L, a, b, other, a + da, b + db);
        // Where the fast form and the textbook's differ in the last bits, either may be right.
        if (Math.abs(apart - 8) > 1e-9) expect(patches.count).toBe(apart < 8 ? 1 : 2);
      },
    ),
    { numRuns: 20_000, seed: 29 },
  );
});
