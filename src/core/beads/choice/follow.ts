import { ciede2000Fast } from '../../colour/ciede2000.js';
import { remembered } from '../../remember.js';
import { sortCandidates } from './candidates.js';
import type { ChoiceInput } from './choose.js';
import { labCells } from './lab-cells.js';
import type { LabCells } from './lab-cells.js';

/** How much farther from a cell's middle a bead may be that is nearest to some colour in the cell. */
const slack = 6;
/** Swaps that a choice which follows another may take, and one that begins anew. */
const [followingSwaps, freshSwaps] = [2, 40];
/** Less than this share of the cost is rounding, not an improvement. */
const leastShare = 1e-6;

/** A choice at once; every stitch has its exactly nearest open bead. */
export interface Followed {
  /** Palette indices that are open, ascending. */
  readonly open: readonly number[];
  /** Palette index of the nearest open bead of each stitch (ties: the lower); length n. */
  readonly beadOf: Int16Array;
  /** Weighted mean CIEDE2000. */
  readonly objective: number;
}

/** The cells that the stitches of one input lie in. */
interface Cells {
  /** Numbers of the cells met. */
  readonly used: Int32Array;
  /** Place in `used` of each stitch. */
  readonly placeOf: Int32Array;
  /** Summed weight by place. */
  readonly weight: Float64Array;
}

/**
 * Makes what chooses beads while the hand is still moving: the choice starts from the last one and
 * takes a swap or two, found on cells of Lab space instead of stitches.
 *
 * @returns a function that throws as `chooseBeads` does
 */
export function makeFollower(): (input: ChoiceInput) => Followed {
  const cellsFor = remembered(labCells);
  const candidatesFor = remembered(sortCandidates);
  let last: readonly number[] = [];

  return (input) => {
    const { palette, most, keep = [], leaveOut = [] } = input;
    const { beads, kept } = candidatesFor(palette, most, keep, leaveOut);
    const lab = cellsFor(palette);
    const cells = cellsOf(input, lab);
    const start = beads.slice(0, kept);
    const stay = last.filter((bead) => beads.indexOf(bead) >= kept).slice(0, most - kept);
    const open = [...start, ...stay];
    const fresh = stay.length === 0;
    openMore(lab, cells, beads, open, most);
    swap(lab, cells, beads, open, kept, fresh ? freshSwaps : followingSwaps);
    last = open;
    return served(input, lab, cells, open);
  };
}

function cellsOf({ stitches, weights }: ChoiceInput, lab: LabCells): Cells {
  const n = Math.floor(stitches.length / 3);
  const placeOf = new Int32Array(n);
  const cellOf = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    cellOf[i] = lab.cellOf(stitches[3 * i], stitches[3 * i + 1], stitches[3 * i + 2]);
  }
  const placeAt = new Int32Array(lab.known().count).fill(-1);
  const used = new Int32Array(n);
  const weight = new Float64Array(n);
  let count = 0;
  for (let i = 0; i < n; i++) {
    const cell = cellOf[i];
    if (placeAt[cell] < 0) {
      placeAt[cell] = count;
      used[count++] = cell;
    }
    placeOf[i] = placeAt[cell];
    weight[placeAt[cell]] += weights ? weights[i] : 1;
  }
  return { used: used.subarray(0, count), placeOf, weight: weight.subarray(0, count) };
}

/** Nearest and second nearest open bead of each place, as slots and differences. */
interface Ranks {
  readonly slot: Uint8Array;
  readonly first: Float32Array;
  readonly second: Float32Array;
}

function ranks(lab: LabCells, { used }: Cells, open: readonly number[]): Ranks {
  const slot = new Uint8Array(used.length);
  const first = new Float32Array(used.length).fill(Infinity);
  const second = new Float32Array(used.length).fill(Infinity);
  const { rows } = lab.known();
  for (let c = 0; c < used.length; c++) {
    const row = used[c] * lab.beads;
    for (let s = 0; s < open.length; s++) {
      const d = rows[row + open[s]];
      if (d < first[c]) {
        second[c] = first[c];
        first[c] = d;
        slot[c] = s;
      } else if (d < second[c]) second[c] = d;
    }
  }
  return { slot, first, second };
}

/** Opens one bead after another, each time the one that saves most, until `most` are open. */
function openMore(
  lab: LabCells,
  cells: Cells,
  beads: readonly number[],
  open: number[],
  most: number,
): void {
  const { used, weight } = cells;
  const saved = new Float64Array(beads.length);
  const { rows } = lab.known();
  while (open.length < Math.min(most, beads.length)) {
    const { first } = ranks(lab, cells, open);
    saved.fill(0);
    for (let c = 0; c < used.length; c++) {
      const row = used[c] * lab.beads;
      // Before the first bead is open, near is good and nothing more is known.
      const before = first[c] === Infinity ? 200 : first[c];
      for (let j = 0; j < beads.length; j++) {
        const less = before - rows[row + beads[j]];
        if (less > 0) saved[j] += weight[c] * less;
      }
    }
    let best = -1;
    for (let j = 0; j < beads.length; j++) {
      if (saved[j] > (best < 0 ? 0 : saved[best]) && !open.includes(beads[j])) best = j;
    }
    if (best < 0) break;
    open.push(beads[best]);
  }
}

