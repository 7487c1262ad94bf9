import { describe, expect, it } from 'vitest';
import { chooseBeads } from '../src/core/beads/choice/choose.js';
import type { ChoiceInput } from '../src/core/beads/choice/choose.js';
import { assign } from '../src/core/beads/stock/assign.js';
import { chooseWithinStock } from '../src/core/beads/stock/choose.js';
import type { StockProblem } from '../src/core/beads/stock/groups.js';
import { usesOf, withinStock } from '../src/core/beads/stock/limits.js';
import { topGains } from '../src/core/beads/stock/top-gains.js';
import { srgbToLab65 } from '../src/core/colour/lab.js';
import { ciede2000 } from '../src/core/colour/ciede2000.js';
import { leastCostByHighs } from './support/transport-lp.js';

/** Uniform 0..1 from a linear congruential sequence. */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

function colours(count: number, next: () => number): Float64Array {
  const lab = new Float64Array(3 * count);
  const channel = (): number => Math.floor(256 * next());
  for (let k = 0; k < count; k++) lab.set(srgbToLab65(channel(), channel(), channel()), 3 * k);
  return lab;
}

/** A problem with K beads for G groups; kinds of cost and limit take turns. */
function transport(seed: number): StockProblem & { feasible: boolean } {
  const next = uniform(seed + 1);
  const groups = 4 + Math.floor(60 * next());
  const beads = 2 + Math.floor(7 * next());
  const ties = seed % 3 === 0;
  const supply = Int32Array.from({ length: groups }, () =>
    seed % 2 ? 1 : 1 + Math.floor(9 * next()),
  );
  const stitches = supply.reduce((sum, size) => sum + size, 0);
  const tightness = [1, 1.05, 1.4, 0.9][seed % 4];
  const shares = Array.from({ length: beads }, (_, j) =>
    seed % 5 === 0 && j % 2 ? 0 : 0.05 + next(),
  );
  const sum = shares.reduce((total, share) => total + share, 0);
  const limit = Float64Array.from(shares, (share) =>
    Math.floor((share / sum) * stitches * tightness),
  );
  if (tightness === 1) limit[0] += stitches - limit.reduce((total, most) => total + most, 0);
  if (seed % 7 === 0) limit[beads - 1] = Infinity;
  const difference = Float32Array.from({ length: groups * beads }, () =>
    ties ? Math.floor(4 * next()) : 60 * next() * next(),
  );
  const weight = Float64Array.from({ length: groups }, () =>
    seed % 6 === 1 ? Math.floor(3 * next()) + 0.25 : 1,
  );
  const room = limit.reduce((total, most) => total + most, 0);
  const rest = { groups, beads, difference, weight, supply, stitches, limit };
  return { ...rest, most: beads, kept: 0, feasible: room >= stitches };
}

