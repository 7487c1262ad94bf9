import type { BeadOfStitch } from '../bead.js';
import { ciede2000Fast } from '../../colour/ciede2000.js';
import type { Footprints } from '../../panel/footprints.js';
import { stitchesBefore } from '../../panel/shape.js';
import type { Shape } from '../../panel/shape.js';
import { flatLists } from './thread.js';
import type { Lists, Thread } from './thread.js';
import type { Steps } from '../../steps.js';

/** What tidying is told of a panel and its beads. */
export interface PanelBeads {
  readonly shape: Shape;
  readonly footprints: Pick<Footprints, 'neighbours'>;
  /** Palette index of each stitch, or negative where it has no bead; length count. */
  readonly beadOf: BeadOfStitch;
  /** Palette indices that may be used, at most 255; those of `beadOf` among them. */
  readonly chosen: readonly number[];
  /** L, a, b (D65) of each stitch, whatever for those without a bead; length 3·count. */
  readonly stitches: Float64Array;
  /** L, a, b (D65) of each bead of the palette; length 3·P. */
  readonly palette: Float64Array;
  /** Every wedge must keep the same string. */
  readonly repeat: boolean;
  /** How much each stitch counts, 0 or more; all alike when absent; length count. */
  readonly weights?: Float64Array;
  /** 1 where the bead must stay; length count. */
  readonly guarded?: Uint8Array;
}

/** A panel as one thread, and the way back. */
export interface PanelThread {
  readonly thread: Thread;
  /** Units whose cells touch, of each unit. */
  readonly neighbours: Lists;
  /** Place in `chosen` of the bead that each unit has. */
  readonly start: Uint8Array;
  /** The stitches that a unit stands for. */
  readonly stitchesOf: (unit: number) => readonly number[];
}

/** Differences of a unit and a bead that are worked out in one step. */
const differencesAStep = 50_000;

/** Lays the stitches of a panel on a thread; differing wedges are not taken for repeated ones. */
export function* layingThread(panel: PanelBeads): Steps<PanelThread> {
  const { shape, beadOf, chosen, footprints } = panel;
  const wedges = panel.repeat && sameWedges(shape, beadOf) ? shape.wedges : 1;
  const { unitAt, firstOf, rows } = layOut(shape, beadOf, wedges);
  const units = firstOf.length;
  const roundOf = wedges === 1 ? undefined : roundsByUnit(rows, units);
  const stitchesOf = (unit: number): readonly number[] => {
    const s = firstOf[unit];
    if (!roundOf) return [s];
    return Array.from({ length: wedges }, (_, k) => s + k * rounds[roundOf[unit]]);
  };
  const rounds = rows.map(({ round }) => round);
  const place = new Map(chosen.map((bead, index) => [bead, index]));
  const start = Uint8Array.from(firstOf, (s) => place.get(beadOf[s])!);
  const thread: Thread = {
    units,
    beads: chosen.length,
    cost: yield* costs(panel, start, stitchesOf),
    rows: [...rows.map(({ first }) => first), units],
    wedges,
  };
  yield { stage: 'finish' };
  // A spiral's seam spoils the neighbours of the outer wedges: a middle one speaks for all.
  const speaks = wedges >> 1;
  const neighbours = flatLists(units, (unit) => {
    const near: number[] = [];
    for (const s of footprints.neighbours(stitchesOf(unit)[speaks])) {
      if (unitAt[s] >= 0) near.push(unitAt[s]);
    }
    return near;
  });
  return { thread, neighbours, start, stitchesOf };
}

/** Rounds that have beads, the first stitch of each unit, and the unit of each stitch or -1. */
function layOut(shape: Shape, beadOf: BeadOfStitch, wedges: number) {
  const unitAt = new Int32Array(beadOf.length).fill(-1);
  const firstOf: number[] = [];
  const rows: { round: number; first: number }[] = [];
  for (let r = 1; r <= shape.rounds; r++) {
    const first = firstOf.length;
    const before = stitchesBefore(shape, r);
    const inRow = (shape.wedges * r) / wedges;
    for (let i = 0; i < inRow; i++) {
      if (beadOf[before + i] < 0) continue;
      for (let k = 0; k < wedges; k++) unitAt[before + i + k * r] = firstOf.length;
      firstOf.push(before + i);
    }
    if (firstOf.length > first) rows.push({ round: r, first });
  }
  return { unitAt, firstOf, rows };
}

function roundsByUnit(rows: readonly { first: number }[], units: number): Uint16Array {
  const rowOf = new Uint16Array(units);
  rows.forEach(({ first }, row) => rowOf.fill(row, first));
  return rowOf;
}

function sameWedges({ wedges, rounds }: Shape, beadOf: BeadOfStitch): boolean {
  for (let r = 1, s = 0; r <= rounds; r++, s += wedges * (r - 1)) {
    for (let i = r; i < wedges * r; i++) if (beadOf[s + i] !== beadOf[s + i - r]) return false;
  }
  return true;
}

/** Weighted CIEDE2000 of every unit and bead, its copies together; guarded ones keep theirs. */
function* costs(
  panel: PanelBeads,
  start: Uint8Array,
  stitchesOf: PanelThread['stitchesOf'],
): Steps<Float64Array> {
  const { stitches, palette, chosen, weights, guarded } = panel;
  const beads = chosen.length;
  const cost = new Float64Array(start.length * beads);
  const most = Math.max(1, Math.floor(differencesAStep / beads));
  for (let u = 0; u < start.length; u++) {
    if (u % most === most - 1) yield { stage: 'finish' };
    const copies = stitchesOf(u);
    const s = copies[0];
    const weight = weights ? copies.reduce((sum, copy) => sum + weights[copy], 0) : copies.length;
    const kept = guarded !== undefined && copies.some((copy) => guarded[copy] > 0);
    const L = stitches[3 * s];
    const a = stitches[3 * s + 1];
    const b = stitches[3 * s + 2];
    for (let k = 0; k < beads; k++) {
      const p = 3 * chosen[k];
      const difference = ciede2000Fast(L, a, b, palette[p], palette[p + 1], palette[p + 2]);
      cost[u * beads + k] = kept && k !== start[u] ? Infinity : weight * difference;
    }
  }
  return cost;
}
