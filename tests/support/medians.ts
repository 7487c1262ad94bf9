import { drain } from '../../src/core/steps.js';
import { sortCandidates } from '../../src/core/beads/choice/candidates.js';
import type { ChoiceInput } from '../../src/core/beads/choice/choose.js';
import { measure } from '../../src/core/beads/choice/matrix.js';
import type { Problem } from '../../src/core/beads/choice/matrix.js';
import { mergeEqual } from '../../src/core/beads/choice/merge.js';
import { srgbToLab65 } from '../../src/core/colour/lab.js';

/** Uniform 0..1 from a linear congruential sequence. */
export function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** The least cost over every set of at most `most` candidates that holds the kept ones. */
export function leastByBruteForce(problem: Problem): number {
  const { places, beads, difference, weight, most, kept } = problem;
  let best = Infinity;
  const grow = (nearest: Float64Array, size: number, from: number): void => {
    if (size === most || from === beads) {
      let cost = 0;
      for (let i = 0; i < places; i++) cost += weight[i] * nearest[i];
      if (size > 0) best = Math.min(best, cost);
      return;
    }
    const nearer = nearest.map((d, i) => Math.min(d, difference[from * places + i]));
    grow(nearer, size + 1, from + 1);
    if (from >= kept) grow(nearest, size, from + 1);
  };
  grow(new Float64Array(places).fill(1e9), 0, 0);
  return best;
}

/** How the made-up differences of a problem come about. */
export type Kind = 'any' | 'ties' | 'points';

/**
 * A small problem: any differences at all (which no geometry helps), whole numbers 0 to 3 (full of
 * ties), or the distances of points in a square.
 */
export function smallProblem(kind: Kind, next: () => number): Problem {
  const places = 3 + Math.floor(22 * next());
  const beads = 3 + Math.floor(10 * next());
  const most = 1 + Math.floor(5 * next());
  const kept = Math.floor(3 * next() * next());
  const at = Array.from({ length: places + beads }, () => [next(), next()]);
  const difference = new Float32Array(places * beads);
  for (let j = 0; j < beads; j++) {
    for (let i = 0; i < places; i++) {
      const [p, q] = [at[i], at[places + j]];
      difference[j * places + i] = {
        any: 20 * next(),
        ties: Math.floor(4 * next()),
        points: 20 * Math.sqrt((p[0] - q[0]) ** 2 + (p[1] - q[1]) ** 2),
      }[kind];
    }
  }
  const weighted = next() < 0.5;
  const weight = Float64Array.from({ length: places }, () =>
    weighted ? Math.floor(5 * next()) : 1,
  );
  return { places, beads, difference, weight, most, kept: Math.min(kept, most) };
}

/** L, a, b of random sRGB colours drawn from so few levels that many are equal; length 3·count. */
export function fewColours(count: number, levels: number, next: () => number): Float64Array {
  const lab = new Float64Array(3 * count);
  const channel = (): number => Math.round((255 * Math.floor(levels * next())) / (levels - 1));
  for (let k = 0; k < count; k++) lab.set(srgbToLab65(channel(), channel(), channel()), 3 * k);
  return lab;
}

/** The k-median problem that an input of `chooseBeads` stands for. */
export function problemOf(input: ChoiceInput): Problem {
  const { stitches, palette, most } = input;
  const { beads, kept } = sortCandidates(palette, most, input.keep ?? [], input.leaveOut ?? []);
  const places = mergeEqual(
    stitches,
    input.weights ?? new Float64Array(stitches.length / 3).fill(1),
  );
  const difference = drain(measure(places, palette, beads));
  return {
    places: places.count,
    beads: beads.length,
    difference,
    weight: places.weight,
    most,
    kept,
  };
}