describe('the assignment of stitches to beads of limited number', () => {
  it('costs what HiGHS finds for the linear program, ties and empty jars among 120 cases', async () => {
    let infeasible = 0;
    let empty = 0;
    for (let seed = 0; seed < 120; seed++) {
      const problem = transport(seed);
      const { groups: n, beads, difference, weight, supply, limit } = problem;
      const open = [...Array(beads).keys()];
      const found = assign(problem, open);
      const optimum = await leastCostByHighs({
        cost: Array.from(supply, (_, g) => open.map((k) => weight[g] * difference[k * n + g])),
        supply: [...supply],
        limit: [...limit],
      });
      expect(found === undefined).toBe(!problem.feasible);
      expect(optimum === undefined).toBe(!problem.feasible);
      if (limit.includes(0)) empty++;
      if (!found || optimum === undefined) {
        infeasible++;
        continue;
      }
      expect(Math.abs(found.cost - optimum)).toBeLessThanOrEqual(1e-6 * Math.max(1, optimum));
      open.forEach((k) => {
        let held = 0;
        for (let g = 0; g < n; g++) held += found.flow[g * beads + k];
        expect(held).toBeLessThanOrEqual(limit[k]);
      });
      supply.forEach((size, g) => {
        const served = found.flow.subarray(g * beads, (g + 1) * beads);
        expect(Math.min(...served)).toBeGreaterThanOrEqual(0);
        expect(served.reduce((sum, part) => sum + part, 0)).toBe(size);
      });
    }
    expect(infeasible).toBeGreaterThanOrEqual(15);
    expect(infeasible).toBeLessThanOrEqual(45);
    expect(empty).toBeGreaterThanOrEqual(15);
  });

  it('proves itself by its prices (duality), also on a thousand stitches', () => {
    const next = uniform(77);
    const groups = 1000;
    const beads = 12;
    const problem: StockProblem = {
      groups,
      beads,
      difference: Float32Array.from({ length: groups * beads }, () => 50 * next() * next()),
      weight: new Float64Array(groups).fill(1),
      supply: new Int32Array(groups).fill(1),
      stitches: groups,
      limit: Float64Array.from({ length: beads }, (_, j) => [0, 40, 90, 140][j % 4] + j),
      most: beads,
      kept: 0,
    };
    problem.limit[11] = 1000 - problem.limit.reduce((sum, most) => sum + most, 0) + 161;
    const { cost, price } = assign(problem, [...Array(beads).keys()])!;
    let dual = 0;
    for (let g = 0; g < groups; g++) {
      let least = Infinity;
      for (let k = 0; k < beads; k++) {
        least = Math.min(least, problem.difference[k * groups + g] + price[k]);
      }
      dual += least;
    }
    price.forEach((value, k) => {
      expect(value).toBeGreaterThanOrEqual(0);
      if (value > 0) dual -= value * problem.limit[k];
    });
    expect(Math.abs(cost - dual)).toBeLessThanOrEqual(1e-6);
  });
});

it('the largest gains of limited stitches add up as after sorting them', () => {
  const next = uniform(5);
  const gains = topGains(200);
  for (let round = 0; round < 300; round++) {
    const list = Array.from({ length: 1 + Math.floor(200 * next()) }, () => ({
      gain: round % 2 ? Math.floor(5 * next()) + 1 : 9 * next() + 1e-3,
      size: 1 + Math.floor(4 * next()),
    }));
    const limit = Math.floor(500 * next());
    gains.clear();
    for (const { gain, size } of list) gains.add(gain, size);
    const single = list.flatMap(({ gain, size }) => Array<number>(size).fill(gain));
    single.sort((p, q) => q - p);
    const expected = single.slice(0, limit).reduce((sum, gain) => sum + gain, 0);
    expect(gains.sum(limit)).toBeCloseTo(expected, 8);
  }
});

/** The least mean over all sets of `most` beads, each assigned by HiGHS-checked `assign`. */
function bruteForce(input: ChoiceInput, limits: Float64Array): number | undefined {
  const { stitches, palette, most, weights } = input;
  const n = stitches.length / 3;
  const beads = limits.length;
  const difference = new Float32Array(n * beads);
  for (let j = 0; j < beads; j++) {
    for (let i = 0; i < n; i++) {
      const [L, a, b] = stitches.subarray(3 * i, 3 * i + 3);
      const [M, c, d] = palette.subarray(3 * j, 3 * j + 3);
      difference[j * n + i] = ciede2000(L, a, b, M, c, d);
    }
  }
  const weight = weights ?? new Float64Array(n).fill(1);
  const total = weight.reduce((sum, w) => sum + w, 0);
  const supply = new Int32Array(n).fill(1);
  const rest = { groups: n, beads, difference, weight, supply, stitches: n, limit: limits };
  const problem: StockProblem = { ...rest, most, kept: 0 };
  const keep = input.keep ?? [];
  const free = [...limits.keys()].filter((j) => !keep.includes(j) && !input.leaveOut?.includes(j));
  let best: number | undefined;
  const grow = (chosen: number[], from: number): void => {
    const left = most - chosen.length;
    if (left === 0 || from === free.length) {
      const cost = assign(problem, chosen)?.cost;
      if (cost !== undefined) best = Math.min(best ?? Infinity, cost / total);
      return;
    }
    grow([...chosen, free[from]], from + 1);
    if (free.length - from - 1 >= left) grow(chosen, from + 1);
  };
  grow([...keep], 0);
  return best;
}

