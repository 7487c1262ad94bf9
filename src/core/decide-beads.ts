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

/** Which bead every stitch gets, and how good that is. */
export interface BeadDecision {
  /** Palette index of each stitch, or `bare`; length count. */
  readonly beadOf: BeadOfStitch;
  readonly choice: Choice;
  /** Mean and largest CIEDE2000 of the stitches and their beads, after tidying or dithering. */
  readonly mean: number;
  readonly worst: number;
  /** Steps that the proof of the choice took. */
  readonly proofSteps: number;
  readonly warnings: readonly Warning[];
  /** With `useStock`: what is taken from the jars. */
  readonly stock?: StockReport;
  /** With `useStock`: most stitches of each bead of the palette, or Infinity. */
  readonly limits?: Float64Array;
}

/**
 * From the colour of every stitch to its bead.
 * @throws RondureError `nothing-to-bead`, `stock-too-small`, and those of `chooseBeads`
 */
export function decideBeads(wish: BeadWish, panel: ColouredPanel): BeadDecision {
  const { colours } = panel;
  const beaded = beadedStitches(colours);
  const stitches = stitchLabs(colours, beaded);
  const { weights, guarded } = weighed(wish, panel, beaded, stitches);
  const palette = new Float64Array(3 * wish.beads.length);
  wish.beads.forEach((one, index) => palette.set(one.lab, 3 * index));
  const keep = [...(wish.keep ?? [])];
  if (typeof wish.background === 'number' && !keep.includes(wish.background)) {
    keep.push(wish.background);
  }
  const input = {
    stitches,
    weights,
    palette,
    most: wish.colours,
    keep,
    leaveOut: wish.leaveOut ?? [],
    ...(wish.proof && { proof: wish.proof }),
    ...(wish.stop && { stop: wish.stop }),
  };
  const unlimited = chooseBeads(input);
  const copyOf = panel.repeat ? copiesInWedges(panel.geometry.shape, beaded) : undefined;
  const stocked = wish.useStock
    ? decideWithinStock(wish.beads, input, unlimited, copyOf)
    : undefined;
  const result = stocked?.result ?? unlimited;
  const beadOf: BeadOfStitch = new Int16Array(colours.bare.length).fill(bare);
  beaded.forEach((s, n) => (beadOf[s] = result.beadOf[n]));
  const finished = finishBeads(wish, panel, {
    beadOf,
    palette,
    chosen: result.chosen,
    keep,
    guarded,
    ...(stocked && { limits: stocked.limits }),
  });
  const choice = {
    objective: millionth(result.objective),
    lowerBound: millionth(result.lowerBound),
    gap: millionth(result.gap),
    proven: result.proven,
    method: result.method,
    ...finished.told,
  };
  const warnings = stocked?.warnings ?? [];
  // Whatever comes between the choice and this line keeps to `stocked.limits`.
  const stock = stocked && reportStock(wish.beads, stocked, finished.beadOf);
  return {
    beadOf: finished.beadOf,
    choice,
    mean: finished.mean,
    worst: finished.worst,
    proofSteps: unlimited.steps,
    warnings,
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
