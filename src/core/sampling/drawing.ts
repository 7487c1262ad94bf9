import { srgbToLinear } from '../colour/srgb.js';
import type { Coverage } from './coverage.js';
import { visibleShare } from './means.js';

/** Share of a stitch that a clearly darker colour must cover to win it (measured on drawings). */
export const darkWinsFromCover = 0.4;
/** Luma by which a colour is clearly darker, of 255 (about 20 of L*). */
const clearlyDarker = 50;
/** Colours nearer than this are one colour; black and white are 765 apart. */
const oneColour = 90;
/** A colour that covers less is taken for the blend of its neighbours and counted with the nearest. */
const ownColourFromShare = 0.12;

/** Colours are gathered in 16 steps a channel, each standing for its first colour met. */
const shades = 16 * 16 * 16;
const shadeOf = (r: number, g: number, b: number): number => ((r >> 4) << 8) | (g & 240) | (b >> 4);

/** Shades that count as one colour. */
interface Group {
  readonly r: number;
  readonly g: number;
  readonly b: number;
  /** Area, pixels. */
  weight: number;
}

/** Luma of Rec. 709 of a coded colour, 0..255. */
const lumaOf = ({ r, g, b }: Group): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** The nearest group within a distance, by the eye's rough weights 2, 4, 3; -1 when none is. */
function nearest(
  r: number,
  g: number,
  b: number,
  groups: readonly Group[],
  within = Infinity,
): number {
  let best = -1;
  let least = within * within;
  for (let k = 0; k < groups.length; k++) {
    const dr = r - groups[k].r;
    const dg = g - groups[k].g;
    const db = b - groups[k].b;
    const distance = 2 * dr * dr + 4 * dg * dg + 3 * db * db;
    if (distance < least) {
      least = distance;
      best = k;
    }
  }
  return best;
}

/** What fills the part of a footprint that no picture covers. */
export interface Ground {
  /** r, g, b, 0 to 255. */
  readonly rgb: readonly [number, number, number];
  /** Area of that part, pixels. */
  readonly area: number;
}

/** What won a footprint, and the clearly darker colour that covers too little to win. */
export interface Choice {
  /** Luma, 0..255, and cover, 0 to 1, of the winner. */
  readonly luma: number;
  readonly cover: number;
  /** Share of all clearly darker colours, however small each. */
  readonly darkShare?: number;
  readonly darker?: {
    readonly luma: number;
    readonly cover: number;
    readonly linear: Float64Array;
  };
}

/**
 * Makes the chooser for drawings: given what a footprint covers, it gathers the colours into
 * groups and gives the mean of one group, never a blend of several: the clearly darker one where it
 * covers enough, otherwise the largest. Outlines and eyes survive, blended edges vanish.
 *
 * @param darkCover share from which a clearly darker group wins
 * @returns a function that writes linear r, g, b into `colour`; undefined when nothing is covered
 */