function smallCase(round: number): { input: ChoiceInput; limits: Float64Array } {
  const next = uniform(1000 + round);
  const beads = 5 + Math.floor(6 * next());
  const most = Math.min(beads, 1 + Math.floor(4 * next()));
  const count = 8 + Math.floor(30 * next());
  const stitches = colours(count, next);
  // Equal stitches, so that groups are split between jars.
  if (round % 2) stitches.copyWithin(0, 3 * Math.floor(count / 2), 3 * 2 * Math.floor(count / 2));
  const palette = colours(beads, next);
  if (round % 5 === 0) palette.copyWithin(3, 0, 3);
  const tightness = [0.6, 1, 1.3, 2][round % 4];
  const limits = Float64Array.from({ length: beads }, () =>
    next() < 0.12 ? 0 : Math.floor((2 * next() * tightness * count) / most),
  );
  if (round % 9 === 0) limits[beads - 1] = Infinity;
  const keep = round % 3 === 0 ? [Math.floor(beads * next())] : [];
  const leaveOut = round % 4 === 0 ? [(keep[0] ?? 0) === 0 ? 1 : 0] : [];
  const weights = Float64Array.from({ length: count }, () => Math.ceil(3 * next()) / 2);
  const input = { stitches, palette, most, keep, leaveOut, ...(round % 3 === 1 && { weights }) };
  return { input, limits };
}

describe('the choice within a stock', () => {
  it('finds what brute force finds in 300 small cases, and its bound never lies', () => {
    let possible = 0;
    let atBest = 0;
    let gaps = 0;
    for (let round = 0; round < 300; round++) {
      const { input, limits } = smallCase(round);
      const unlimited = chooseBeads(input);
      const result = chooseWithinStock(input, unlimited, limits);
      const best = bruteForce(input, limits);
      expect(result === undefined, `case ${round}`).toBe(best === undefined);
      if (!result || best === undefined) continue;
      possible++;
      expect(withinStock(usesOf(result.beadOf, limits.length), limits)).toBe(true);
      expect(result.chosen.length).toBeLessThanOrEqual(input.most);
      for (const bead of input.keep ?? []) expect(result.chosen).toContain(bead);
      for (const bead of input.leaveOut ?? []) expect(result.chosen).not.toContain(bead);
      for (const bead of result.beadOf) expect(result.chosen).toContain(bead);
      expect(result.objective).toBeGreaterThanOrEqual(best - 1e-4);
      expect(result.objective).toBeGreaterThanOrEqual(unlimited.lowerBound - 1e-9);
      expect(result.lowerBound).toBeLessThanOrEqual(best + 1e-4);
      const gap = (result.objective - best) / best;
      if (result.proven) expect(gap).toBeLessThanOrEqual(1e-5);
      if (gap <= 1e-5) atBest++;
      gaps += gap;
    }
    expect(possible).toBeGreaterThanOrEqual(150);
    expect(atBest / possible).toBeGreaterThanOrEqual(0.98);
    expect(gaps / possible).toBeLessThanOrEqual(1e-4);
  });

  it('leaves a choice alone that keeps within the limits, and answers alike twice', () => {
    const next = uniform(3);
    const input = { stitches: colours(200, next), palette: colours(30, next), most: 6 };
    const unlimited = chooseBeads(input);
    const uses = usesOf(unlimited.beadOf, 30);
    expect(chooseWithinStock(input, unlimited, Float64Array.from(uses))).toBe(unlimited);
    const fewer = Float64Array.from({ length: 30 }, () => 35);
    const once = chooseWithinStock(input, unlimited, fewer);
    expect(once).toEqual(chooseWithinStock(input, unlimited, fewer));
    expect(once!.objective).toBeGreaterThan(unlimited.objective);
  });
});
