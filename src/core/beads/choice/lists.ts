import type { Steps } from '../../steps.js';
import type { Problem } from './matrix.js';

/** The beads that may still serve each place, nearest first. */
export interface NearLists {
  /** The list of place i stands at from[i] up to from[i + 1] - 1; length n + 1. */
  readonly from: Int32Array;
  /** Candidate bead of each entry. */
  readonly bead: Uint16Array;
  /** CIEDE2000 of each entry, ascending within a place (ties: the lower candidate). */
  readonly difference: Float32Array;
  /** By place: beads as far as this or farther are not listed; undefined: all are. */
  readonly cap: Float64Array | undefined;
}

/** Room for a candidate's number below the bits of its difference. */
const shift = 65536;

/** Places whose list is sorted in one step. */
const placesAStep = 4096;

/**
 * Lists the beads whose state is not below 0, place by place. With `cap` (by place) only those
 * nearer than the cap are listed.
 */
export function* nearLists(
  problem: Problem,
  state: Int8Array,
  cap?: Float64Array,
): Steps<NearLists> {
  const { places: n, beads, difference } = problem;
  const live: number[] = [];
  for (let j = 0; j < beads; j++) if (state[j] >= 0) live.push(j);
  const from = new Int32Array(n + 1);
  for (const j of live) {
    const row = j * n;
    for (let i = 0; i < n; i++) if (!cap || difference[row + i] < cap[i]) from[i + 1]++;
  }
  for (let i = 0; i < n; i++) from[i + 1] += from[i];
  yield { stage: 'proof' };
  // A float32 of 0 or more sorts like its bits; bits and candidate fit a float64 without loss.
  const bits = new Uint32Array(difference.buffer, difference.byteOffset, difference.length);
  const keys = new Float64Array(from[n]);
  const end = from.slice(0, n);
  for (const j of live) {
    const row = j * n;
    for (let i = 0; i < n; i++) {
      if (!cap || difference[row + i] < cap[i]) keys[end[i]++] = bits[row + i] * shift + j;
    }
  }
  yield { stage: 'proof' };
  const bead = new Uint16Array(from[n]);
  const near = new Float32Array(from[n]);
  for (let i = 0; i < n; i++) {
    if (i % placesAStep === placesAStep - 1) yield { stage: 'proof' };
    sortAscending(keys, from[i], from[i + 1]);
    for (let at = from[i]; at < from[i + 1]; at++) {
      bead[at] = keys[at] % shift;
      near[at] = difference[bead[at] * n + i];
    }
  }
  return { from, bead, difference: near, cap };
}

/** The same lists without the beads whose state is below 0. */
export function withoutClosed(lists: NearLists, state: Int8Array): NearLists {
  const n = lists.from.length - 1;
  const from = new Int32Array(n + 1);
  const bead = new Uint16Array(lists.bead.length);
  const difference = new Float32Array(lists.bead.length);
  let end = 0;
  for (let i = 0; i < n; i++) {
    for (let at = lists.from[i]; at < lists.from[i + 1]; at++) {
      const j = lists.bead[at];
      if (state[j] < 0) continue;
      bead[end] = j;
      difference[end++] = lists.difference[at];
    }
    from[i + 1] = end;
  }
  return {
    from,
    bead: bead.slice(0, end),
    difference: difference.slice(0, end),
    cap: lists.cap,
  };
}

/** Sorts keys[start] up to keys[end - 1]; short stretches by insertion, which is quicker. */
function sortAscending(keys: Float64Array, start: number, end: number): void {
  if (end - start > 24) {
    keys.subarray(start, end).sort();
    return;
  }
  for (let k = start + 1; k < end; k++) {
    const key = keys[k];
    let at = k;
    while (at > start && keys[at - 1] > key) {
      keys[at] = keys[at - 1];
      at--;
    }
    keys[at] = key;
  }
}
