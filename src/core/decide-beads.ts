import { bare } from './bead.js';
import type { Bead, BeadOfStitch } from './bead.js';
import { chooseBeads } from './choice/choose.js';
import type { ProofLevel } from './choice/choose.js';
import { linearToLab65 } from './colour/lab.js';
import { RondureError } from './errors.js';
import type { Warning } from './errors.js';
import type { Footprints } from './geometry/footprints.js';
import type { PanelGeometry } from './geometry/panel.js';
import { defaultDetail, stitchImportance } from './importance/stitch-importance.js';
import type { Choice } from './pattern/schema.js';
import type { StitchColours } from './sampling/sample.js';
import { copiesInWedges } from './stock/copies.js';
import { decideWithinStock } from './stock/decide.js';
import { usesOf } from './stock/limits.js';
import type { PlainPanel } from './stock/plain-panel.js';
import { reportStock } from './stock/report.js';
import type { StockReport } from './stock/report.js';
import { finishBeads } from './tidy/finish.js';
import type { FinishWish } from './tidy/finish.js';
import { millionth } from './units.js';

/** What the maker wants of their beads. */
export interface BeadWish extends FinishWish {
  /** The maker's beads, in the order of their palette. */
  beads: readonly Bead[];
  /** Most colours, 1 to 24. */
  colours: number;
  /** `#rrggbb`, or `bare`, or the palette index of a bead. */
  background: string | number;
  /** Palette indices that must be, or must not be, among the chosen beads. */
  keep?: readonly number[];
  leaveOut?: readonly number[];
  /** How much is spent on proving that no choice is better; `normal` when absent. */
  proof?: ProofLevel;
  /** Asked now and then during the proof; true ends it early, unproven. */
  stop?: () => boolean;
  /** Use no more of a bead than its grams or count allow, less a reserve. */
  useStock?: boolean;
  /** How much small things that stand out count, 0 (not more than others) to 1. */
  detail?: number;
}

/** The panel whose stitches want beads. */
export interface ColouredPanel {
  readonly geometry: PanelGeometry;
  readonly footprints: Footprints;
  readonly colours: StitchColours;
  /** Every wedge shows the same motif and must keep the same string. */
  readonly repeat: boolean;
  /** How much the maker's mask adds to each stitch, 0 to 1; length count. */
  readonly mask?: Float64Array;
}

/** Which bead every stitch of one panel gets. */
export interface PanelDecision {
  /** Palette index of each stitch, or `bare`; length count. */
  readonly beadOf: BeadOfStitch;
  /** Mean and largest CIEDE2000 of the stitches and their beads, after tidying or dithering. */
  readonly mean: number;
  readonly worst: number;
}

/** Which bead every stitch of all panels gets, and how good that is. */
export interface SharedDecision {
  /** In the order in which the panels were given. */
  readonly panels: readonly PanelDecision[];
  readonly choice: Choice;
  /** Steps that the proof of the choice took. */
  readonly proofSteps: number;
  readonly warnings: readonly Warning[];
  /** With `useStock`: what is taken from the jars. */
  readonly stock?: StockReport;
  /** With `useStock`: most stitches of each bead of the palette, or Infinity. */
  readonly limits?: Float64Array;
}

/** The same for one panel alone. */
export interface BeadDecision extends PanelDecision, Omit<SharedDecision, 'panels'> {}

/**
 * From the colour of every stitch to its bead.
 * @throws RondureError `nothing-to-bead`, `stock-too-small`, and those of `chooseBeads`
 */
export function decideBeads(wish: BeadWish, panel: ColouredPanel): BeadDecision {
  const { panels, ...shared } = decideBeadsTogether(wish, [panel]);
  return { ...panels[0], ...shared };
}

/**
 * The same for panels that share their beads: one choice over the stitches of all of them, and one
 * stock. Each panel is then tidied (or dithered) by itself, with a tidying budget of its own.
 *
 * @param plain a further panel of one bead, which is kept; it has no say in the choice
 * @throws RondureError those of `decideBeads`, and `stock-too-small-for-plain`
 */
