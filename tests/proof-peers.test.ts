import { describe, expect, it } from 'vitest';
import { gridCases } from '../bench/grid.js';
import { leastByHighs } from '../bench/highs.js';
import { chooseBeads } from '../src/core/beads/choice/choose.js';
import { srgbToLab65 } from '../src/core/colour/lab.js';
import { fewColours, problemOf, uniform } from './support/medians.js';

describe('a proven choice beside others', () => {
  it('HiGHS, a general solver for mixed-integer programs, agrees on 12 middle cases', async () => {
    const next = uniform(31);
    for (let round = 0; round < 12; round++) {
      const count = 40 + 4 * round;
      const weights = Float64Array.from({ length: count }, () => 1 + Math.floor(3 * next()));
      const input = {
        stitches: fewColours(count, round % 3 ? 256 : 5, next),
        palette: fewColours(12 + (round % 6), 256, next),
        most: 3 + (round % 4),
        ...(round % 2 && { weights }),
        ...(round % 4 === 3 && { keep: [2] }),
      };
      const problem = problemOf(input);
      const least = await leastByHighs(problem);
      const result = chooseBeads(input);
      const total = problem.weight.reduce((sum, weight) => sum + weight, 0);
      expect(result.proven).toBe(true);
      expect(least).toBeDefined();
      expect(Math.abs(result.objective * total - least!)).toBeLessThanOrEqual(1e-6 * least!);
    }
  });

  it('closes every thirteenth case of the grid within the steps of `normal`', async () => {
    let cases = 0;
    let proven = 0;
    for await (const one of gridCases(srgbToLab65, (number: number) => number % 13 === 3)) {
      const result = chooseBeads(one);
      const off = chooseBeads({ ...one, proof: 'off' });
      expect(result.lowerBound).toBeLessThanOrEqual(result.objective);
      expect(result.objective).toBeLessThanOrEqual(off.objective * (1 + 1e-12));
      expect(off.lowerBound).toBeLessThanOrEqual(result.objective * (1 + 1e-12));
      expect(off.method).toBe('greedy+swaps');
      cases++;
      if (result.proven) proven++;
    }
    expect(cases).toBe(30);
    expect(proven / cases).toBeGreaterThanOrEqual(0.95);
  });
});
