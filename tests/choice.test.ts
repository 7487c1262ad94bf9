import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { chooseBeads, nearestBead } from '../src/core/beads/choice/choose.js';
import type { ChoiceInput, ChoiceResult } from '../src/core/beads/choice/choose.js';
import { hexToLab65, srgbToLab65 } from '../src/core/colour/lab.js';
import { RondureError } from '../src/core/errors.js';

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
  for (let k = 0; k < count; k++) {
    const channel = (): number => Math.floor(256 * next());
    lab.set(srgbToLab65(channel(), channel(), channel()), 3 * k);
  }
  return lab;
}

/** A picture's colours: a sky that darkens, hills, a few flat patches, grain over all. */
function pictureColours(side: number, seed: number): Float64Array {
  const next = uniform(seed);
  const waves = Array.from({ length: 9 }, () => [9 * next(), 9 * next(), 6 * next()]);
  const patches = Array.from({ length: 5 }, () => Array.from({ length: 6 }, next));
  const lab = new Float64Array(3 * side * side);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const [u, v] = [x / side, y / side];
      const patch = patches.find(([px, py, size]) => Math.hypot(u - px, v - py) < 0.08 + size / 9);
      const rgb = [0, 1, 2].map((channel) => {
        const wave = waves.slice(3 * channel, 3 * channel + 3);
        const field = wave.reduce((sum, [p, q, r]) => sum + Math.sin(p * u + q * v + r), 0);
        const base = patch ? 255 * patch[3 + channel] : 128 + 42 * field;
        return Math.min(255, Math.max(0, Math.round(base + 24 * (next() - 0.5))));
      });
      lab.set(srgbToLab65(rgb[0], rgb[1], rgb[2]), 3 * (y * side + x));
    }
  }
  return lab;
}

const reference = differenceCiede2000();
const asLab = (lab: Float64Array, k: number) =>
  ({ mode: 'lab65', l: lab[3 * k], a: lab[3 * k + 1], b: lab[3 * k + 2] }) as const;

/** Differences by culori, stitch by stitch: [stitch][bead]. */
function table(stitches: Float64Array, palette: Float64Array): number[][] {
  return Array.from({ length: stitches.length / 3 }, (_, i) =>
    Array.from({ length: palette.length / 3 }, (_, j) =>
      reference(asLab(stitches, i), asLab(palette, j)),
    ),
  );
}

function meanOf(differences: number[][], chosen: readonly number[], weights?: Float64Array) {
  let sum = 0;
  let weight = 0;
  differences.forEach((row, i) => {
    const w = weights ? weights[i] : 1;
    sum += w * Math.min(...chosen.map((j) => row[j]));
    weight += w;
  });
  return sum / weight;
}

/** The best mean over every set of `most` beads that the rules allow. */
function bruteForce(input: ChoiceInput): number {
  const differences = table(input.stitches, input.palette);
  const keep = new Set(input.keep);
  const out = new Set(input.leaveOut);
  const free = Array.from({ length: input.palette.length / 3 }, (_, j) => j).filter(
    (j) => !keep.has(j) && !out.has(j),
  );
  let best = Infinity;
  const grow = (chosen: number[], from: number): void => {
    if (chosen.length === input.most || from === free.length) {
      best = Math.min(best, meanOf(differences, chosen, input.weights));
      return;
    }
    grow([...chosen, free[from]], from + 1);
    if (free.length - from - 1 + chosen.length >= input.most) grow(chosen, from + 1);
  };
  grow([...keep], 0);
  return best;
}

/** What every result must hold, measured by culori and not by us. */
function check(input: ChoiceInput, result: ChoiceResult): void {
  const differences = table(input.stitches, input.palette);
  const { chosen, beadOf, difference } = result;
  expect(chosen.length).toBeLessThanOrEqual(input.most);
  expect(chosen).toEqual([...new Set(chosen)].sort((p, q) => p - q));
  for (const bead of input.keep ?? []) expect(chosen).toContain(bead);
  for (const bead of input.leaveOut ?? []) expect(chosen).not.toContain(bead);
  expect(beadOf.length).toBe(differences.length);
  differences.forEach((row, i) => {
    expect(chosen).toContain(beadOf[i]);
    expect(Math.abs(difference[i] - row[beadOf[i]])).toBeLessThanOrEqual(2e-5);
    expect(row[beadOf[i]]).toBeLessThanOrEqual(Math.min(...chosen.map((j) => row[j])) + 2e-5);
  });
  const mean = meanOf(differences, chosen, input.weights);
  expect(Math.abs(result.objective - mean)).toBeLessThanOrEqual(2e-5);
  expect(result.worst).toBe(Math.max(...difference));
  expect(result.lowerBound).toBeLessThanOrEqual(result.objective);
  expect(result.lowerBound).toBeGreaterThanOrEqual(0);
}

