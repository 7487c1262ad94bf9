import type { BeadOfStitch } from './bead.js';
import { ciede2000Fast } from '../colour/ciede2000.js';
import { patchesOf } from '../picture/importance/patches.js';
import type { Steps } from '../steps.js';
import { millionth } from '../units.js';

/** How well the beads of a panel keep what its picture shows, stitch by stitch. */
export interface HowKept {
  /**
   * Share, 0 to 1, of the picture's edges that still are edges: touching stitches that clearly
   * differ in the picture, and in beads by at least half as much. Undefined where there are none.
   */
  readonly edges: number | undefined;
  /** Small features: patches of few stitches that stand out; and those of them that still do. */
  readonly features: number;
  /** Small features that still stand out in beads: 0 to `features`. */
  readonly featuresKept: number;
  /** The stitches of those that do not. */
  readonly lost: readonly number[];
  /** Areas of another colour than their neighbour that got mostly the very same bead. */
  readonly merged: number;
  /** Those areas, largest first. */
  readonly mergedAreas: readonly MergedArea[];
}

/** An area that can no longer be told from the one beside it. */
export interface MergedArea {
  /** Mean L, a, b of the area and of the one that it melts into, as the picture has them. */
  readonly lab: readonly [number, number, number];
  /** L, a, b of the area that it melts into. */
  readonly into: readonly [number, number, number];
  /** Its stitches, 0-based. */
  readonly stitches: readonly number[];
  /** Where its middle lies on the bead face: an hour of a clock, 1 to 12; 0 at the centre of the panel. */
  readonly hour: number;
}

/** CIEDE2000 from which touching stitches are an edge; more than `clearly` no edge needs. */
const [edgeFrom, clearly] = [10, 30];
/** Stitches of a small feature, and the contrast with its surroundings that makes it one. */
const [fewest, most, standsOut] = [2, 12, 20];
/** An area has so many stitches at least, and this contrast with the area beside it. */
const [areaStitches, areaContrast] = [12, 12];
/** Stitches whose edges are looked at in one step. */
const stitchesAStep = 4096;
/** Touching stitches that make two areas neighbours. */
const sharedPairs = 4;

/** What `howKept` compares. */
export interface KeptInput {
  /** L, a, b (D65) of each stitch in the picture; length 3·count. */
  readonly stitches: Float64Array;
  /** Palette index of each stitch, negative where it has no bead; length count. */
  readonly beadOf: BeadOfStitch;
  /** L, a, b (D65) of each bead of the palette; length 3·P. */
  readonly palette: Float64Array;
  /** As in `Footprints`. */
  readonly neighbours: (s: number) => readonly number[];
  /** x, y of the middle of each stitch, y downward; length 2·count. */
  readonly centres: Float64Array;
}

/** Measures what is kept; own definitions, which bench/kept checks against the picture's pixels. */
export function* howKept(input: KeptInput): Steps<HowKept> {
  const { stitches, beadOf, palette, neighbours } = input;
  const beaded = Uint8Array.from(beadOf, (bead) => (bead < 0 ? 0 : 1));
  let [kept, edges] = [0, 0];
  for (let s = 0; s < beadOf.length; s++) {
    if (s % stitchesAStep === 0) yield { stage: 'finish' };
    if (!beaded[s]) continue;
    for (const n of neighbours(s)) {
      if (n < s || !beaded[n]) continue;
      const wanted = apart(stitches, s, stitches, n);
      if (wanted < edgeFrom) continue;
      edges++;
      if (apart(palette, beadOf[s], palette, beadOf[n]) >= Math.min(clearly, wanted) / 2) kept++;
    }
  }
  yield { stage: 'finish' };
  const {
    stitches: inPatches,
    from,
    contrast,
  } = patchesOf(stitches, beaded, neighbours, standsOut);
  yield { stage: 'finish' };
  const patches = Array.from(contrast, (contrast, p) => ({
    stitches: Array.from(inPatches.subarray(from[p], from[p + 1])),
    contrast,
  }));
  let [features, featuresKept] = [0, 0];
  const lost: number[] = [];
  for (const { stitches: own, contrast } of patches) {
    if (own.length < fewest || own.length > most || contrast < standsOut) continue;
    features++;
    const inside = new Set(own);
    const around = [...new Set(own.flatMap((s) => neighbours(s)))].filter(
      (n) => beaded[n] && !inside.has(n),
    );
    const [mine, other] = [meanOf(stitches, own), meanOf(stitches, around)];
    const nearer = own.filter((s) => {
      const bead = 3 * beadOf[s];
      const lab = [palette[bead], palette[bead + 1], palette[bead + 2]] as const;
      return ciede2000Fast(...lab, ...mine) < ciede2000Fast(...lab, ...other);
    });
    if (nearer.length >= own.length / 2) featuresKept++;
    else lost.push(...own);
  }
  yield { stage: 'finish' };
  const areas = patches.filter(({ stitches: own }) => own.length >= areaStitches);
  const mergedAreas = yield* areasThatMerge(
    areas.map(({ stitches: own }) => own),
    input,
  );
  const share = edges === 0 ? undefined : kept / edges;
  return { edges: share, features, featuresKept, lost, merged: mergedAreas.length, mergedAreas };
}

