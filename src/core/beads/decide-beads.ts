import { bare } from './bead.js';
import type { Bead, BeadOfStitch } from './bead.js';
import { chooseSteps } from './choice/choose.js';
import type { ChoiceInput, ChoiceResult, ProofLevel } from './choice/choose.js';
import { makeFollower } from './choice/follow.js';
import { labsOf } from '../colour/labs-of.js';
import type { HowKept } from './how-kept.js';
import { RondureError } from '../errors.js';
import type { Warning } from '../errors.js';
import type { Footprints } from '../panel/footprints.js';
import type { PanelGeometry } from '../panel/geometry.js';
import { defaultDetail, stitchImportance } from '../picture/importance/stitch-importance.js';
import type { Choice } from './how-chosen.js';
import type { StitchColours } from '../picture/sampling/sample.js';
import { remembered, rememberedSteps } from '../remember.js';
import { drain } from '../steps.js';
import type { Steps } from '../steps.js';
import { copiesInWedges } from './stock/copies.js';
import { decideWithinStock } from './stock/decide.js';
import { usesOf } from './stock/limits.js';
import type { PlainPanel } from './stock/plain-panel.js';
import { reportStock } from './stock/report.js';
import type { StockReport } from './stock/report.js';
import { finishBeads } from './finish-choice.js';
import type { FinishedBeads, FinishWish } from './finish-choice.js';
import { millionth } from '../units.js';

/** What the maker wants of their beads. */
export interface BeadWish extends FinishWish {
  /** The maker's beads, in the order of their palette. */
  beads: readonly Bead[];
  /** Most colours, 1 to 24. */
  colours: number;
  /** `#rrggbb`, `bare`, the palette index of a bead, or `auto`: see picture/standing. */
  background: string | number;
  /** Palette indices that must be, or must not be, among the chosen beads. */
  keep?: readonly number[];
  /** Beads that must not be used, by 0-based index. */
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
  /** Palette index of the bead that its ground was given; it is kept. */
  readonly ground?: number;
}

/** Which bead every stitch of one panel gets. */
export interface PanelDecision {
  /** Palette index of each stitch, or `bare`; length count. */
  readonly beadOf: BeadOfStitch;
  /** Mean and largest CIEDE2000 of the stitches and their beads, after tidying or dithering. */
  readonly mean: number;
  readonly worst: number;
  /** How well what the picture shows is kept. */
  readonly kept: HowKept;
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
  const { panels, ...shared } = drain(makeDecision().steps(wish, [panel]));
  return { ...panels[0], ...shared };
}

/** Decides the beads of panels, and remembers what a change of the wish does not touch. */
export interface Decision {
  /**
   * The best choice, finished, for panels that share their beads: one choice over the stitches of
   * all of them, and one stock. Each panel is then tidied (or dithered) by itself, with a tidying
   * budget of its own.
   *
   * @param plain a further panel of one bead, which is kept; it has no say in the choice
   * @throws RondureError those of `decideBeads`, and `stock-too-small-for-plain`
   */
  steps(
    wish: BeadWish,
    panels: readonly ColouredPanel[],
    plain?: PlainPanel,
  ): Steps<SharedDecision>;
  /** A good choice at once, which starts from the last one; nothing is proven, tidied or stocked. */
  follow(wish: BeadWish, panels: readonly ColouredPanel[], plain?: PlainPanel): FollowedChoice;
}

/** What `Decision.follow` gives. */
export interface FollowedChoice {
  /** Palette index of each stitch, or `bare`, of each panel. */
  readonly beadOf: readonly BeadOfStitch[];
  /** Palette indices that are open, ascending. */
  readonly open: readonly number[];
  /** Weighted mean CIEDE2000. */
  readonly objective: number;
}

/** A panel, its stitches that carry beads, their colours and how much they count. */
interface WeighedPanel {
  readonly panel: ColouredPanel;
  /** Stitches that carry a bead, in working order. */
  readonly beaded: readonly number[];
  /** L, a, b of these; length 3·n. */
  readonly stitches: Float64Array;
  /** Weight of these; length n. */
  readonly weights: Float64Array;
  /** 1 where the bead must stay; by stitch. */
  readonly guarded: Uint8Array;
}

