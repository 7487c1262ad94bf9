import type { Follow, Lists, Thread } from './thread.js';

/** Whether none of the neighbours of a unit has its bead. A unit alone on the panel is no stray. */
export function isStray({ start, list }: Lists, beadOf: ArrayLike<number>, unit: number): boolean {
  if (start[unit] === start[unit + 1]) return false;
  for (let n = start[unit]; n < start[unit + 1]; n++) {
    if (beadOf[list[n]] === beadOf[unit]) return false;
  }
  return true;
}

/** What `makeStrayRemover` needs. */
export interface StrayInput {
  readonly thread: Thread;
  readonly neighbours: Lists;
  readonly pairs: readonly Follow[];
}

/** A stray and the bead that it should get. */
interface Removal {
  readonly unit: number;
  readonly bead: number;
  readonly extra: number;
}

/**
 * Gives strays the bead of a neighbour, cheapest first, wherever what it costs, with `penalty` for
 * a colour change, is at most `worth`. No stray depends on another, so none can arise.
 */
export function makeStrayRemover({ thread, neighbours, pairs }: StrayInput) {
  const { units, beads, cost } = thread;
  const { start, list } = neighbours;
  const along = pairsByUnit(units, pairs);

  /** Colour changes of the panel in which a unit takes part if it has this bead. */
  const changesAt = (beadOf: Uint8Array, unit: number, bead: number): number => {
    let changes = 0;
    for (let n = along.start[unit]; n < along.start[unit + 1]; n++) {
      if (beadOf[along.list[n]] !== bead) changes += along.times[n];
    }
    return changes;
  };

  const cheapest = (beadOf: Uint8Array, unit: number, penalty: number): Removal | undefined => {
    const own = beadOf[unit];
    const now = cost[unit * beads + own] + penalty * changesAt(beadOf, unit, own);
    let found: Removal | undefined;
    for (let n = start[unit]; n < start[unit + 1]; n++) {
      const bead = beadOf[list[n]];
      const extra = cost[unit * beads + bead] + penalty * changesAt(beadOf, unit, bead) - now;
      const better = !found || extra < found.extra || (extra === found.extra && bead < found.bead);
      if (better) found = { unit, bead, extra };
    }
    return found;
  };

  return (beadOf: Uint8Array, penalty: number, worth: number): void => {
    const removals: Removal[] = [];
    for (let u = 0; u < units; u++) {
      if (!isStray(neighbours, beadOf, u)) continue;
      const removal = cheapest(beadOf, u, penalty);
      if (removal && removal.extra <= worth) removals.push(removal);
    }
    removals.sort((a, b) => a.extra - b.extra || a.unit - b.unit);
    for (const { unit } of removals) {
      // An earlier removal may have given it company, or made another bead cheaper.
      if (!isStray(neighbours, beadOf, unit)) continue;
      const removal = cheapest(beadOf, unit, penalty);
      if (removal && removal.extra <= worth) beadOf[unit] = removal.bead;
    }
  };
}

function pairsByUnit(units: number, pairs: readonly Follow[]) {
  const start = new Int32Array(units + 1);
  for (const { from, to } of pairs) {
    start[from + 1] += 1;
    start[to + 1] += 1;
  }
  for (let u = 0; u < units; u++) start[u + 1] += start[u];
  const at = start.slice();
  const list = new Int32Array(2 * pairs.length);
  const times = new Int32Array(2 * pairs.length);
  for (const { from, to, times: often } of pairs) {
    for (const [one, other] of [
      [from, to],
      [to, from],
    ]) {
      // prettier-ignore
      list[at[one]] = other;
      times[at[one]++] = often;
    }
  }
  return { start, list, times };
}