/** Areas that touch one of clearly another colour and got mostly its bead. */
function* areasThatMerge(
  areas: readonly (readonly number[])[],
  { stitches, beadOf, neighbours, centres }: KeptInput,
): Steps<MergedArea[]> {
  /** Area of each stitch, or -1. */
  const areaOf = new Int32Array(beadOf.length).fill(-1);
  areas.forEach((area, n) => area.forEach((s) => (areaOf[s] = n)));
  const facts = areas.map((area) => ({ mean: meanOf(stitches, area), bead: mostOf(beadOf, area) }));
  yield { stage: 'finish' };
  const merged: MergedArea[] = [];
  areas.forEach((area, n) => {
    const touching = new Map<number, number>();
    for (const s of area) {
      for (const near of neighbours(s)) {
        const other = areaOf[near];
        if (other >= 0 && other !== n) touching.set(other, (touching.get(other) ?? 0) + 1);
      }
    }
    const into = [...touching].find(
      ([other, pairs]) =>
        pairs >= sharedPairs &&
        areas[other].length >= area.length &&
        facts[other].bead === facts[n].bead &&
        ciede2000Fast(...facts[other].mean, ...facts[n].mean) >= areaContrast,
    );
    if (!into) return;
    const { mean: lab } = facts[n];
    const hour = hourOf(centres, area);
    merged.push({ lab, into: facts[into[0]].mean, stitches: area, hour });
  });
  return merged.sort((a, b) => b.stitches.length - a.stitches.length);
}

/** A middle nearer to the centre than this share of the panel has no hour. */
const centreShare = 0.15;

function hourOf(centres: Float64Array, area: readonly number[]): number {
  let [x, y, far] = [0, 0, 0];
  for (const s of area) {
    x += centres[2 * s] / area.length;
    y += centres[2 * s + 1] / area.length;
  }
  for (let p = 0; p < centres.length; p += 2)
    far = Math.max(far, centres[p] ** 2 + centres[p + 1] ** 2);
  if (x * x + y * y < centreShare ** 2 * far) return 0;
  const turns = Math.atan2(x, -y) / (2 * Math.PI);
  return ((Math.round(millionth(12 * turns)) + 11) % 12) + 1;
}

function mostOf(beadOf: BeadOfStitch, area: readonly number[]): number {
  const uses = new Map<number, number>();
  for (const s of area) uses.set(beadOf[s], (uses.get(beadOf[s]) ?? 0) + 1);
  return [...uses].reduce((a, b) => (b[1] > a[1] ? b : a))[0];
}

function apart(one: Float64Array, s: number, other: Float64Array, n: number): number {
  const [p, q] = [3 * s, 3 * n];
  return ciede2000Fast(one[p], one[p + 1], one[p + 2], other[q], other[q + 1], other[q + 2]);
}

function meanOf(labs: Float64Array, stitches: readonly number[]): [number, number, number] {
  const sums: [number, number, number] = [0, 0, 0];
  for (const s of stitches) for (let c = 0; c < 3; c++) sums[c] += labs[3 * s + c];
  return sums.map((sum) => sum / Math.max(1, stitches.length)) as [number, number, number];
}