/** Makes a `Decision`. */
export function makeDecision(): Decision {
  const [settling, following] = [makeWeighing(), makeWeighing()];
  const paletteOf = remembered((beads: readonly Bead[]) =>
    Float64Array.from(beads.flatMap(({ lab }) => lab)),
  );
  const choose = rememberedSteps(chooseSteps);
  const choosing = makeFollower();

  const inputFor = (
    { allStitches, allWeights }: Weighing,
    wish: BeadWish,
    parts: readonly WeighedPanel[],
    plain?: PlainPanel,
  ) => {
    const keep = [...(wish.keep ?? [])];
    const grounds = parts.map(({ panel }) => panel.ground);
    for (const one of [wish.background, plain?.bead, ...grounds]) {
      if (typeof one === 'number' && !keep.includes(one)) keep.push(one);
    }
    return {
      stitches: allStitches(...parts.map(({ stitches }) => stitches)),
      weights: allWeights(...parts.map(({ weights }) => weights)),
      palette: paletteOf(wish.beads),
      most: wish.colours,
      keep,
      leaveOut: wish.leaveOut ?? [],
      ...(wish.proof && { proof: wish.proof }),
      ...(wish.stop && { stop: wish.stop }),
    };
  };

  return {
    *steps(wish, panels, plain) {
      yield { stage: 'beads' };
      const parts = settling.panels(wish, panels);
      yield { stage: 'beads' };
      const input = inputFor(settling, wish, parts, plain);
      const unlimited = yield* choose(input);
      return yield* finishTogether(wish, parts, input, unlimited, plain);
    },
    follow(wish, panels, plain) {
      const parts = following.panels(wish, panels);
      const input = inputFor(following, wish, parts, plain);
      const { beadOf, open, objective } = choosing(input);
      return { beadOf: perPanel(parts, beadOf), open, objective };
    },
  };
}

/** What weighs panels and joins their lists. A chart that settles shows lines that one that follows has not. */
interface Weighing {
  panels(wish: BeadWish, panels: readonly ColouredPanel[]): WeighedPanel[];
  allStitches(...lists: Float64Array[]): Float64Array;
  allWeights(...lists: Float64Array[]): Float64Array;
}

function makeWeighing(): Weighing {
  const weighers: ReturnType<typeof makeWeigher>[] = [];
  return {
    panels: ({ detail = defaultDetail }, panels) =>
      panels.map((panel) => (weighers[panels.indexOf(panel)] ??= makeWeigher())(panel, detail)),
    allStitches: remembered((...lists: Float64Array[]) => joined(lists)),
    allWeights: remembered((...lists: Float64Array[]) => joined(lists)),
  };
}

/** Makes what weighs the stitches of one panel, and remembers the last one. */
function makeWeigher(): (panel: ColouredPanel, detail: number) => WeighedPanel {
  const beadedOf = remembered(beadedStitches);
  const labsOf = remembered(stitchLabs);
  const weigh = remembered(weighed);
  return (panel, detail) => {
    const beaded = beadedOf(panel.colours);
    const stitches = labsOf(panel.colours, beaded);
    return { panel, beaded, stitches, ...weigh(detail, panel, beaded, stitches) };
  };
}

/** One list over all beaded stitches, by panel and stitch; `bare` for the others. */
function perPanel(parts: readonly WeighedPanel[], beadOf: BeadOfStitch): BeadOfStitch[] {
  let before = 0;
  return parts.map(({ panel, beaded }) => {
    const own: BeadOfStitch = new Int16Array(panel.colours.bare.length).fill(bare);
    beaded.forEach((s, n) => (own[s] = beadOf[before + n]));
    before += beaded.length;
    return own;
  });
}

/** Keeps to the stock, tidies or dithers, and reports what was chosen. */
function* finishTogether(
  wish: BeadWish,
  parts: readonly WeighedPanel[],
  input: ChoiceInput & { palette: Float64Array; keep: readonly number[] },
  unlimited: ChoiceResult,
  plain?: PlainPanel,
): Steps<SharedDecision> {
  const { palette, keep } = input;
  const repeat = parts.every(({ panel }) => panel.repeat);
  const copyOf = repeat ? copiesTogether(parts) : undefined;
  const stocked = wish.useStock
    ? decideWithinStock(wish.beads, input, unlimited, copyOf, plain)
    : undefined;
  const result = stocked?.result ?? unlimited;
  let before = 0;
  const chosen = perPanel(parts, result.beadOf).map((beadOf, n) => {
    const { beaded, weights } = parts[n];
    let cost = 0;
    beaded.forEach((_, at) => (cost += weights[at] * result.difference[before + at]));
    before += beaded.length;
    return { beadOf, cost };
  });
  /** Beads that no panel has taken. */
  const left = stocked?.limits.slice();
  const take = (beadOf: BeadOfStitch, sign: 1 | -1) => {
    if (left) usesOf(beadOf, left.length).forEach((uses, bead) => (left[bead] -= sign * uses));
  };
  for (const { beadOf } of chosen) take(beadOf, 1);
  const finished: FinishedBeads[] = [];
  for (const [n, { panel, guarded }] of parts.entries()) {
    const { beadOf } = chosen[n];
    take(beadOf, -1);
    const limits = left && { limits: left.slice() };
    const more = { palette, chosen: result.chosen, keep, guarded, ...limits };
    const done = yield* finishBeads(wish, panel, { beadOf, ...more });
    take(done.beadOf, 1);
    finished.push(done);
  }
  const choice = {
    objective: millionth(result.objective),
    lowerBound: millionth(result.lowerBound),
    gap: millionth(result.gap),
    proven: result.proven,
    method: result.method,
    ...toldTogether(
      finished.map(({ told }) => told),
      chosen.map(({ cost }) => cost),
      parts.map(({ beaded }) => beaded.length),
    ),
  };
  const beadOf = finished.map((one) => one.beadOf);
  // Whatever comes between the choice and this line keeps to `stocked.limits`.
  const stock = stocked && reportStock(wish.beads, stocked, beadOf, plain);
  return {
    panels: finished.map(({ beadOf, mean, worst, kept }) => ({ beadOf, mean, worst, kept })),
    choice,
    proofSteps: unlimited.steps,
    warnings: stocked?.warnings ?? [],
    ...(stock && { stock, limits: stocked.limits }),
  };
}

