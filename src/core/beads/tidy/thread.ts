/**
 * The thread as tidying sees it: units that take one of K beads each, what every bead costs there,
 * and the places where two units follow one another. A unit is a stitch with a bead, in working
 * order. A bare stitch carries no bead, so the beads before and after it are neighbours on the
 * thread. Where every wedge repeats the same string, a unit is a place in one wedge and stands for
 * its copies in all of them.
 */
export interface Thread {
  /** Number of units U. */
  readonly units: number;
  /** Number of beads K, at most 255. */
  readonly beads: number;
  /** Cost of bead b at unit u at [u·K + b]; Infinity where the unit must not have it. */
  readonly cost: Float64Array;
  /** First unit of each round that has any, and U at the end. Only read where wedges > 1. */
  readonly rows: readonly number[];
  /** How often each row is worked before the next one begins; 1 without repeat. */
  readonly wedges: number;
}

/** Lists of whole numbers, one a unit: those of unit u stand at `start[u]` to `start[u + 1]`. */
export interface Lists {
  readonly start: Int32Array;
  readonly list: Int32Array;
}

/** Flat lists from one list a unit. */
export function flatLists(units: number, of: (unit: number) => readonly number[]): Lists {
  const start = new Int32Array(units + 1);
  const list: number[] = [];
  for (let u = 0; u < units; u++) {
    for (const item of of(u)) list.push(item);
    start[u + 1] = list.length;
  }
  return { start, list: Int32Array.from(list) };
}

/** Two units that follow one another on the thread, `times` over the whole panel. */
export interface Follow {
  readonly from: number;
  readonly to: number;
  readonly times: number;
}

/**
 * Every pair of units that follow one another. A repeated row is worked `wedges` times: its inner
 * pairs come that often, its end meets its own beginning once less, and then the next row.
 */
export function follows({ units, rows, wedges }: Thread): Follow[] {
  const pairs: Follow[] = [];
  if (wedges === 1) {
    for (let u = 1; u < units; u++) pairs.push({ from: u - 1, to: u, times: 1 });
    return pairs;
  }
  for (let row = 0; row + 1 < rows.length; row++) {
    const [first, last] = [rows[row], rows[row + 1] - 1];
    if (row > 0) pairs.push({ from: first - 1, to: first, times: 1 });
    for (let u = first + 1; u <= last; u++) pairs.push({ from: u - 1, to: u, times: wedges });
    if (last > first) pairs.push({ from: last, to: first, times: wedges - 1 });
  }
  return pairs;
}

/** Colour changes along the thread of the whole panel; `beadOf` by unit. */
export function changesOf(pairs: readonly Follow[], beadOf: ArrayLike<number>): number {
  let changes = 0;
  for (const { from, to, times } of pairs) if (beadOf[from] !== beadOf[to]) changes += times;
  return changes;
}

/** Σ cost of the beads; length of `beadOf` U. */
export function costOfBeads({ units, beads, cost }: Thread, beadOf: ArrayLike<number>): number {
  let sum = 0;
  for (let u = 0; u < units; u++) sum += cost[u * beads + beadOf[u]];
  return sum;
}
