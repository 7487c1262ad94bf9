import type { Follow, Lists, Thread } from './thread.js';

/**
 * How many neighbours that do not lie next to a unit on the thread have each bead, at [u·K + b],
 * over the whole panel: the company that a bead would have in the rounds within and without.
 */
export function companyOf(
  thread: Thread,
  neighbours: Lists,
  pairs: readonly Follow[],
  beadOf: ArrayLike<number>,
): Uint16Array {
  const { units, beads, wedges } = thread;
  const company = new Uint16Array(units * beads);
  const { start, list } = neighbours;
  for (let u = 0; u < units; u++) {
    for (let n = start[u]; n < start[u + 1]; n++) company[u * beads + beadOf[list[n]]] += wedges;
  }
  for (const { from, to } of pairs) {
    if (touch(neighbours, from, to)) company[from * beads + beadOf[to]] -= wedges;
    if (touch(neighbours, to, from)) company[to * beads + beadOf[from]] -= wedges;
  }
  return company;
}

function touch({ start, list }: Lists, unit: number, other: number): boolean {
  for (let n = start[unit]; n < start[unit + 1]; n++) if (list[n] === other) return true;
  return false;
}