/** Weights of the stitches that carry a bead, and which of all stitches are guarded. */
function weighed(
  detail: number,
  { geometry, footprints, colours, repeat, mask }: ColouredPanel,
  beaded: readonly number[],
  stitches: Float64Array,
): { weights: Float64Array; guarded: Uint8Array } {
  const labs = new Float64Array(3 * geometry.count);
  for (let n = 0; n < beaded.length; n++) {
    for (let c = 0; c < 3; c++) labs[3 * beaded[n] + c] = stitches[3 * n + c];
  }
  const { neighbours } = footprints;
  const { bare } = colours;
  const more = { ...(mask && { mask }), detail, repeat };
  const found = stitchImportance({ geometry, neighbours, labs, bare, ...more });
  const weights = new Float64Array(beaded.length);
  for (let n = 0; n < beaded.length; n++) weights[n] = found.weights[beaded[n]];
  return { weights, guarded: found.guarded };
}

/** Several lists as one. */
function joined(lists: readonly Float64Array[]): Float64Array {
  if (lists.length === 1) return lists[0];
  const all = new Float64Array(lists.reduce((sum, list) => sum + list.length, 0));
  let at = 0;
  for (const list of lists) {
    all.set(list, at);
    at += list.length;
  }
  return all;
}

/** For each beaded stitch of all panels the one of the first wedge that it repeats. */
function copiesTogether(parts: readonly Pick<WeighedPanel, 'panel' | 'beaded'>[]): Int32Array {
  let before = 0;
  const copies = parts.flatMap(({ panel, beaded }) => {
    const own = Array.from(copiesInWedges(panel.geometry.shape, beaded), (n) => before + n);
    before += beaded.length;
    return own;
  });
  return Int32Array.from(copies);
}

/** What was done to all panels: counts added up, costs weighed by their panels. */
function toldTogether(
  told: readonly Pick<Choice, 'tidy' | 'dither' | 'edges'>[],
  costs: readonly number[],
  beaded: readonly number[],
): Pick<Choice, 'tidy' | 'dither' | 'edges'> {
  const [first, ...others] = told;
  if (others.length === 0) return first;
  const weighed = (shares: readonly number[], of: (one: (typeof told)[0]) => number): number => {
    const all = shares.reduce((sum, share) => sum + share, 0);
    const sum = told.reduce((total, one, n) => total + of(one) * shares[n], 0);
    return millionth(all > 0 ? sum / all : 0);
  };
  const together = { ...first };
  if (first.edges) {
    const mean = (key: 'before' | 'after' | 'lowerBound') =>
      weighed(beaded, ({ edges }) => edges?.[key] ?? 0);
    const { strength, lowerBound } = first.edges;
    const bound = lowerBound !== undefined && { lowerBound: mean('lowerBound') };
    together.edges = { strength, before: mean('before'), after: mean('after'), ...bound };
  }
  if (first.tidy) {
    const tidy = {
      ...first.tidy,
      costPercent: weighed(costs, (one) => one.tidy?.costPercent ?? 0),
    };
    for (const { tidy: other } of others) {
      if (!other) continue;
      tidy.changesBefore += other.changesBefore;
      tidy.changesAfter += other.changesAfter;
      tidy.straysBefore += other.straysBefore;
      tidy.straysAfter += other.straysAfter;
    }
    together.tidy = tidy;
  }
  return together;
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
  const all = labsOf(colours.linear);
  if (3 * beaded.length === all.length) return all;
  const labs = new Float64Array(3 * beaded.length);
  for (let n = 0; n < beaded.length; n++) {
    for (let c = 0; c < 3; c++) labs[3 * n + c] = all[3 * beaded[n] + c];
  }
  return labs;
}
