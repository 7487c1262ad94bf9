import type { PanelGeometry } from '../../panel/geometry.js';
import { millionth } from '../../units.js';
import { patchesOf } from './patches.js';

/** How much each stitch counts when beads are chosen. */
export interface Importance {
  /** Weight of each stitch, mean 1 over those that carry a bead, 0 for the others; length count. */
  readonly weights: Float64Array;
  /** 1 for stitches that tidying must leave alone; length count. */
  readonly guarded: Uint8Array;
}

export interface ImportanceInput {
  readonly geometry: Pick<PanelGeometry, 'count' | 'shape'>;
  /** As in `Footprints`. */
  readonly neighbours: (s: number) => readonly number[];
  /** L, a, b (D65) of each stitch; length 3·count. */
  readonly labs: Float64Array;
  /** 1 for stitches without a bead; length count. */
  readonly bare: Uint8Array;
  /** 0 (every stitch counts alike) to 1. */
  readonly detail: number;
  /** How much the maker's mask adds to each stitch, 0 to 1; length count. */
  readonly mask?: Float64Array;
  /** Every wedge shows the same motif: a stitch counts the same in each. */
  readonly repeat: boolean;
}

/**
 * `--detail` where nothing else is said. On 21 open pictures, of which 5 took no part in the tuning,
 * it keeps about as many small features as 0.4 does, at a tenth of the cost: at most 0.25 % more
 * mean difference in each group of pictures, against 2.25 % (bench/details.js shows some of them).
 */
export const defaultDetail = 0.25;
/** Share of the panel that a patch can count for beyond its own stitches, at detail 1. */
const mostShare = 0.08;
/** … and all patches together, at detail 1, so that a lively picture keeps its large areas. */
const mostTogether = 0.5;
/** CIEDE2000 from which a patch begins to count for more, and from which it does so fully. */
const [contrastFrom, contrastFull] = [10, 30];
/** Patches of fewer stitches count as if they had so many: one stitch may be an accident. */
const fewest = 2;
/** A patch of at most so many stitches, with more contrast than this, is guarded. */
const guardedStitches = 12;
const guardedContrast = 20;
/** What a white stitch of the mask counts, in black ones. */
export const maskFactor = 8;
/** Mask from which a stitch is guarded. */
const guardedMask = 0.5;

/**
 * Weighs the stitches by what they show. Touching stitches of about one colour form a patch; a patch
 * that stands out from the stitches around it counts like a small share of the whole panel besides
 * its own stitches, however few they are; all such shares together are limited. Where the mask is
 * white, each stitch counts eightfold.
 */
export function stitchImportance(input: ImportanceInput): Importance {
  const { geometry, labs, bare, detail, mask } = input;
  const { count } = geometry;
  const takesPart = new Uint8Array(count);
  for (let s = 0; s < count; s++) takesPart[s] = 1 - bare[s];
  const weights = Float64Array.from(takesPart);
  const guarded = new Uint8Array(count);
  if (detail > 0) {
    const {
      count: patches,
      stitches,
      from,
      contrast,
    } = patchesOf(labs, takesPart, input.neighbours, contrastFrom);
    const extra = new Float64Array(patches);
    let together = 0;
    for (let p = 0; p < patches; p++) {
      const standsOut = (contrast[p] - contrastFrom) / (contrastFull - contrastFrom);
      const full = Math.min(1, (from[p + 1] - from[p]) / fewest);
      extra[p] = mostShare * detail * detail * full * Math.max(0, Math.min(1, standsOut));
      together += extra[p];
    }
    const scale = count * Math.min(1, (mostTogether * detail) / Math.max(1e-9, together));
    for (let p = 0; p < patches; p++) {
      if (extra[p] === 0) continue;
      const many = from[p + 1] - from[p];
      const more = (scale * extra[p]) / many;
      const guard = many <= guardedStitches && contrast[p] > guardedContrast;
      for (let k = from[p]; k < from[p + 1]; k++) {
        weights[stitches[k]] += more;
        if (guard) guarded[stitches[k]] = 1;
      }
    }
  }
  if (mask) {
    for (let s = 0; s < count; s++) {
      weights[s] *= 1 + (maskFactor - 1) * mask[s];
      if (takesPart[s] && mask[s] >= guardedMask) guarded[s] = 1;
    }
  }
  if (input.repeat) sameInEveryWedge(geometry.shape, weights, guarded);
  let [sum, beaded] = [0, 0];
  for (let s = 0; s < count; s++) {
    sum += weights[s];
    beaded += takesPart[s];
  }
  for (let s = 0; s < count; s++) weights[s] = millionth((weights[s] * beaded) / sum);
  return { weights, guarded };
}

/** Each place of a wedge gets the mean weight of its stitches, and is guarded when one of them is. */
function sameInEveryWedge(
  { wedges, rounds }: PanelGeometry['shape'],
  weights: Float64Array,
  guarded: Uint8Array,
): void {
  for (let r = 1, first = 0; r <= rounds; first += wedges * r, r++) {
    for (let i = 0; i < r; i++) {
      const same = Array.from({ length: wedges }, (_, k) => first + k * r + i);
      const mean = same.reduce((sum, s) => sum + weights[s], 0) / wedges;
      const guard = same.some((s) => guarded[s]) ? 1 : 0;
      for (const s of same) {
        weights[s] = mean;
        guarded[s] = guard;
      }
    }
  }
}