export function makeDrawingChooser(
  darkCover = darkWinsFromCover,
): (
  coverage: Coverage,
  data: Uint8Array | Uint8ClampedArray,
  ground: Ground | undefined,
  colour: Float64Array,
) => Choice | undefined {
  const weights = new Float64Array(shades);
  const groupOf = new Int32Array(shades);
  /** First colour met of each shade, 0xrrggbb. */
  const firstOf = new Int32Array(shades);
  const touched: number[] = [];
  let visible = 0;

  return (coverage, data, ground, colour) => {
    gather(coverage, data, ground);
    if (touched.length === 0) return undefined;
    const groups = grouped();
    const { winner, loser, ...choice } = decide(groups);
    meanOfGroup(coverage, data, ground, groups.indexOf(winner), colour);
    let darker: Choice['darker'];
    if (loser) {
      const linear = new Float64Array(3);
      meanOfGroup(coverage, data, ground, groups.indexOf(loser.group), linear);
      darker = { luma: lumaOf(loser.group), cover: loser.cover, linear };
    }
    for (const shade of touched) weights[shade] = 0;
    touched.length = 0;
    return darker ? { ...choice, darker } : choice;
  };

  function add(r: number, g: number, b: number, weight: number): void {
    const shade = shadeOf(r, g, b);
    if (weights[shade] === 0) {
      touched.push(shade);
      firstOf[shade] = (r << 16) | (g << 8) | b;
    }
    weights[shade] += weight;
    visible += weight;
  }

  function gather(
    { count, pixel, area }: Coverage,
    data: Uint8Array | Uint8ClampedArray,
    ground?: Ground,
  ): void {
    visible = 0;
    for (let p = 0; p < count; p++) {
      const at = 4 * pixel[p];
      const alpha = data[at + 3];
      if (alpha > 0) add(data[at], data[at + 1], data[at + 2], area[p] * visibleShare[alpha]);
    }
    if (ground && ground.area > 0) add(...ground.rgb, ground.area);
  }

  /** Heaviest shade first, each joins the nearest group near enough or founds one. */
  function grouped(): Group[] {
    touched.sort((one, other) => weights[other] - weights[one] || one - other);
    const groups: Group[] = [];
    for (const shade of touched) {
      const first = firstOf[shade];
      const [r, g, b] = [first >> 16, (first >> 8) & 255, first & 255];
      const group = nearest(r, g, b, groups, oneColour);
      groupOf[shade] = group < 0 ? groups.length : group;
      if (group < 0) groups.push({ r, g, b, weight: weights[shade] });
      else groups[group].weight += weights[shade];
    }
    return groups;
  }

  function decide(groups: Group[]): {
    winner: Group;
    loser: { group: Group; cover: number } | undefined;
    luma: number;
    cover: number;
    darkShare: number;
  } {
    const heaviest = groups.reduce((a, b) => (b.weight > a.weight ? b : a));
    const own = groups.filter(
      (group) => group === heaviest || group.weight >= ownColourFromShare * visible,
    );
    const cover = own.map(({ weight }) => weight);
    for (const group of groups) {
      if (!own.includes(group)) cover[nearest(group.r, group.g, group.b, own)] += group.weight;
    }
    let winner = own[cover.indexOf(Math.max(...cover))];
    const limit = lumaOf(winner) - clearlyDarker;
    own.forEach((group, k) => {
      if (cover[k] < darkCover * visible || lumaOf(group) > limit) return;
      if (lumaOf(group) < lumaOf(winner)) winner = group;
    });
    const coverOf = (group: Group): number => cover[own.indexOf(group)] / visible;
    const loser = own
      .filter((group) => lumaOf(group) <= lumaOf(winner) - clearlyDarker)
      .reduce<Group | undefined>((a, b) => (a && coverOf(a) >= coverOf(b) ? a : b), undefined);
    const dark = groups.filter((group) => lumaOf(group) <= lumaOf(winner) - clearlyDarker);
    return {
      winner,
      darkShare: dark.reduce((sum, { weight }) => sum + weight, 0) / visible,
      loser: loser && { group: loser, cover: coverOf(loser) },
      luma: lumaOf(winner),
      cover: coverOf(winner),
    };
  }

  function meanOfGroup(
    { count, pixel, area }: Coverage,
    data: Uint8Array | Uint8ClampedArray,
    ground: Ground | undefined,
    group: number,
    colour: Float64Array,
  ): void {
    let [weight, r, g, b] = [0, 0, 0, 0];
    let [r0, g0, b0] = [-1, 0, 0];
    const take = (red: number, green: number, blue: number, more: number): void => {
      if (r0 < 0) [r0, g0, b0] = [srgbToLinear[red], srgbToLinear[green], srgbToLinear[blue]];
      weight += more;
      r += more * (srgbToLinear[red] - r0);
      g += more * (srgbToLinear[green] - g0);
      b += more * (srgbToLinear[blue] - b0);
    };
    for (let p = 0; p < count; p++) {
      const at = 4 * pixel[p];
      const alpha = data[at + 3];
      if (alpha === 0) continue;
      if (groupOf[shadeOf(data[at], data[at + 1], data[at + 2])] !== group) continue;
      take(data[at], data[at + 1], data[at + 2], area[p] * visibleShare[alpha]);
    }
    if (ground && ground.area > 0 && groupOf[shadeOf(...ground.rgb)] === group) {
      take(...ground.rgb, ground.area);
    }
    colour[0] = r0 + r / weight;
    colour[1] = g0 + g / weight;
    colour[2] = b0 + b / weight;
  }
}