describe('choosing beads', () => {
  it('brute force over 400 small cases never does better than the bound, hardly ever better than the choice', () => {
    const next = uniform(11);
    let atBest = 0;
    let gaps = 0;
    const cases = 400;
    for (let round = 0; round < cases; round++) {
      const beads = 5 + Math.floor(8 * next());
      const most = 1 + Math.floor(5 * next());
      const count = 8 + Math.floor(40 * next());
      const stitches = colours(count, next);
      const keep = round % 3 === 0 ? [Math.floor(beads * next())] : [];
      const leaveOut = round % 4 === 0 ? [(keep[0] ?? 0) === 0 ? 1 : 0] : [];
      const input: ChoiceInput = {
        stitches,
        palette: colours(beads, next),
        most,
        keep,
        leaveOut,
        ...(round % 2 ? { weights: Float64Array.from({ length: count }, () => 3 * next()) } : {}),
      };
      const result = chooseBeads(input);
      if (round % 10 === 0) check(input, result);
      const best = bruteForce(input);
      expect(result.objective).toBeGreaterThanOrEqual(best - 1e-5);
      expect(result.lowerBound).toBeLessThanOrEqual(best + 1e-5);
      if (result.proven) expect(result.objective).toBeLessThanOrEqual(best * (1 + 1e-6) + 1e-5);
      if (result.objective <= best + 1e-5) atBest++;
      gaps += (result.objective - best) / best;
    }
    expect(atBest / cases).toBeGreaterThanOrEqual(0.95);
    expect(gaps / cases).toBeLessThanOrEqual(1e-3);
  });

  it('holds its promises on a picture, weights and all', () => {
    const stitches = pictureColours(16, 5);
    const palette = colours(60, uniform(6));
    const next = uniform(8);
    const weights = Float64Array.from({ length: 256 }, () => Math.floor(4 * next()));
    for (const input of [
      { stitches, palette, most: 8 },
      { stitches, palette, most: 8, weights },
      { stitches, palette, most: 4, keep: [3, 59, 17, 3], leaveOut: [1, 2] },
      { stitches, palette, most: 3, keep: [3, 59, 17] },
      { stitches, palette, most: 1 },
    ]) {
      check(input, chooseBeads(input));
    }
  });

  it('more colours never make it worse, and equal stitches may as well be weights', () => {
    const stitches = pictureColours(12, 2);
    const palette = colours(40, uniform(4));
    const means = [1, 2, 4, 8, 16, 40].map(
      (most) => chooseBeads({ stitches, palette, most }).objective,
    );
    expect(means).toEqual([...means].sort((p, q) => q - p));

    const few = stitches.slice(0, 60);
    const repeats = Array.from({ length: 20 }, (_, i) => 1 + (i % 4));
    const spread = Float64Array.from(
      repeats.flatMap((times, i) =>
        Array.from({ length: times }, () => [...few.slice(3 * i, 3 * i + 3)]).flat(),
      ),
    );
    const weighted = chooseBeads({
      stitches: few,
      palette,
      most: 4,
      weights: Float64Array.from(repeats),
    });
    const repeated = chooseBeads({ stitches: spread, palette, most: 4 });
    expect(repeated.chosen).toEqual(weighted.chosen);
    expect(repeated.objective).toBeCloseTo(weighted.objective, 9);
  });

  it('with as many colours as beads takes the nearest of all, proven, and lists no unused bead', () => {
    const stitches = pictureColours(10, 3);
    const palette = colours(12, uniform(2));
    for (const most of [12, 24]) {
      const result = chooseBeads({ stitches, palette, most });
      expect(result).toMatchObject({ proven: true, gap: 0 });
      expect(result.lowerBound).toBe(result.objective);
      expect(result.chosen).toEqual([...new Set(result.beadOf)].sort((p, q) => p - q));
      result.beadOf.forEach((bead, i) => {
        const [L, a, b] = stitches.slice(3 * i, 3 * i + 3);
        expect(bead).toBe(nearestBead(palette, L, a, b));
      });
    }
  });

  it('one colour in, one bead out', () => {
    const stitches = Float64Array.from(
      Array.from({ length: 50 }, () => hexToLab65('#d9b36a')).flat(),
    );
    const palette = Float64Array.from(['#000', '#d9b36a', '#fff'].flatMap(hexToLab65));
    const result = chooseBeads({ stitches, palette, most: 8 });
    expect(result).toMatchObject({ chosen: [1], objective: 0, worst: 0, gap: 0, proven: true });
    expect(chooseBeads({ stitches, palette, most: 8, keep: [2] }).chosen).toEqual([1, 2]);
  });

  it('ties go to the lower palette index', () => {
    const palette = Float64Array.from(
      ['#fff', '#c03020', '#c03020', '#000', '#c03020'].flatMap(hexToLab65),
    );
    const stitches = Float64Array.from(['#c03020', '#c13121'].flatMap(hexToLab65));
    expect(chooseBeads({ stitches, palette, most: 3 }).chosen).toEqual([1]);
    expect(chooseBeads({ stitches, palette, most: 3, leaveOut: [1] }).chosen).toEqual([2]);
    const kept = chooseBeads({ stitches, palette, most: 3, keep: [4] });
    expect(kept.chosen).toEqual([4]);
    expect([...kept.beadOf]).toEqual([4, 4]);
    expect(nearestBead(palette, ...hexToLab65('#c03020'))).toBe(1);
    expect(nearestBead(palette, ...hexToLab65('#c03020'), [4, 2, 3])).toBe(2);
    expect(nearestBead(palette, 50, 0, 0, [])).toBe(-1);
  });

  it('answers the same twice, whatever was asked in between', () => {
    const input = { stitches: pictureColours(20, 7), palette: colours(80, uniform(1)), most: 7 };
    const before = chooseBeads(input);
    chooseBeads({ ...input, most: 5 });
    expect(chooseBeads(input)).toEqual(before);
  });

  it('has nothing to do without stitches, and counts stitches alike when all weights are 0', () => {
    const palette = colours(5, uniform(1));
    const none = chooseBeads({ stitches: new Float64Array(0), palette, most: 3, keep: [2] });
    expect(none).toMatchObject({ chosen: [2], objective: 0, worst: 0, proven: true });
    const stitches = colours(9, uniform(3));
    const zero = chooseBeads({ stitches, palette, most: 3, weights: new Float64Array(9) });
    expect(zero).toEqual(chooseBeads({ stitches, palette, most: 3 }));
  });

  it('says what cannot be, by code', () => {
    const palette = colours(4, uniform(1));
    const stitches = colours(4, uniform(2));
    const codeOf = (more: Partial<ChoiceInput>): string => {
      try {
        chooseBeads({ stitches, palette, most: 2, ...more });
      } catch (error) {
        if (error instanceof RondureError) return error.code;
        throw error;
      }
      return 'no error';
    };
    expect(codeOf({ keep: [0, 1, 2] })).toBe('palette-too-small-to-keep');
    expect(codeOf({ keep: [1], leaveOut: [1] })).toBe('bead-kept-and-left-out');
    expect(codeOf({ leaveOut: [0, 1, 2, 3] })).toBe('palette-all-left-out');
    expect(codeOf({ palette: new Float64Array(0) })).toBe('palette-all-left-out');
    expect(codeOf({ keep: [4] })).toBe('bead-not-in-palette');
    expect(codeOf({ most: 0 })).toBe('colours-impossible');
    expect(codeOf({ most: 1.5 })).toBe('colours-impossible');
    expect(codeOf({ stitches: Float64Array.of(50, NaN, 0) })).toBe('colour-not-finite');
    expect(codeOf({ weights: Float64Array.of(1, 1, -1, 1) })).toBe('weights-impossible');
  });

  it('beats taking the nearest bead and keeping the most used by 8 % and more at 300 beads', () => {
    let rival = 0;
    let ours = 0;
    for (const seed of [1, 2, 3]) {
      const stitches = pictureColours(30, seed);
      const palette = colours(300, uniform(100 + seed));
      const count = stitches.length / 3;
      const uses = new Map<number, number>();
      for (let i = 0; i < count; i++) {
        const [L, a, b] = stitches.subarray(3 * i, 3 * i + 3);
        const bead = nearestBead(palette, L, a, b);
        uses.set(bead, (uses.get(bead) ?? 0) + 1);
      }
      const byUse = [...uses].sort((p, q) => q[1] - p[1] || p[0] - q[0]).map(([bead]) => bead);
      for (const most of [6, 12]) {
        const only = byUse.slice(0, most);
        rival += chooseBeads({ stitches, palette, most, keep: only }).objective;
        ours += chooseBeads({ stitches, palette, most }).objective;
      }
    }
    expect(rival / ours).toBeGreaterThanOrEqual(1.08);
  });
});
