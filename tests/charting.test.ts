import fc from 'fast-check';
import { expect, test } from 'vitest';
import { afterEach, anew, series } from './support/charting-series.js';
import type { Series } from './support/charting-series.js';

// A long-lived Charting against a new one for every wish: whatever it kept, the bytes are the same.
// tests/browser.test.ts goes through such series in Chromium.

test('a long series of changes gives what a new Charting gives', () => {
  let made = 0;
  fc.assert(
    fc.property(series, (changes) => {
      for (const { got, wish } of afterEach(changes as Series)) {
        expect(got).toBe(anew(wish));
        if (got.startsWith('{')) made++;
      }
    }),
    { numRuns: 8, seed: 12 },
  );
  expect(made).toBeGreaterThan(60);
});
