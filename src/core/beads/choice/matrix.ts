import { ciede2000Fast } from '../../colour/ciede2000.js';
import type { Steps } from '../../steps.js';
import type { Places } from './merge.js';

/**
 * The choice as a k-median problem: places to serve, beads that may serve them, at most `most`
 * open at once, the first `kept` always open. Whoever improves or proves a choice needs no more.
 */
export interface Problem {
  /** Number of places n. */
  readonly places: number;
  /** Number of candidate beads P. */
  readonly beads: number;
  /** CIEDE2000 of place i and candidate j at [j·n + i]; length P·n. */
  readonly difference: Float32Array;
  /** Weight of each place; length n. */
  readonly weight: Float64Array;
  /** The largest number of beads. */
  readonly most: number;
  /** Candidates 0 up to kept - 1 are in every choice. */
  readonly kept: number;
}

/** Measures every place against every candidate; `paletteLab` 3 numbers a palette bead. */
export function* measure(
  places: Places,
  paletteLab: Float64Array,
  candidates: readonly number[],
): Steps<Float32Array> {
  const n = places.count;
  const { lab } = places;
  const difference = new Float32Array(n * candidates.length);
  for (const [j, bead] of candidates.entries()) {
    const L = paletteLab[3 * bead];
    const a = paletteLab[3 * bead + 1];
    const b = paletteLab[3 * bead + 2];
    const row = j * n;
    for (let i = 0; i < n; i++) {
      difference[row + i] = ciede2000Fast(lab[3 * i], lab[3 * i + 1], lab[3 * i + 2], L, a, b);
    }
    yield { stage: 'beads' };
  }
  return difference;
}

/** Σ weight · difference to the nearest of the open candidates. */
export function costOf(problem: Problem, open: readonly number[]): number {
  const { places: n, difference, weight } = problem;
  let cost = 0;
  for (let i = 0; i < n; i++) {
    let nearest = Infinity;
    for (const j of open) nearest = Math.min(nearest, difference[j * n + i]);
    cost += weight[i] * nearest;
  }
  return cost;
}

/** Σ weight · difference to the nearest candidate of all: no choice can cost less. */
export function costOfAll(problem: Problem): number {
  const { places: n, beads, difference, weight } = problem;
  const nearest = new Float32Array(n).fill(Infinity);
  for (let j = 0; j < beads; j++) {
    const row = j * n;
    for (let i = 0; i < n; i++)
      if (difference[row + i] < nearest[i]) nearest[i] = difference[row + i];
  }
  let cost = 0;
  for (let i = 0; i < n; i++) cost += weight[i] * nearest[i];
  return cost;
}
