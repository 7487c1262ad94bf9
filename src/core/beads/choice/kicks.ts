import type { Steps } from '../../steps.js';
import type { Problem } from './matrix.js';
import { makeSearch } from './swaps.js';

/** Work is counted in looked-up differences, never in time: a clock must not decide a result. */
const workAllowed = 50_000_000;
const mostKicks = 10;
/** Passes over the whole matrix that one kick takes, roughly. */
const passesAKick = 4;

/**
 * Swaps, then up to 10 kicks: a few open beads are changed for others by a fixed sequence, swaps
 * follow, and the better choice stays (iterated local search). Returns candidate indices.
 */
export function* swapsAndKicks(problem: Problem, start: readonly number[]): Steps<number[]> {
  const { places, beads, kept } = problem;
  const size = start.length;
  const search = makeSearch(problem, start);
  yield* search.descend();
  let best = Array.from(search.open);
  const loose = size - kept;
  if (loose < 2 || beads - size < 1) return best;

  let bestCost = search.cost();
  const work = places * beads * passesAKick;
  const kicks = Math.min(mostKicks, Math.floor(workAllowed / work));
  const next = sequence(1);
  for (let kick = 0; kick < kicks; kick++) {
    const changed = best.slice();
    const strength = Math.min(loose, beads - size, 2 + Math.floor(loose / 8));
    for (let turn = 0; turn < strength; turn++) {
      const closed: number[] = [];
      for (let j = 0; j < beads; j++) if (!changed.includes(j)) closed.push(j);
      changed[kept + (next() % loose)] = closed[next() % closed.length];
    }
    search.restart(changed);
    yield* search.descend();
    if (search.cost() < bestCost * (1 - 1e-9)) {
      best = Array.from(search.open);
      bestCost = search.cost();
    }
  }
  return best;
}

/** A fixed sequence of whole numbers 0..32767 (linear congruential, modulus 2^31; high bits). */
function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return state >>> 16;
  };
}
