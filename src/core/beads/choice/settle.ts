/** State of a candidate: settled as open, undecided, settled as closed. */
export const opened = 1;
export const undecided = 0;
export const closed = -1;

/** What the relaxation opens at present prices. */
export interface Opening {
  /** Undecided candidates by reduced cost, ties by number. */
  readonly loose: readonly number[];
  /** How many of the undecided ones may be open. */
  readonly room: number;
  /** Candidates that open: the settled ones, and of the loose ones the best below 0. */
  readonly open: number[];
}

/** Opens what is settled as open and then the loose beads of least reduced cost below 0. */
export function openCheapest(state: Int8Array, reduced: Float64Array, most: number): Opening {
  const loose: number[] = [];
  const open: number[] = [];
  for (let j = 0; j < state.length; j++) {
    if (state[j] === undecided) loose.push(j);
    else if (state[j] === opened) open.push(j);
  }
  loose.sort((p, q) => reduced[p] - reduced[q] || p - q);
  const room = most - open.length;
  for (let k = 0; k < room && k < loose.length && reduced[loose[k]] < 0; k++) open.push(loose[k]);
  return { loose, room, open };
}

/**
 * Settles every undecided bead whose change of mind would lift the bound to `limit`: an open one
 * that would close makes room for the next, a closed one that would open takes the room of the last
 * (J. E. Beasley, European Journal of Operational Research 65(3):383-399, 1993). Returns the least
 * bound of what it rules out, Infinity when it settles nothing.
 */
export function settle(
  state: Int8Array,
  reduced: Float64Array,
  { loose, room }: Opening,
  bound: number,
  limit: number,
): number {
  const at = (k: number): number =>
    k >= 0 && k < loose.length ? Math.min(0, reduced[loose[k]]) : 0;
  const last = at(room - 1);
  const next = at(room);
  let least = Infinity;
  for (let k = 0; k < loose.length; k++) {
    const j = loose[k];
    const opens = k < room && reduced[j] < 0;
    const otherwise = opens ? bound - reduced[j] + next : bound + reduced[j] - last;
    if (otherwise < limit) continue;
    state[j] = opens ? opened : closed;
    least = Math.min(least, otherwise);
  }
  return least;
}

/**
 * The only choice left to a state, as candidates: all places taken, or no more candidates than
 * places. Undefined while there is something to decide.
 */
export function onlyChoice(state: Int8Array, most: number): number[] | undefined {
  const taken: number[] = [];
  const possible: number[] = [];
  for (let j = 0; j < state.length; j++) {
    if (state[j] === opened) taken.push(j);
    if (state[j] !== closed) possible.push(j);
  }
  if (taken.length >= most) return taken;
  return possible.length <= most ? possible : undefined;
}
