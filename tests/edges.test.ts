import { describe, expect, it } from 'vitest';
import { drain } from '../src/core/steps.js';
import { passMessages } from '../src/core/beads/edges/messages.js';
import { costOfPairs } from '../src/core/beads/tidy/pairs.js';
import type { Pairs } from '../src/core/beads/tidy/pairs.js';

/** Numbers that repeat: a linear congruential generator (constants of Numerical Recipes). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
}

/** Units in a strip three wide, each with its neighbours before and after. */
function someCase(seed: number): { own: Float64Array; units: number; pairs: Pairs } {
  const next = numbers(seed);
  const units = 4 + Math.floor(5 * next());
  const beads = 2 + Math.floor(2 * next());
  const own = Float64Array.from({ length: units * beads }, () => 12 * next());
  const ends: [number, number][] = [];
  for (let u = 0; u < units; u++) {
    if (u % 3 < 2 && u + 1 < units) ends.push([u, u + 1]);
    if (u + 3 < units) ends.push([u, u + 3]);
    if (u + 2 < units && u % 3 > 0 && next() < 0.5) ends.push([u, u + 2]);
  }
  const shown = new Float64Array(beads * beads);
  for (let i = 0; i < beads; i++) {
    for (let j = 0; j < i; j++) shown[i * beads + j] = shown[j * beads + i] = 18 * next();
  }
  return {
    own,
    units,
    pairs: {
      from: Int32Array.from(ends, ([from]) => from),
      to: Int32Array.from(ends, ([, to]) => to),
      wanted: Float64Array.from(ends, () => (next() < 0.5 ? 0 : 18 * next())),
      shown,
      beads,
      price: 0.3,
    },
  };
}

describe('messages', () => {
  // Brute force is the outside reference: every assignment of small cases.
  it('never bound from above, and find the best assignment of nearly all small cases', () => {
    let [best, cases] = [0, 0];
    for (let seed = 1; seed <= 300; seed++) {
      const { own, units, pairs } = someCase(seed);
      const K = pairs.beads;
      const costOf = (beadOf: readonly number[] | Uint8Array) =>
        Array.from(beadOf).reduce((sum, b, u) => sum + own[u * K + b], costOfPairs(pairs, beadOf));
      let least = Infinity;
      for (let code = 0; code < K ** units; code++) {
        const beadOf = Array.from({ length: units }, (_, u) => Math.floor(code / K ** u) % K);
        least = Math.min(least, costOf(beadOf));
      }
      const { beadOf, lowerBound } = drain(passMessages(own, units, pairs, 30));
      expect(lowerBound).toBeLessThanOrEqual(least + 1e-6);
      expect(costOf(beadOf)).toBeGreaterThanOrEqual(least - 1e-9);
      cases++;
      if (costOf(beadOf) <= least + 1e-9) best++;
    }
    expect(best / cases).toBeGreaterThan(0.95);
  });
});
