import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pixelSquares, sameInWindow, samePixel } from '../src/core/picture/sampling/runs.js';

const window = fc.record({
  left: fc.nat(11),
  top: fc.nat(9),
  columns: fc.integer({ min: 1, max: 12 }),
  rows: fc.integer({ min: 1, max: 10 }),
});

it('knows of a window whether its pixels are the same, as one sees who looks at each', () => {
  const [width, height] = [12, 10];
  const found = { same: 0, different: 0 };
  const patch = fc.tuple(window, fc.constantFrom(255, 0, 120));
  fc.assert(
    fc.property(fc.array(patch, { maxLength: 4 }), fc.array(window), (patches, asked) => {
      const data = new Uint8Array(4 * width * height).fill(255);
      const each = (one: (typeof asked)[0], see: (p: number) => void) => {
        for (let y = one.top; y < Math.min(height, one.top + one.rows); y++) {
          for (let x = one.left; x < Math.min(width, one.left + one.columns); x++)
            see(y * width + x);
        }
      };
      patches.forEach(([where, alpha], n) => each(where, (p) => data.set([n, 0, 0, alpha], 4 * p)));
      const picture = { width, height, data };
      // It is worth having from the second time on.
      expect(pixelSquares(picture)).toBeUndefined();
      const squares = pixelSquares(picture)!;
      for (const one of asked) {
        const columns = Math.min(one.columns, width - one.left);
        const rows = Math.min(one.rows, height - one.top);
        const first = one.top * width + one.left;
        let same = data[4 * first + 3] !== 120;
        each(one, (p) => (same &&= samePixel(data, first, p)));
        found[same ? 'same' : 'different']++;
        expect(sameInWindow(picture, squares, { ...one, columns, rows })).toBe(same);
      }
    }),
    { numRuns: 300 },
  );
  expect(Math.min(found.same, found.different)).toBeGreaterThan(100);
});

it('measures squares beyond what a byte holds', () => {
  const [width, height] = [600, 300];
  const data = new Uint8Array(4 * width * height).fill(255);
  const picture = { width, height, data };
  pixelSquares(picture);
  const squares = pixelSquares(picture)!;
  const all = { left: 0, top: 0, columns: width, rows: height };
  expect(sameInWindow(picture, squares, all)).toBe(true);
  const other = new Uint8Array(data);
  other[4 * (140 * width + 560)] = 0;
  const spotted = { width, height, data: other };
  pixelSquares(spotted);
  expect(sameInWindow(spotted, pixelSquares(spotted)!, all)).toBe(false);
});
