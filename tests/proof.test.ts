import { describe, expect, it } from 'vitest';
import { chooseBeads } from '../src/core/beads/choice/choose.js';
import { greedy } from '../src/core/beads/choice/greedy.js';
import { swapsAndKicks } from '../src/core/beads/choice/kicks.js';
import { costOf } from '../src/core/beads/choice/matrix.js';
import type { Problem } from '../src/core/beads/choice/matrix.js';
import { prove as proving, proofBudgets } from '../src/core/beads/choice/prove.js';
import { drain } from '../src/core/steps.js';
import {
  fewColours,
  leastByBruteForce,
  problemOf,
  smallProblem,
  uniform,
} from './support/medians.js';
import type { Kind } from './support/medians.js';

const prove = (...given: Parameters<typeof proving>) => drain(proving(...given));

const improve = (problem: Problem) => ({
  improve: (open: readonly number[]) => swapsAndKicks(problem, open),
});

describe('proving a choice', () => {
  it.each<Kind>(['any', 'ties', 'points'])(
    'from the worst start, brute force agrees on 300 small problems: %s',
    (kind) => {
      const next = uniform(kind.length);
      let parts = 0;
      for (let round = 0; round < 300; round++) {
        const problem = smallProblem(kind, next);
        // No search before and none in between: the proof alone has to find the best.
        const start = Array.from({ length: Math.max(1, problem.kept) }, (_, j) => j);
        const proof = prove(problem, start, proofBudgets.normal, {
          *improve(open) {
            yield { stage: 'proof' };
            return [...open];
          },
        });
        const least = leastByBruteForce(problem);
        const cost = costOf(problem, proof.open);
        expect(proof.open.length).toBeLessThanOrEqual(problem.most);
        for (let j = 0; j < problem.kept; j++) expect(proof.open).toContain(j);
        expect(cost).toBeGreaterThanOrEqual(least * (1 - 1e-12));
        expect(cost).toBeLessThanOrEqual(least * (1 + 1e-6));
        expect(proof.bound).toBeLessThanOrEqual(least * (1 + 1e-12));
        expect(proof.bound).toBeGreaterThanOrEqual(cost * (1 - 1e-6));
        parts += proof.parts;
      }
      if (kind === 'any') expect(parts).toBeGreaterThan(400);
    },
  );

  it('brute force agrees on 300 choices of beads with weights, kept and left out beads, equal colours', () => {
    const next = uniform(21);
    for (let round = 0; round < 300; round++) {
      const beads = 5 + Math.floor(8 * next());
      const count = 8 + Math.floor(40 * next());
      const levels = round % 2 ? 3 : 256;
      const keep = round % 3 === 0 ? [Math.floor(beads * next())] : [];
      const leaveOut = round % 4 === 0 ? [(keep[0] ?? 0) === 0 ? 1 : 0] : [];
      const input = {
        stitches: fewColours(count, levels, next),
        palette: fewColours(beads, levels, next),
        most: 1 + Math.floor(5 * next()),
        keep,
        leaveOut,
        ...(round % 5 < 2 && {
          weights: Float64Array.from({ length: count }, () => 1 + 3 * next()),
        }),
      };
      const result = chooseBeads(input);
      const problem = problemOf(input);
      const total = problem.weight.reduce((sum, weight) => sum + weight, 0);
      const least = leastByBruteForce(problem) / total;
      expect(result.proven).toBe(true);
      expect(Math.abs(result.objective - least)).toBeLessThanOrEqual(1e-6 * least);
      expect(result.lowerBound).toBeLessThanOrEqual(least * (1 + 1e-12));
      expect(result.method).toBe('greedy+swaps+kicks+proof');
    }
  });
});

describe('a proof that ends early', () => {
  const next = uniform(5);
  // Differences without any geometry leave a wide gap that only many branches close.
  const places = 60;
  const beads = 30;
  const problem: Problem = {
    places,
    beads,
    difference: Float32Array.from({ length: places * beads }, () => 20 * next()),
    weight: new Float64Array(places).fill(1),
    most: 6,
    kept: 1,
  };
  const start = drain(greedy(problem));
  const full = prove(problem, start, proofBudgets.long, improve(problem));
  const optimum = costOf(problem, full.open);

  it('is a hard one: hundreds of parts', () => {
    expect(full.parts).toBeGreaterThan(100);
    expect(full.bound).toBeGreaterThanOrEqual(optimum * (1 - 1e-6));
  });

  it.each([0, 1, 7, 100, 1000])(
    'when asked to stop after %i questions keeps a valid bound and a choice under the rules',
    (after) => {
      let asked = 0;
      const stop = (): boolean => asked++ >= after;
      const proof = prove(problem, start, proofBudgets.long, { ...improve(problem), stop });
      expect(asked).toBe(after + 1);
      expect(proof.bound).toBeLessThan(optimum);
      expect(costOf(problem, proof.open)).toBeGreaterThanOrEqual(optimum);
      expect(costOf(problem, proof.open)).toBeLessThanOrEqual(costOf(problem, start));
      expect(proof.open).toContain(0);
    },
  );

  it('the more steps or parts, the better the bound', () => {
    const bounds = [1e4, 1e5, 1e6].map(
      (steps) => prove(problem, start, { steps, parts: 1e6 }, improve(problem)).bound,
    );
    expect(bounds).toEqual([...bounds].sort((p, q) => p - q));
    expect(bounds[2]).toBeLessThanOrEqual(optimum);
    const few = prove(problem, start, { steps: 1e9, parts: 20 }, improve(problem));
    expect(few.parts).toBe(20);
    expect(few.bound).toBeLessThan(optimum);
  });

  it('tells the caller of chooseBeads that nothing is proven', () => {
    const stitches = fewColours(200, 256, uniform(2));
    const palette = fewColours(60, 256, uniform(3));
    const ended = chooseBeads({ stitches, palette, most: 6, stop: () => true });
    const whole = chooseBeads({ stitches, palette, most: 6 });
    expect(ended.proven).toBe(false);
    expect(ended.gap).toBeGreaterThan(1e-6);
    expect(ended.lowerBound).toBeLessThanOrEqual(whole.objective);
    expect(whole.proven).toBe(true);
    expect(chooseBeads({ stitches, palette, most: 6, proof: 'long' })).toEqual(whole);
  });
});