export function decideBeadsTogether(
  wish: BeadWish,
  panels: readonly ColouredPanel[],
  plain?: PlainPanel,
): SharedDecision {
  const parts = panels.map((panel) => {
    const beaded = beadedStitches(panel.colours);
    const stitches = stitchLabs(panel.colours, beaded);
    return { panel, beaded, stitches, ...weighed(wish, panel, beaded, stitches) };
  });
  const palette = new Float64Array(3 * wish.beads.length);
  wish.beads.forEach((one, index) => palette.set(one.lab, 3 * index));
  const keep = [...(wish.keep ?? [])];
  for (const one of [wish.background, plain?.bead]) {
    if (typeof one === 'number' && !keep.includes(one)) keep.push(one);
  }
  const input = {
    stitches: joined(parts.map(({ stitches }) => stitches)),
    weights: joined(parts.map(({ weights }) => weights)),
    palette,
    most: wish.colours,
    keep,
    leaveOut: wish.leaveOut ?? [],
    ...(wish.proof && { proof: wish.proof }),
    ...(wish.stop && { stop: wish.stop }),
  };
  const unlimited = chooseBeads(input);
  const repeat = panels.every((panel) => panel.repeat);
  const copyOf = repeat ? copiesTogether(parts) : undefined;
  const stocked = wish.useStock
    ? decideWithinStock(wish.beads, input, unlimited, copyOf, plain)
    : undefined;
  const result = stocked?.result ?? unlimited;
  let before = 0;
  const chosen = parts.map(({ panel, beaded, weights }) => {
    const beadOf: BeadOfStitch = new Int16Array(panel.colours.bare.length).fill(bare);
    let cost = 0;
    beaded.forEach((s, n) => {
      beadOf[s] = result.beadOf[before + n];
      cost += weights[n] * result.difference[before + n];
    });
    before += beaded.length;
    return { beadOf, cost };
  });
  /** Beads that no panel has taken. */
  const left = stocked?.limits.slice();
  const take = (beadOf: BeadOfStitch, sign: 1 | -1) => {
    if (left) usesOf(beadOf, left.length).forEach((uses, bead) => (left[bead] -= sign * uses));
  };
  for (const { beadOf } of chosen) take(beadOf, 1);
  const finished = parts.map(({ panel, guarded }, n) => {
    const { beadOf } = chosen[n];
    take(beadOf, -1);
    const limits = left && { limits: left.slice() };
    const more = { palette, chosen: result.chosen, keep, guarded, ...limits };
    const done = finishBeads(wish, panel, { beadOf, ...more });
    take(done.beadOf, 1);
    return done;
  });
  const choice = {
    objective: millionth(result.objective),
    lowerBound: millionth(result.lowerBound),
    gap: millionth(result.gap),
    proven: result.proven,
    method: result.method,
    ...toldTogether(
      finished.map(({ told }) => told),
      chosen.map(({ cost }) => cost),
    ),
  };
  const beadOf = finished.map((one) => one.beadOf);
  // Whatever comes between the choice and this line keeps to `stocked.limits`.
  const stock = stocked && reportStock(wish.beads, stocked, beadOf, plain);
  return {
    panels: finished.map(({ beadOf, mean, worst }) => ({ beadOf, mean, worst })),
    choice,
    proofSteps: unlimited.steps,
    warnings: stocked?.warnings ?? [],
    ...(stock && { stock, limits: stocked.limits }),
  };
}

/** Weights of the stitches that carry a bead, and which of all stitches are guarded. */
function weighed(
  { detail = defaultDetail }: BeadWish,
  { geometry, footprints, colours, repeat, mask }: ColouredPanel,
  beaded: readonly number[],
  stitches: Float64Array,
): { weights: Float64Array; guarded: Uint8Array } {
  const labs = new Float64Array(3 * geometry.count);
  beaded.forEach((s, n) => labs.set(stitches.subarray(3 * n, 3 * n + 3), 3 * s));
  const { neighbours } = footprints;
  const { bare } = colours;
  const more = { ...(mask && { mask }), detail, repeat };
  const found = stitchImportance({ geometry, neighbours, labs, bare, ...more });
  return { weights: Float64Array.from(beaded, (s) => found.weights[s]), guarded: found.guarded };
}

/** Several lists as one. */
function joined(lists: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(lists.reduce((sum, list) => sum + list.length, 0));
  let at = 0;
  for (const list of lists) {
    all.set(list, at);
    at += list.length;
  }
  return all;
}

/** For each beaded stitch of all panels the one of the first wedge that it repeats. */
function copiesTogether(
  parts: readonly { panel: ColouredPanel; beaded: readonly number[] }[],
): Int32Array {
  let before = 0;
  const copies = parts.flatMap(({ panel, beaded }) => {
    const own = Array.from(copiesInWedges(panel.geometry.shape, beaded), (n) => before + n);
    before += beaded.length;
    return own;
  });
  return Int32Array.from(copies);
}

/** What tidying or dithering did to all panels: counts added up, costs weighed by their panels. */
function toldTogether(
  told: readonly Pick<Choice, 'tidy' | 'dither'>[],
  costs: readonly number[],
): Pick<Choice, 'tidy' | 'dither'> {
  const [first, ...others] = told;
  if (!first.tidy || others.length === 0) return first;
  const all = costs.reduce((sum, cost) => sum + cost, 0);
  const paid = told.reduce((sum, one, n) => sum + (one.tidy?.costPercent ?? 0) * costs[n], 0);
  const tidy = { ...first.tidy, costPercent: millionth(all > 0 ? paid / all : 0) };
  for (const { tidy: other } of others) {
    if (!other) continue;
    tidy.changesBefore += other.changesBefore;
    tidy.changesAfter += other.changesAfter;
    tidy.straysBefore += other.straysBefore;
    tidy.straysAfter += other.straysAfter;
  }
  return { tidy };
}

/** Stitches that carry a bead, in working order. */
function beadedStitches(colours: StitchColours): number[] {
  const beaded: number[] = [];
  for (let s = 0; s < colours.bare.length; s++) if (!colours.bare[s]) beaded.push(s);
  if (beaded.length === 0) throw new RondureError('nothing-to-bead', undefined);
  return beaded;
}

/** L, a, b of the named stitches; length 3·n. */
function stitchLabs(colours: StitchColours, beaded: readonly number[]): Float64Array {
  const labs = new Float64Array(3 * beaded.length);
  beaded.forEach((s, n) => {
    const [r, g, b] = colours.linear.subarray(3 * s, 3 * s + 3);
    labs.set(linearToLab65(r, g, b), 3 * n);
  });
  return labs;
}
