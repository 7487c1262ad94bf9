import { bare } from './bead.js';
import type { Bead, BeadOfStitch } from './bead.js';
import { chooseBeads } from './choice/choose.js';
import { linearToLab65 } from './colour/lab.js';
import { RondureError } from './errors.js';
import type { Warning } from './errors.js';
import type { Footprints } from './geometry/footprints.js';
import type { PanelGeometry } from './geometry/panel.js';
import { defaultDetail, stitchImportance } from './importance/stitch-importance.js';
import type { Choice } from './pattern/schema.js';
import type { StitchColours } from './sampling/sample.js';
import { millionth } from './units.js';

/** What the maker wants of their beads. */
export interface BeadWish {
  /** The maker's beads, in the order of their palette. */
  beads: readonly Bead[];
  /** Most colours, 1 to 24. */
  colours: number;
  /** `#rrggbb`, or `bare`, or the palette index of a bead. */
  background: string | number;
  /** Palette indices that must be, or must not be, among the chosen beads. */
  keep?: readonly number[];
  leaveOut?: readonly number[];
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
  /** 1 for stitches that tidying must leave alone; length count. */
  readonly guarded: Uint8Array;
  /** Mean CIEDE2000 of the stitches and their beads, every stitch counting alike. */
  readonly mean: number;
  /** Largest CIEDE2000 of a stitch and its bead. */
  readonly worst: number;
  readonly warnings: readonly Warning[];
}

/**
 * From the colour of every stitch to its bead.
 * @throws RondureError `nothing-to-bead`, and those of `chooseBeads`
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
  const result = chooseBeads({
    stitches,
    weights,
    palette,
    most: wish.colours,
    keep,
    leaveOut: wish.leaveOut ?? [],
  });
  const beadOf: BeadOfStitch = new Int16Array(colours.bare.length).fill(bare);
  beaded.forEach((s, n) => (beadOf[s] = result.beadOf[n]));
  const choice = {
    objective: millionth(result.objective),
    lowerBound: millionth(result.lowerBound),
    gap: millionth(result.gap),
    proven: result.proven,
    method: result.method,
  };
  const mean = millionth(result.difference.reduce((sum, one) => sum + one, 0) / beaded.length);
  return { beadOf, choice, guarded, mean, worst: result.worst, warnings: [] };
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
