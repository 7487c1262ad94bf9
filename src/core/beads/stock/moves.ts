import type { Assignment } from './assign.js';
import type { StockProblem } from './groups.js';
import { topGains } from './top-gains.js';

/** A change of the open beads: candidate `bead` into slot `slot`, or into a new one. */
export interface Move {
  readonly slot: number;
  readonly bead: number;
  /** No assignment after the move costs less than this. */
  readonly atLeast: number;
}

/** The moves that might make an assignment cheaper. */
export interface Moves {
  /** The most promising by a rough bound first. */
  readonly rough: Move[];
  /** The same moves with a closer bound; those that cannot help are left out. */
  refine(moves: readonly Move[]): Move[];
}

/**
 * Looks for moves that might make an assignment cheaper. Its prices give each move a bound by
 * duality: what the stitches pay at their cheapest slot when one is closed, less the prices of what
 * the other slots hold, less the largest gains that the new bead's limit can take in. The rough
 * bound adds up the gains of stitches that lose their slot without regard to the limit, so that
 * one pass tells about all slots (as in the swaps of the choice without limits).
 */
export function promisingMoves(
  problem: StockProblem,
  open: readonly number[],
  now: Assignment,
): Moves {
  const { groups: n, beads, difference, weight, supply, limit, most, kept, stitches } = problem;
  const K = open.length;
  const { first, second, slot } = cheapestTwo(problem, open, now.price);
  const last = K < most ? K : K - 1; // Slot K stands for a new one: nothing is closed.
  /** What all stitches pay, less what is held, when a slot is closed. */
  const pays = new Float64Array(K + 1);
  let all = 0;
  for (let g = 0; g < n; g++) {
    all += supply[g] * first[g];
    pays[slot[g]] += supply[g] * (second[g] - first[g]);
  }
  const held = open.map((j, k) => (now.price[k] > 0 ? now.price[k] * limit[j] : 0));
  const allHeld = held.reduce((sum, value) => sum + value, 0);
  for (let a = 0; a <= K; a++) pays[a] += all - allHeld + (held[a] ?? 0);
  const room = Array.from({ length: K + 1 }, (_, a) =>
    open.reduce((sum, j, k) => (k === a ? sum : sum + limit[j]), 0),
  );

  const better = now.cost * (1 - 1e-9);
  const gains = topGains(n);
  const extra = new Float64Array(K + 1);
  const rough: Move[] = [];
  const isOpen = new Set(open);
  for (let b = 0; b < beads; b++) {
    if (isOpen.has(b) || limit[b] === 0) continue;
    const row = b * n;
    gains.clear();
    extra.fill(0);
    for (let g = 0; g < n; g++) {
      const cost = weight[g] * difference[row + g];
      if (cost >= second[g]) continue;
      const gain = first[g] - cost;
      if (gain > 0) gains.add(gain, supply[g]);
      extra[slot[g]] += supply[g] * (second[g] - Math.max(first[g], cost));
    }
    const gained = gains.sum(limit[b]);
    for (let a = kept; a <= last; a++) {
      const atLeast = pays[a] - gained - extra[a];
      if (atLeast < better && room[a] + limit[b] >= stitches) {
        rough.push({ slot: a, bead: b, atLeast });
      }
    }
  }
  const closer = ({ slot: a, bead }: Move): Move => {
    const row = bead * n;
    gains.clear();
    for (let g = 0; g < n; g++) {
      const gain = (slot[g] === a ? second[g] : first[g]) - weight[g] * difference[row + g];
      if (gain > 0) gains.add(gain, supply[g]);
    }
    return { slot: a, bead, atLeast: pays[a] - gains.sum(limit[bead]) };
  };
  return {
    rough: rough.sort(byPromise),
    refine: (moves) =>
      moves
        .map(closer)
        .filter(({ atLeast }) => atLeast < better)
        .sort(byPromise),
  };
}

function byPromise(p: Move, q: Move): number {
  return p.atLeast - q.atLeast || p.slot - q.slot || p.bead - q.bead;
}

/** Cost and price of the two cheapest slots of each group, and the cheapest slot. */
export function cheapestTwo(
  { groups: n, difference, weight }: StockProblem,
  open: readonly number[],
  price: Float64Array,
): { first: Float64Array; second: Float64Array; slot: Int32Array } {
  const first = new Float64Array(n).fill(Infinity);
  const second = new Float64Array(n).fill(Infinity);
  const slot = new Int32Array(n);
  open.forEach((j, k) => {
    for (let g = 0; g < n; g++) {
      const pays = weight[g] * difference[j * n + g] + price[k];
      if (pays < first[g]) {
        second[g] = first[g];
        first[g] = pays;
        slot[g] = k;
      } else if (pays < second[g]) second[g] = pays;
    }
  });
  // With one slot alone there is no second: far above every cost, but a number still.
  for (let g = 0; g < n; g++) if (second[g] === Infinity) second[g] = first[g] + 1e4 * weight[g];
  return { first, second, slot };
}
