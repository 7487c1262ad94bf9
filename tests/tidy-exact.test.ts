/** The least of cost and colour changes on a thread, against trying every string there is. */
import { describe, expect, it } from 'vitest';
import { fewestChanges } from '../src/core/beads/tidy/chain.js';
import { fewestChangesRepeated } from '../src/core/beads/tidy/ring.js';
import { changesOf, costOfBeads, follows } from '../src/core/beads/tidy/thread.js';
import type { Thread } from '../src/core/beads/tidy/thread.js';
import { sequence } from './support/paint.js';

/** Every string of `units` beads out of K. */
function* everyString(units: number, beads: number): Generator<number[]> {
  const string = new Array<number>(units).fill(0);
  for (;;) {
    yield string;
    let u = 0;
    while (u < units && ++string[u] === beads) string[u++] = 0;
    if (u === units) return;
  }
}

/** Changes counted on the whole panel's string, written out wedge after wedge. */
function changesWrittenOut({ rows, wedges, units }: Thread, string: ArrayLike<number>): number {
  const whole: number[] = [];
  const ends = wedges === 1 ? [0, units] : rows;
  for (let row = 0; row + 1 < ends.length; row++) {
    for (let k = 0; k < wedges; k++) {
      for (let u = ends[row]; u < ends[row + 1]; u++) whole.push(string[u]);
    }
  }
  return whole.filter((bead, n) => n > 0 && bead !== whole[n - 1]).length;
}

function leastOfAll(thread: Thread, penalty: number): number {
  let least = Infinity;
  for (const string of everyString(thread.units, thread.beads)) {
    const energy = costOfBeads(thread, string) + penalty * changesWrittenOut(thread, string);
    least = Math.min(least, energy);
  }
  return least;
}

/** A small thread: costs of every kind, with ties, some units that must keep their bead. */
function smallThread(seed: number, rowsWished: readonly number[], wedges: number): Thread {
  const next = sequence(seed);
  const beads = 1 + next(4);
  const rows = [0];
  for (const length of rowsWished) rows.push(rows[rows.length - 1] + length);
  const units = rows[rows.length - 1];
  const fine = seed % 2 ? 1000 : 4;
  const cost = Float64Array.from({ length: units * beads }, () => next(8 * fine) / fine);
  for (let u = 0; u < units; u++) {
    if (next(6) > 0) continue;
    const kept = next(beads);
    for (let b = 0; b < beads; b++) if (b !== kept) cost[u * beads + b] = Infinity;
  }
  return { units, beads, cost, rows, wedges };
}

describe('the tidiest string', () => {
  it.each([
    { name: 'of one thread', wedges: [1], solve: fewestChanges },
    { name: 'repeated in every wedge', wedges: [3, 5, 7, 12], solve: fewestChangesRepeated },
    { name: 'of one thread, by the way of repeats', wedges: [1], solve: fewestChangesRepeated },
  ])('$name is the best of all strings in 300 cases', ({ wedges, solve }) => {
    for (let seed = 1; seed <= 300; seed++) {
      const next = sequence(seed + 5000);
      const lengths = [[1], [1, 2, 3], [2, 1, 3], [3, 3], [6], [1, 1, 1, 2]][next(6)];
      const thread = smallThread(seed, lengths, wedges[next(wedges.length)]);
      const penalty = [0, 0.3, 1, 2.5, 40][next(5)];
      const string = solve(thread, penalty);
      const changes = changesWrittenOut(thread, string);
      expect(changesOf(follows(thread), string)).toBe(changes);
      const energy = costOfBeads(thread, string) + penalty * changes;
      expect(energy).toBeCloseTo(leastOfAll(thread, penalty), 9);
    }
  });
});
