import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Charting } from '../src/core/charting.js';
import { afterEach, anew, first, series } from './support/charting-series.js';
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

test('settling goes in many small steps, whatever it works at', () => {
  const rounds30 = { ...first.shape, rounds: 30 };
  const wish = { ...first, shape: rounds30, art: 'drawing', edges: 0.3, lift: 0.5 } as const;
  const seen = new Map<string, number>();
  for (const { stage } of new Charting(wish).settle()) seen.set(stage, (seen.get(stage) ?? 0) + 1);
  // 3,255 stitches: sampled by the hundred, their edges kept by thousands of comparisons.
  expect(seen.get('colours')).toBeGreaterThan(20);
  expect(seen.get('finish')).toBeGreaterThan(20);
  expect(seen.get('beads')).toBeGreaterThan(5);
  expect(seen.get('pattern')).toBeGreaterThan(2);
});