/** Takes up to so many best swaps of an open bead for a closed one. */
function swap(
  lab: LabCells,
  cells: Cells,
  beads: readonly number[],
  open: number[],
  kept: number,
  swaps: number,
): void {
  const { used, weight } = cells;
  const size = open.length;
  if (size === kept || beads.length === size) return;
  const saved = new Float64Array(beads.length);
  /** What bead j saves besides when slot s is closed for it, at [j·size + s]. */
  const extra = new Float64Array(beads.length * size);
  const loss = new Float64Array(size);
  /** Place of each bead of the palette among the candidates, or -1. */
  const placeOf = new Int16Array(lab.beads).fill(-1);
  beads.forEach((bead, j) => (placeOf[bead] = j));
  const { rows, nearBead, nearApart } = lab.known();
  for (let turn = 0; turn < swaps; turn++) {
    const { slot, first, second } = ranks(lab, cells, open);
    saved.fill(0);
    extra.fill(0);
    loss.fill(0);
    let total = 0;
    for (let c = 0; c < used.length; c++) {
      const w = weight[c];
      const nearest = first[c];
      const s = slot[c];
      const next = size > 1 ? second[c] : 200;
      total += w * nearest;
      loss[s] += w * (next - nearest);
      // Mostly a few beads are nearer than the second open one; otherwise all are looked at.
      const near = used[c] * lab.near;
      const few = nearApart[near + lab.near - 1] >= next;
      const row = used[c] * lab.beads;
      const many = few ? lab.near : lab.beads;
      for (let k = 0; k < many; k++) {
        const d = few ? nearApart[near + k] : rows[row + k];
        if (d >= next) {
          if (few) break;
          continue;
        }
        const j = placeOf[few ? nearBead[near + k] : k];
        if (j < 0) continue;
        if (d < nearest) {
          saved[j] += w * (nearest - d);
          extra[j * size + s] += w * (next - nearest);
        } else extra[j * size + s] += w * (next - d);
      }
    }
    let [bestBead, bestSlot, bestSaving] = [-1, -1, total * leastShare];
    for (let j = 0; j < beads.length; j++) {
      if (open.includes(beads[j])) continue;
      for (let s = kept; s < size; s++) {
        const saving = saved[j] - loss[s] + extra[j * size + s];
        if (saving > bestSaving) [bestBead, bestSlot, bestSaving] = [j, s, saving];
      }
    }
    if (bestBead < 0) return;
    open[bestSlot] = beads[bestBead];
  }
}

/** Gives every stitch its nearest open bead: of a cell only those beads are asked that may be. */
function served(
  { stitches, weights, palette }: ChoiceInput,
  lab: LabCells,
  { used, placeOf }: Cells,
  chosen: readonly number[],
): Followed {
  const open = chosen.slice().sort((p, q) => p - q);
  const size = open.length;
  const near = new Uint8Array(used.length * size);
  const count = new Uint8Array(used.length);
  const { rows } = lab.known();
  for (let c = 0; c < used.length; c++) {
    const row = used[c] * lab.beads;
    let least = Infinity;
    for (let s = 0; s < size; s++) if (rows[row + open[s]] < least) least = rows[row + open[s]];
    for (let s = 0; s < size; s++) {
      if (rows[row + open[s]] <= least + slack) near[c * size + count[c]++] = s;
    }
  }
  const n = placeOf.length;
  const beadOf = new Int16Array(n);
  let [sum, all] = [0, 0];
  let least = Infinity;
  for (let i = 0; i < n; i++) {
    const c = placeOf[i];
    const L = stitches[3 * i];
    const a = stitches[3 * i + 1];
    const b = stitches[3 * i + 2];
    const before = 3 * (i - 1);
    if (
      i > 0 &&
      stitches[before] === L &&
      stitches[before + 1] === a &&
      stitches[before + 2] === b
    ) {
      // `least` is still that of the colour before.
      beadOf[i] = beadOf[i - 1];
    } else {
      least = Infinity;
      for (let k = 0; k < count[c]; k++) {
        const j = open[near[c * size + k]];
        const d = ciede2000Fast(L, a, b, palette[3 * j], palette[3 * j + 1], palette[3 * j + 2]);
        if (d < least) {
          least = d;
          beadOf[i] = j;
        }
      }
    }
    const w = weights ? weights[i] : 1;
    sum += w * least;
    all += w;
  }
  return { open, beadOf, objective: all > 0 ? sum / all : 0 };
}
