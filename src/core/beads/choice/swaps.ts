import type { Steps } from '../../steps.js';
import type { Problem } from './matrix.js';

/** Closed beads that are tried in one step. */
const beadsAStep = 16;
/** Less than this share of the cost is rounding, not an improvement. */
const leastShare = 1e-9;

/** A search that swaps one open bead for one closed bead while that saves anything. */
export interface Search {
  /** Open candidates; slots 0 up to kept - 1 hold the kept ones. */
  readonly open: Int32Array;
  /** Present cost. */
  cost(): number;
  /** Starts again from these candidates, the kept ones first. */
  restart(open: ArrayLike<number>): void;
  /** Swaps until no single swap saves anything. */
  descend(): Steps<void>;
}

/**
 * Local search over single swaps. Nearest and second nearest open bead of every place are kept, so
 * one pass over the places tells what a closed bead would save against each open one (fast
 * interchange: R. A. Whitaker, INFOR 21(2):95-108, 1983). `start` holds the kept ones first.
 */
export function makeSearch(problem: Problem, start: readonly number[]): Search {
  const { places: n, beads, difference, weight, kept } = problem;
  const size = start.length;
  const open = new Int32Array(size);
  const isOpen = new Uint8Array(beads);
  const slot = new Uint16Array(n);
  const secondSlot = new Uint16Array(n);
  const first = new Float32Array(n);
  const second = new Float32Array(n);
  /** What closing a slot costs, by itself. */
  const loss = new Float64Array(size);
  const extra = new Float64Array(size);
  let total = 0;

  const rank = (i: number): void => {
    let nearest = Infinity;
    let next = Infinity;
    let at = 0;
    let nextAt = 0;
    for (let s = 0; s < size; s++) {
      const d = difference[open[s] * n + i];
      if (d < nearest) {
        next = nearest;
        nextAt = at;
        nearest = d;
        at = s;
      } else if (d < next) {
        next = d;
        nextAt = s;
      }
    }
    first[i] = nearest;
    second[i] = next;
    slot[i] = at;
    secondSlot[i] = nextAt;
  };
  const addUp = (): void => {
    total = 0;
    loss.fill(0);
    for (let i = 0; i < n; i++) {
      total += weight[i] * first[i];
      loss[slot[i]] += weight[i] * (second[i] - first[i]);
    }
  };
  const restart = (from: ArrayLike<number>): void => {
    isOpen.fill(0);
    for (let s = 0; s < size; s++) {
      open[s] = from[s];
      isOpen[from[s]] = 1;
    }
    for (let i = 0; i < n; i++) rank(i);
    addUp();
  };

  /** Swaps j in for the best slot, when that saves anything. */
  const tryBead = (j: number): boolean => {
    const row = j * n;
    const saved = scan(difference.subarray(row, row + n), first, second, slot, weight, extra);
    let best = -1;
    let bestSaving = total * leastShare;
    for (let s = kept; s < size; s++) {
      const saving = saved - loss[s] + extra[s];
      if (saving > bestSaving) {
        best = s;
        bestSaving = saving;
      }
    }
    if (best < 0) return false;
    isOpen[open[best]] = 0;
    isOpen[j] = 1;
    open[best] = j;
    for (let i = 0; i < n; i++) {
      if (slot[i] === best || secondSlot[i] === best) {
        rank(i);
        continue;
      }
      const d = difference[row + i];
      if (d >= second[i]) continue;
      if (d < first[i]) {
        second[i] = first[i];
        secondSlot[i] = slot[i];
        first[i] = d;
        slot[i] = best;
      } else {
        second[i] = d;
        secondSlot[i] = best;
      }
    }
    addUp();
    return true;
  };
  const descend = function* (): Steps<void> {
    if (size === kept) return;
    if (size === 1) return takeCheapest();
    for (let j = 0, quiet = 0; quiet < beads; j = (j + 1) % beads, quiet++) {
      if (!isOpen[j] && tryBead(j)) quiet = 0;
      if (j % beadsAStep === 0) yield { stage: 'beads' };
    }
  };
  /** One bead only: there is no second nearest; take the cheapest. */
  const takeCheapest = (): void => {
    let best = open[0];
    let bestCost = total;
    for (let j = 0; j < beads; j++) {
      let cost = 0;
      for (let i = 0; i < n; i++) cost += weight[i] * difference[j * n + i];
      if (cost < bestCost * (1 - leastShare)) {
        best = j;
        bestCost = cost;
      }
    }
    if (best !== open[0]) restart([best]);
  };

  restart(start);
  return { open, cost: () => total, restart, descend };
}

/**
 * What opening a bead saves when nothing is closed; `extra` becomes, for every slot, what it saves
 * besides when that slot is closed for it. All arrays by place, except `extra`.
 */
function scan(
  row: Float32Array,
  first: Float32Array,
  second: Float32Array,
  slot: Uint16Array,
  weight: Float64Array,
  extra: Float64Array,
): number {
  extra.fill(0);
  let saved = 0;
  for (let i = 0; i < row.length; i++) {
    const d = row[i];
    const next = second[i];
    if (d >= next) continue;
    const nearest = first[i];
    const w = weight[i];
    if (d < nearest) {
      saved += w * (nearest - d);
      extra[slot[i]] += w * (next - nearest);
    } else extra[slot[i]] += w * (next - d);
  }
  return saved;
}
